package org.shedboard.day;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shedboard.ahead.DayAhead;
import org.shedboard.ahead.Load;
import org.shedboard.ahead.Weeks;
import org.shedboard.register.WorkLoad;

/**
 * Work that is due and not booked, laid on the working days ahead as if each machine came when it is due.
 *
 * <p>A machine comes on the working day of its likely date, or on the first after it; one whose day lies beyond the weeks is left out. What is
 * overdue has no day of its own any more: it comes during the rest of this week, or of the first week with a working day in it. The most
 * overdue goes first, each to the day that has the fewest minutes of such work so far, so that it is spread as evenly as whole machines can be.
 * A day whose people have gone home takes nothing. Owners who said that they come, or that they do not, are not on the list of whom to ring
 * and so not here either.
 */
final class DueWork {
    private final RingList list;
    private final List<LocalDate> dates;
    private final Map<LocalDate, Load> laid = new TreeMap<>();

    private DueWork(Weeks weeks, RingList list) {
        this.list = list;
        dates = weeks.days().stream()
                .filter(day -> day.people().open() > 0)
                .map(DayAhead::date)
                .toList();
    }

    /** What comes on each day that anything comes on. */
    static Map<LocalDate, Load> over(Weeks weeks, RingList list) {
        return new DueWork(weeks, list).lay();
    }

    /** The overdue ones stand first in the list, so that they share out days that have nothing else yet. */
    private Map<LocalDate, Load> lay() {
        list.calls().forEach(call -> dateOf(call).ifPresent(date -> laid.merge(date, of(call.load()), Load::plus)));
        return laid;
    }

    private Optional<LocalDate> dateOf(RingList.Call call) {
        LocalDate likely = call.due().dates().likely();
        return likely.isBefore(list.today())
                ? thisWeek().stream().min(Comparator.comparingInt(this::minutesOn))
                : dates.stream().filter(date -> !date.isBefore(likely)).findFirst();
    }

    private List<LocalDate> thisWeek() {
        return dates.stream()
                .limit(1)
                .map(first -> first.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY)))
                .flatMap(sunday -> dates.stream().filter(date -> !date.isAfter(sunday)))
                .toList();
    }

    private int minutesOn(LocalDate date) {
        return laid.getOrDefault(date, Load.NONE).handsOn();
    }

    private static Load of(WorkLoad load) {
        return new Load(load.handsOn(), load.inPlaces());
    }
}
