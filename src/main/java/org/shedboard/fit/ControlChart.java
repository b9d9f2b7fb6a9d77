package org.shedboard.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Limits within which values of a steady process stay, and when it ran away from them (NIST/SEMATECH e-Handbook of Statistical Methods,
 * sections 6.3.2.2 and 6.3.2.4).
 */
public final class ControlChart {
    /** Mean range of two neighbours over the deviation, as the handbook's tables have it; exactly 2 over the root of pi. */
    private static final double MEAN_RANGE = 1.128;

    private ControlChart() {}

    /** A middle and how far values stray from it at most while the process is steady. */
    public record Limits(double middle, double low, double high) {
        public boolean holds(double value) {
            return value >= low && value <= high;
        }
    }

    /** Limits of single values from the mean of their moving ranges. */
    public static Limits ofIndividuals(List<Double> values) {
        double ranges = 0;
        for (int i = 1; i < values.size(); i++) {
            ranges += Math.abs(values.get(i) - values.get(i - 1));
        }
        double middle = Sample.of(values).mean();
        double reach = 3 * ranges / (values.size() - 1) / MEAN_RANGE;
        return new Limits(middle, middle - reach, middle + reach);
    }

    /** The exponentially weighted means of a start and the values after it: one more than there are values. */
    public static List<Double> weighted(double start, double weight, List<Double> values) {
        List<Double> means = new ArrayList<>(List.of(start));
        for (double value : values) {
            means.add(weight * value + (1 - weight) * means.get(means.size() - 1));
        }
        return means;
    }

    /** The limits of the weighted mean after so many values; they widen until the start is forgotten. */
    public static Limits ofWeighted(double start, double sd, double weight, double deviations, int values) {
        double forgotten = 1 - StrictMath.pow(1 - weight, 2.0 * values);
        double reach = deviations * sd * StrictMath.sqrt(weight / (2 - weight) * forgotten);
        return new Limits(start, start - reach, start + reach);
    }
}
