package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** One person's shifts and overtime in order of time. */
final class Windows {
    /** A run of minutes inside one window. */
    record Stretch(int from, int to, boolean overtime) {
        int minutes() {
            return to - from;
        }
    }

    private final List<Stretch> windows = new ArrayList<>();

    Windows(Problem.Person person) {
        person.shifts().forEach(span -> windows.add(stretch(span, false)));
        person.overtime().forEach(span -> windows.add(stretch(span, true)));
        windows.sort(Comparator.comparingInt(Stretch::from));
    }

    private static Stretch stretch(Span span, boolean overtime) {
        return new Stretch(span.from(), span.to(), overtime);
    }

    boolean isIn(int minute) {
        return windows.stream().anyMatch(window -> window.from <= minute && minute < window.to);
    }

    /** Where so many minutes of work fall that start at a minute; too few when the windows do not suffice. */
    List<Stretch> work(int start, int minutes) {
        List<Stretch> work = new ArrayList<>();
        int left = minutes;
        for (Stretch window : windows) {
            int from = Math.max(window.from, start);
            int to = Math.min(window.to, from + left);
            if (from < to) {
                work.add(new Stretch(from, to, window.overtime));
                left -= to - from;
            }
        }
        return work;
    }

    /** The latest minute from which so many minutes of work are over by {@code end}. */
    int startFor(int end, int minutes) {
        int left = minutes;
        for (int index = windows.size() - 1; index >= 0; index--) {
            Stretch window = windows.get(index);
            int to = Math.min(window.to, end);
            if (window.from < to) {
                if (to - window.from >= left) {
                    return to - left;
                }
                left -= to - window.from;
            }
        }
        return -1;
    }
}
