package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;
import org.shedboard.pack.numbers.PlanReading;

/** When everyone's days end, and what of a plan is to be over by then. Part of {@link KnockOffs}. */
final class DayEnds {
    static final int MINUTES_A_DAY = 1440;
    private static final int NEVER = Integer.MAX_VALUE;

    private final FlatProblem flat;
    private final Replay replay;
    /** By person and day: the end of the last shift, -1 on a day without one. */
    private final int[][] lastShift;
    /** By person: overtime after the last shift of its day, in working minutes. */
    private final List<List<Extra>> extras = new ArrayList<>();
    /** By member of the replay: the end of the shift by which the work is to be over, and the day of that. */
    private final int[] due;

    private final int[] dueDay;
    private final int[] lastMinute;
    final int days;

    private record Extra(int day, int from, int to) {}

    DayEnds(FlatProblem flat, PlanReading plan, Replay replay) {
        this.flat = flat;
        this.replay = replay;
        days = flat.problem.horizon() / MINUTES_A_DAY + 1;
        lastShift = new int[flat.people][days];
        lastMinute = new int[days];
        Arrays.fill(lastMinute, -1);
        for (int person = 0; person < flat.people; person++) {
            readHours(person, flat.problem.people().get(person));
        }
        due = new int[replay.members()];
        dueDay = new int[replay.members()];
        for (int turn = 0; turn < plan.order.length; turn++) {
            for (int member = replay.firstMember(turn); member < replay.firstMember(turn + 1); member++) {
                readDue(member, plannedEnd(plan, plan.order[turn], replay.personOf(member)));
            }
        }
    }

    private void readHours(int person, Problem.Person values) {
        Arrays.fill(lastShift[person], -1);
        for (Span shift : values.shifts()) {
            int day = shift.from() / MINUTES_A_DAY;
            if (day < days && shift.minutes() > 0) {
                lastShift[person][day] = Math.max(lastShift[person][day], shift.to());
            }
        }
        List<Extra> own = new ArrayList<>();
        for (Span span : values.overtime()) {
            int day = span.from() / MINUTES_A_DAY;
            if (day < days && lastShift[person][day] >= 0 && span.from() >= lastShift[person][day]) {
                Hours hours = flat.hours[person];
                own.add(new Extra(day, hours.worked(span.from()), hours.worked(span.to())));
            }
        }
        extras.add(own);
    }

    private int plannedEnd(PlanReading plan, int task, int person) {
        if (plan.who[task].length == 1) {
            return plan.end[task];
        }
        Hours hours = flat.hours[person];
        return hours.end(hours.worked(plan.start[task]) + flat.minutes[task][person]);
    }

    private void readDue(int member, int plannedEnd) {
        int day = (plannedEnd - 1) / MINUTES_A_DAY;
        int end = day < days ? lastShift[replay.personOf(member)][day] : -1;
        boolean inTime = plannedEnd <= end;
        due[member] = inTime ? end : NEVER;
        dueDay[member] = day;
        if (inTime || isExtra(replay.personOf(member), plannedEnd)) {
            lastMinute[day] = Math.max(lastMinute[day], end);
        }
    }

    private boolean isExtra(int person, int plannedEnd) {
        int work = flat.hours[person].worked(plannedEnd);
        return extras.get(person).stream().anyMatch(extra -> extra.from < work && work <= extra.to);
    }

    /** The latest end of a shift for anyone who has work on that day, -1 where nobody has. */
    int minuteOf(int day) {
        return lastMinute[day];
    }

    /** Marks the days that are not over in time in what was played last. */
    void markLate(boolean[] late) {
        Arrays.fill(late, false);
        for (int member = 0; member < due.length; member++) {
            if (due[member] != NEVER && replay.endOf(member) > due[member]) {
                late[dueDay[member]] = true;
            }
            for (Extra extra : extras.get(replay.personOf(member))) {
                if (replay.workFromOf(member) < extra.to && extra.from < replay.workToOf(member)) {
                    late[extra.day] = true;
                }
            }
        }
    }
}
