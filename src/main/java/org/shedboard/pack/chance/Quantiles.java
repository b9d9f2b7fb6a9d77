package org.shedboard.pack.chance;

/**
 * Equally likely values of the normal distribution and, by them, of log-normal ones: a draw is one look into a table, and the same
 * on every processor, since the tables are made with {@link StrictMath} and plain arithmetic.
 *
 * <p>The values are the quantiles in the middle of {@link #COUNT} equal shares, so that the share of them up to any point strays
 * from the distribution by at most half a share, {@value #LARGEST_ERROR}. They end 3.7 deviations from the middle, and their
 * deviation is 0.9998, not 1.
 */
final class Quantiles {
    private static final int BITS = 12;
    static final int COUNT = 1 << BITS;
    static final double LARGEST_ERROR = 0.5 / COUNT;

    private static final double[] NORMAL = normal();

    private Quantiles() {}

    /** The place in a table that a draw of 64 even bits stands for. */
    static int index(long bits) {
        return (int) (bits >>> (Long.SIZE - BITS));
    }

    /** Values of the normal distribution with mean 0 and deviation 1, smallest first. */
    static double[] values() {
        return NORMAL.clone();
    }

    /** Values of e to the power of a normal draw with that deviation, smallest first. */
    static double[] factors(double spread) {
        double[] factors = new double[COUNT];
        for (int upper = COUNT / 2; upper < COUNT; upper++) {
            factors[upper] = StrictMath.exp(spread * NORMAL[upper]);
            factors[COUNT - 1 - upper] = 1 / factors[upper];
        }
        return factors;
    }

    /** Each quantile is found from the one below it: the distribution bends down from there, so that Newton's steps never overshoot. */
    private static double[] normal() {
        double[] values = new double[COUNT];
        double value = 0;
        for (int upper = COUNT / 2; upper < COUNT; upper++) {
            value = quantile((upper + 0.5) / COUNT, value);
            values[upper] = value;
            values[COUNT - 1 - upper] = -value;
        }
        return values;
    }

    private static double quantile(double share, double below) {
        double value = below;
        double step = 1;
        while (step > 1e-12) {
            step = (share - shareBelow(value)) / density(value);
            value += step;
        }
        return value;
    }

    private static double density(double value) {
        return StrictMath.exp(-value * value / 2) / StrictMath.sqrt(2 * Math.PI);
    }

    /** The normal distribution, by the series 26.2.11 of Abramowitz and Stegun, Handbook of Mathematical Functions (1964). */
    private static double shareBelow(double value) {
        double sum = 0;
        double term = value;
        for (int odd = 3; term > 1e-17; odd += 2) {
            sum += term;
            term *= value * value / odd;
        }
        return 0.5 + density(value) * sum;
    }
}
