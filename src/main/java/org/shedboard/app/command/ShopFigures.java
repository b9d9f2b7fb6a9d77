package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.List;
import java.util.function.ToIntFunction;
import org.shedboard.ahead.DayAhead;
import org.shedboard.day.WeeksAhead;
import org.shedboard.tally.Promises;
import org.shedboard.tally.SpanTally;

/**
 * How a shop did on some days and what lies ahead of it, in minutes; added up, how several did.
 *
 * @param booked hands-on minutes of the weeks ahead that are booked
 * @param open minutes that people have in those weeks
 * @param due hands-on minutes of services that fall due in them and are not booked
 */
public record ShopFigures(int attended, int onMachines, Promises promises, int booked, int open, int due) {
    static final ShopFigures NONE = new ShopFigures(0, 0, new Promises(0, 0), 0, 0, 0);

    static ShopFigures of(Seen seen, LocalDate from, LocalDate until) {
        SpanTally tally = seen.tally(from, until);
        List<DayAhead> ahead = WeeksAhead.withDue(seen.day(), seen.now()).days();
        return new ShopFigures(
                tally.hours().attended(),
                tally.hours().onMachines(),
                tally.promises(),
                sum(ahead, day -> day.people().booked()),
                sum(ahead, day -> day.people().open()),
                sum(ahead, day -> day.due().handsOn()));
    }

    private static int sum(List<DayAhead> days, ToIntFunction<DayAhead> minutes) {
        return days.stream().mapToInt(minutes).sum();
    }

    ShopFigures plus(ShopFigures other) {
        return new ShopFigures(
                attended + other.attended,
                onMachines + other.onMachines,
                new Promises(promises.due() + other.promises.due(), promises.kept() + other.promises.kept()),
                booked + other.booked,
                open + other.open,
                due + other.due);
    }
}
