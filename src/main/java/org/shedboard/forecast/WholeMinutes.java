package org.shedboard.forecast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Minutes made whole so that they still add up. */
final class WholeMinutes {
    private WholeMinutes() {}

    /**
     * The nearest whole numbers below, those with the largest fractions one more, until they add up to the total. What is whole already
     * stays as it is.
     *
     * @param total the sum of the minutes, rounded
     */
    static int[] of(double[] minutes, int total) {
        int[] whole =
                Arrays.stream(minutes).mapToInt(each -> (int) Math.floor(each)).toArray();
        int left = total - Arrays.stream(whole).sum();
        IntStream.range(0, minutes.length)
                .boxed()
                .sorted(Comparator.comparingDouble(index -> whole[index] - minutes[index]))
                .limit(Math.max(0, left))
                .forEach(index -> whole[index]++);
        return whole;
    }
}
