package org.shedboard.fit;

import java.util.Arrays;
import java.util.List;

/** Some values and what can be said of them; sums are taken of distances from the mean, so that large values lose no digits. */
public final class Sample {
    private final double[] values;
    private final double mean;

    private Sample(double[] values) {
        this.values = values;
        this.mean = balanced(values);
    }

    public static Sample of(List<Double> values) {
        return of(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    public static Sample of(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("no values, no sample");
        }
        return new Sample(values.clone());
    }

    /** The mean, put right by what the first try leaves over. */
    private static double balanced(double[] values) {
        double first = Arrays.stream(values).sum() / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return first + rest / values.length;
    }

    public int size() {
        return values.length;
    }

    public double mean() {
        return mean;
    }

    /** Standard deviation with n - 1; 0 for a single value. */
    public double sd() {
        return values.length == 1 ? 0 : StrictMath.sqrt(squares() / (values.length - 1));
    }

    /** The sum of squares about the mean, less what rounding of the mean adds to it. */
    private double squares() {
        double squares = 0;
        double rest = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
            rest += value - mean;
        }
        return squares - rest * rest / values.length;
    }

    /** How alike neighbours are, from -1 to 1; 0 where all values are the same. */
    public double lagOneAutocorrelation() {
        double products = 0;
        for (int i = 1; i < values.length; i++) {
            products += (values[i] - mean) * (values[i - 1] - mean);
        }
        double squares = squares();
        return squares == 0 ? 0 : products / squares;
    }

    public double median() {
        return quantile(0.5);
    }

    /** The value that this share stays below: position n p + (p + 1) / 3, the one that Hyndman and Fan recommend (their type 8). */
    public double quantile(double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double position = sorted.length * share + (share + 1) / 3;
        int whole = (int) Math.floor(position);
        double low = sorted[Math.min(Math.max(whole, 1), sorted.length) - 1];
        double high = sorted[Math.min(Math.max(whole + 1, 1), sorted.length) - 1];
        return low + (position - whole) * (high - low);
    }
}
