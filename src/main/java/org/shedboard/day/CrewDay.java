package org.shedboard.day;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Span;
import org.shedboard.shop.Person;

/**
 * One person's time by the plan: when they work, when they may be asked to, what they are on, when they are free.
 *
 * @param tasks those they have hands on, alone or with others, done ones too, in order
 * @param toDo when they have hands on those that are not done, in the same order
 */
public record CrewDay(
        Outlook outlook,
        Person person,
        List<Span> shifts,
        List<Span> overtime,
        List<Plan.TaskTime> tasks,
        List<Span> toDo) {
    /** Minutes in which something can be done; invented. */
    private static final int OF_USE = 15;

    public CrewDay {
        shifts = List.copyOf(shifts);
        overtime = List.copyOf(overtime);
        tasks = List.copyOf(tasks);
        toDo = List.copyOf(toDo);
    }

    public static CrewDay of(Outlook outlook, Person person) {
        Roster roster = new Roster(outlook.day());
        List<Plan.TaskTime> tasks = outlook.plan().tasks().stream()
                .filter(time -> time.people().contains(person.id()))
                .sorted(Comparator.comparingInt(outlook::handsFrom))
                .toList();
        List<Span> toDo = tasks.stream()
                .filter(time -> !outlook.taskOf(time).isDone())
                .map(time -> Span.of(outlook.handsFrom(time), time.end()))
                .toList();
        return new CrewDay(outlook, person, roster.shiftsOf(person), roster.overtimeOf(person), tasks, toDo);
    }

    public boolean isOnShift(int minute) {
        return shifts.stream().anyMatch(shift -> shift.contains(minute));
    }

    /** Whether a minute lies in hours they may be asked for beyond their shifts. */
    public boolean mayBeAsked(int minute) {
        return overtime.stream().anyMatch(span -> span.contains(minute));
    }

    /** When today's last shift ends; empty for who has none today. */
    public OptionalInt knockOff() {
        return shifts.stream()
                .filter(shift -> shift.from() < midnight())
                .mapToInt(Span::to)
                .max();
    }

    /** Minutes of today that the plan, or what they are on since, has them work after their last shift. */
    public int minutesOver() {
        int over = 0;
        for (int minute = knockOff().orElse(midnight()); minute < midnight(); minute++) {
            boolean works = mayBeAsked(minute) || minute < now();
            over += works && busyUntil(minute) > minute ? 1 : 0;
        }
        return over;
    }

    /** The first minute from now at which they are free today for long enough to be of use; empty where there is none. */
    public OptionalInt freeFrom() {
        OptionalInt open = onShiftFrom(now());
        while (open.isPresent()) {
            int minute = open.getAsInt();
            int busy = busyUntil(minute);
            if (busy == minute && freeUntil(minute) - minute >= OF_USE) {
                return open;
            }
            open = onShiftFrom(busy > minute ? busy : freeUntil(minute));
        }
        return open;
    }

    /** The task they go to next, of those that nobody is on. */
    public Optional<Plan.TaskTime> next() {
        return tasks.stream()
                .filter(time -> !outlook.taskOf(time).isDone())
                .filter(time -> !outlook.taskOf(time).progress().isRunning())
                .findFirst();
    }

    /** Until when they are free who are free from that minute: to the next task, or the end of the shift. */
    public int freeUntil(int minute) {
        int next = toDo.stream()
                .mapToInt(Span::from)
                .filter(from -> from > minute)
                .min()
                .orElse(Integer.MAX_VALUE);
        int end = shifts.stream()
                .filter(shift -> shift.contains(minute))
                .mapToInt(Span::to)
                .findFirst()
                .orElse(minute);
        return Math.min(next, end);
    }

    /** Minutes of today's shifts from now on with nothing planned. */
    public int freeMinutes() {
        int free = 0;
        for (int minute = now(); minute < midnight(); minute++) {
            free += isOnShift(minute) && busyUntil(minute) == minute ? 1 : 0;
        }
        return free;
    }

    private OptionalInt onShiftFrom(int minute) {
        return shifts.stream()
                .filter(shift -> shift.to() > minute && shift.from() < midnight())
                .mapToInt(shift -> Math.max(minute, shift.from()))
                .min();
    }

    /** When what they have hands on in that minute ends; the minute itself where that is nothing. */
    private int busyUntil(int minute) {
        int until = minute;
        for (Span work : toDo) {
            until = work.contains(minute) ? Math.max(until, work.to()) : until;
        }
        return until;
    }

    private int now() {
        return outlook.problem().now();
    }

    private int midnight() {
        Day day = outlook.day();
        return day.minuteOf(day.date().plusDays(1).atStartOfDay(day.zone()).toInstant());
    }
}
