package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.WhySoLong;
import org.shedboard.estimate.MachineClass;
import org.shedboard.forecast.Explanation;
import org.shedboard.forecast.Explanation.Source;
import org.shedboard.forecast.FinishedVisit;
import org.shedboard.forecast.Washed;
import org.shedboard.hours.DecimalHours;
import org.shedboard.learn.Sort;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/** How the minutes of a visit are explained: on the screen and by the commands alike. */
public final class MinuteWords {
    /** To an owner nobody says minutes closer than this. */
    private static final int SAID_TO = 5;

    private static final int HOUR = 60;

    private MinuteWords() {}

    /** What one says to the owner: how long, how surely, and what washing the machine would save. */
    public static String toOwner(WhySoLong why) {
        List<String> said = new ArrayList<>();
        int likely = nearest(why.explained().range().likely());
        said.add(Words.say(
                "estimate.about",
                duration(likely),
                duration(up(why.explained().range().safe()))));
        if (why.visit().hasBegun() && why.left().likely() > 0) {
            said.add(Words.say("estimate.left", duration(nearest(why.left().likely()))));
        }
        List<String> mud =
                why.washed().map(washed -> washed(why, washed, likely)).orElse(List.of());
        said.addAll(mud.isEmpty() ? ofMud(why) : mud);
        return String.join(" ", said);
    }

    private static List<String> ofMud(WhySoLong why) {
        int mud = why.explained().minutesFrom(Source.MUD);
        return mud < SAID_TO ? List.of() : List.of(Words.say("estimate.mud", duration(nearest(mud))));
    }

    private static List<String> washed(WhySoLong why, Washed washed, int likely) {
        int clean = nearest(washed.likely());
        if (clean >= likely) {
            return List.of();
        }
        String less = washed.savedChargeable() > 0
                ? Words.say("estimate.less_to_pay", DecimalHours.of(washed.savedChargeable()))
                : "";
        String name = why.visit().state() == VisitState.BOOKED ? "estimate.washed_before" : "estimate.came_clean";
        return List.of(Words.say(name, duration(clean), duration(likely - clean), less));
    }

    private static int nearest(int minutes) {
        return Math.max(SAID_TO, Math.floorDiv(minutes + SAID_TO / 2, SAID_TO) * SAID_TO);
    }

    private static int up(int minutes) {
        return Math.max(SAID_TO, Math.floorDiv(minutes + SAID_TO - 1, SAID_TO) * SAID_TO);
    }

    private static String duration(int minutes) {
        if (minutes < HOUR) {
            return Words.say("estimate.minutes", minutes);
        }
        return minutes % HOUR == 0
                ? Words.say("estimate.hours", minutes / HOUR)
                : Words.say(
                        "estimate.hours_minutes", minutes / HOUR, String.format(Locale.ROOT, "%02d", minutes % HOUR));
    }

    /** What has a share in the minutes; the catalogue always has. */
    public static List<Explanation.Part> parts(WhySoLong why) {
        return why.explained().parts().stream()
                .filter(part -> part.source() == Source.CATALOGUE || part.minutes() != 0)
                .toList();
    }

    /** Minutes with a sign, but for those all others are added to. */
    public static String minutes(Explanation.Part part) {
        return part.source() == Source.CATALOGUE || part.minutes() < 0
                ? String.valueOf(part.minutes())
                : Words.say("estimate.more", part.minutes());
    }

    /** A piece of work by its step; what the lines want is told from looking. */
    public static String name(Explanation.PieceOfWork work) {
        return work.sort() == Sort.REPAIR
                ? Words.say("estimate.work_of", Words.say(work.step()))
                : Words.say(work.step());
    }

    public static String date(FinishedVisit visit) {
        return Clocks.sayFullDate(visit.under().date());
    }

    /** Whose machine it was; of one the books no longer have, what class it was of. */
    public static String machine(Day day, WhySoLong.Like like) {
        return like.machine()
                .map(machine -> Names.of(day.books(), machine))
                .orElseGet(() -> className(day, like.visit().under().classId()));
    }

    private static String className(Day day, String id) {
        return day.books().catalogue().findClass(id).map(MachineClass::name).orElse(id);
    }
}
