package org.shedboard.pack.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/**
 * The time of a bound: the minutes from now on in which anyone works, numbered from 0; nights and holidays take no numbers. A number
 * stands for its working minute and for the minutes without work right before it, so that what is complete by a number can be
 * followed by work in it.
 *
 * <p>Where there are too many, the last number stands for its minute and everything after it. What happens there is taken to need
 * nobody and no place, and a finish there to be no later than its first minute, so that the bound only gets weaker.
 */
final class Axis {
    private final int now;
    /** The working minutes, and after them the first one that has no number of its own. */
    private final int[] minute;
    /** The last number. */
    final int length;
    /** Whether work goes on beyond the last number. */
    final boolean isCut;

    private Axis(int now, int horizon, int[] minutes, boolean isCut) {
        this.now = now;
        this.isCut = isCut;
        length = minutes.length;
        minute = Arrays.copyOf(minutes, length + 1);
        minute[length] = isCut ? minutes[length - 1] + 1 : horizon;
    }

    /** The first so many working minutes of a problem, at least one. */
    static Axis of(Problem problem, int most) {
        List<Integer> found = new ArrayList<>();
        int next = problem.now();
        boolean isCut = false;
        for (Span span : windows(problem)) {
            int end = Math.min(span.to(), problem.horizon());
            for (next = Math.max(next, span.from()); next < end && !isCut; next++) {
                isCut = found.size() == most;
                if (!isCut) {
                    found.add(next);
                }
            }
        }
        int[] minutes = found.stream().mapToInt(Integer::intValue).toArray();
        return new Axis(problem.now(), problem.horizon(), minutes, isCut);
    }

    private static List<Span> windows(Problem problem) {
        return problem.people().stream()
                .flatMap(person -> Stream.concat(person.shifts().stream(), person.overtime().stream()))
                .sorted(Comparator.comparingInt(Span::from))
                .toList();
    }

    /** How many working minutes begin before a minute, the last number at most. */
    int numberOf(int wall) {
        int found = Arrays.binarySearch(minute, 0, length, wall);
        return found >= 0 ? found : -found - 1;
    }

    /** As {@link #numberOf(int)}, when the answer is not below {@code least}. */
    int numberOf(long wall, int least) {
        int number = least;
        while (number < length && minute[number] < wall) {
            number++;
        }
        return number;
    }

    /** The first minute that a number stands for. */
    int firstMinute(int number) {
        return number == 0 ? now : minute[number - 1] + 1;
    }

    /** The working minute of a number. */
    int workingMinute(int number) {
        return minute[number];
    }
}
