package org.shedboard.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.chance.KnockOff;
import org.shedboard.pack.chance.KnockOffs;
import org.shedboard.shop.Step;

/**
 * How sure it is that the day is over at knock-off, by the posted plan: how full the rest of it is.
 *
 * @param at knock-off of the last one who has work today
 * @param chance that what is planned before knock-off is over by then, and nobody works overtime, in a hundred
 * @param error the standard deviation of that, in the same, because only so many days were drawn
 * @param deciders what it hangs on, the most first
 */
public record KnockOffChance(Instant at, int chance, double error, List<Decider> deciders) {
    private static final int DRAWS = 1000;
    /** Every stay that may decide is replayed so often; the days are the first of those for the chance. */
    private static final int DRAWS_A_STAY = 400;

    private static final long SEED = 1;
    private static final int MOST_DECIDERS = 3;
    /** A stay whose minutes matter less to the chance, in a hundred, is not worth naming. Invented. */
    private static final int WORTH_NAMING = 2;
    /** So many deviations from nothing at all, a stay's part in it is hardly an accident of the days drawn. */
    private static final int SURE = 2;

    public KnockOffChance {
        deciders = List.copyOf(deciders);
    }

    /**
     * A stay that decides.
     *
     * @param points of chance, in a hundred, that are lost because nobody knows how long the stay will take
     * @param error the standard deviation of that, in the same
     */
    public record Decider(String visitId, Step step, int points, double error) {}

    /** Empty when nobody has work today, or knock-off is over. */
    public static Optional<KnockOffChance> of(Outlook outlook) {
        Day day = outlook.day();
        if (!day.isOpened() || day.isClosed()) {
            return Optional.empty();
        }
        return today(drawn(outlook, DRAWS))
                .filter(today -> today.minute() > outlook.problem().now())
                .map(today -> new KnockOffChance(
                        day.instantOf(today.minute()),
                        percent(today.chance()),
                        100 * today.error(),
                        deciders(outlook)));
    }

    private static KnockOffs drawn(Outlook outlook, int draws) {
        return KnockOffs.of(outlook.likely(), outlook.plan(), draws, SEED);
    }

    private static Optional<KnockOff> today(KnockOffs days) {
        return days.days().stream().filter(each -> each.day() == 0).findFirst();
    }

    private static List<Decider> deciders(Outlook outlook) {
        KnockOffs fewer = drawn(outlook, DRAWS_A_STAY);
        return fewer.deciders(today(fewer).orElseThrow(), MOST_DECIDERS).stream()
                .filter(decider -> percent(decider.drop()) >= WORTH_NAMING && decider.drop() > SURE * decider.error())
                .map(decider -> decider(outlook.day(), decider))
                .toList();
    }

    private static Decider decider(Day day, KnockOff.Decider decider) {
        Step step = day.expectVisit(decider.job()).stays().get(decider.stay()).step();
        return new Decider(decider.job(), step, percent(decider.drop()), 100 * decider.error());
    }

    private static int percent(double share) {
        return (int) Math.round(100 * share);
    }
}
