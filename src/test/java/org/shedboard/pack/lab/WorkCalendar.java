package org.shedboard.pack.lab;

import java.util.List;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** One person's minutes from 0 to the horizon, one array element a minute: slow to make, and too simple to be wrong. */
final class WorkCalendar {
    private final int horizon;
    private final boolean[] isIn;
    /** Working minutes before each wall minute. */
    private final int[] workedBefore;
    /** Overtime minutes before each wall minute. */
    private final int[] overtimeBefore;
    /** The wall minute of each working minute. */
    private final int[] wallOf;

    WorkCalendar(Problem.Person person, int horizon) {
        this.horizon = horizon;
        isIn = new boolean[horizon];
        boolean[] isOvertime = new boolean[horizon];
        mark(person.shifts(), isIn);
        mark(person.overtime(), isIn);
        mark(person.overtime(), isOvertime);
        workedBefore = countBefore(isIn);
        overtimeBefore = countBefore(isOvertime);
        wallOf = new int[workedBefore[horizon]];
        for (int minute = 0; minute < horizon; minute++) {
            if (isIn[minute]) {
                wallOf[workedBefore[minute]] = minute;
            }
        }
    }

    private void mark(List<Span> spans, boolean[] marks) {
        for (Span span : spans) {
            for (int minute = span.from(); minute < Math.min(span.to(), horizon); minute++) {
                marks[minute] = true;
            }
        }
    }

    private static int[] countBefore(boolean[] marks) {
        int[] before = new int[marks.length + 1];
        for (int minute = 0; minute < marks.length; minute++) {
            before[minute + 1] = before[minute] + (marks[minute] ? 1 : 0);
        }
        return before;
    }

    boolean isIn(int minute) {
        return minute < horizon && isIn[minute];
    }

    int workingMinutes() {
        return wallOf.length;
    }

    int workedBefore(int minute) {
        return workedBefore[minute];
    }

    /** When so many minutes of work are over that begin at or after {@code start}; -1 when the hours do not reach. */
    int end(int start, int minutes) {
        int last = workedBefore[Math.min(start, horizon)] + minutes - 1;
        return last < wallOf.length ? wallOf[last] + 1 : -1;
    }

    int overtime(int from, int to) {
        return overtimeBefore[to] - overtimeBefore[Math.min(from, to)];
    }

    /** Whether any of these minutes is worked during the spans. */
    boolean touches(int from, int to, List<Span> spans) {
        return spans.stream().anyMatch(span -> {
            int first = Math.max(from, span.from());
            int last = Math.min(to, span.to());
            return first < last && workedBefore[first] < workedBefore[last];
        });
    }
}
