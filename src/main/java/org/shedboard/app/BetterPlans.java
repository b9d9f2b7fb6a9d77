package org.shedboard.app;

import java.time.Duration;
import java.util.Optional;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.board.Msg;
import org.shedboard.day.Day;
import org.shedboard.day.NextHour;
import org.shedboard.day.Outlook;
import org.shedboard.day.Planning;
import org.shedboard.day.Posted;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * Has a better plan than the posted one looked for, anew at every event and whenever the minute turns, and offers each as it comes.
 * Nothing is offered that moves a start of the next hour, unless it keeps a promise more or places a machine more.
 * On a day on which nothing happens it rests after some looks, so that the machine is not kept busy for ever.
 */
final class BetterPlans {
    /** Minutes, of one machine ready earlier, that a plan must gain before it is worth anybody's attention. Invented. */
    private static final int WORTH_SAYING = 30;

    /** How long one look takes at most; it is over earlier when a plan is proven best. */
    private static final SearchLimit A_LOOK = SearchLimit.ofTime(Duration.ofSeconds(5));

    /** So often it looks at one and the same day, each time by other chances. */
    static final int LOOKS = 12;

    /** What was proven holds for the day with its next hour kept, and says nothing of the day as it is. */
    private static final long NOT_PROVEN = 0;

    private final BackgroundSearch search;
    private final SearchLimit limit;
    private Optional<Day> day = Optional.empty();
    private int looks;
    /** The best plan offered for this day; the search touches it until it is stopped, and no longer. */
    private Optional<Posted> offered = Optional.empty();

    BetterPlans(BackgroundSearch search) {
        this(search, A_LOOK);
    }

    BetterPlans(BackgroundSearch search, SearchLimit limit) {
        this.search = search;
        this.limit = limit;
    }

    /** Whether it looks; false when there is nothing to plan, or when it has looked at this day so often that it rests. */
    boolean lookFrom(Outlook outlook) {
        search.stop(BackgroundSearch.Kind.BETTER_PLAN);
        if (day.filter(outlook.day()::equals).isEmpty()) {
            day = Optional.of(outlook.day());
            looks = 0;
            offered = Optional.empty();
        }
        if (!outlook.day().isOpened() || outlook.day().isClosed() || looks == LOOKS) {
            return false;
        }
        looks++;
        Look look = new Look(outlook);
        search.lookFor(BackgroundSearch.Wanted.betterPlan(problem(outlook), limit, looks, look::offer));
        return true;
    }

    /** Every other look, from the first on, leaves the next hour alone; the others may find a promise that this would cost. */
    private Problem problem(Outlook outlook) {
        return looks % 2 == 1 ? NextHour.kept(outlook.problem(), outlook.plan()) : outlook.problem();
    }

    /** From one moment: what was offered before must be beaten too. */
    private final class Look {
        private final Outlook outlook;
        private Outlook beaten;

        Look(Outlook outlook) {
            this.outlook = outlook;
            this.beaten = outlook;
            offered.map(before -> Planning.offered(outlook.day(), before, outlook.at()))
                    .filter(before -> before.isBetterThan(outlook.plan()))
                    .ifPresent(before -> beaten = outlook.with(before));
        }

        Optional<Msg> offer(Plan found) {
            if (!beaten.isWorth(found, WORTH_SAYING) || !outlook.isCalm(found)) {
                return Optional.empty();
            }
            beaten = outlook.with(found);
            Posted posted =
                    new Posted(found.withBound(NOT_PROVEN), outlook.day().origin());
            offered = Optional.of(posted);
            return Optional.of(new Msg.BetterFound(posted, outlook.differenceTo(found)));
        }
    }
}
