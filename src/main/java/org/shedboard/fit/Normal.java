package org.shedboard.fit;

/** The normal distribution with mean 0 and deviation 1. */
public final class Normal {
    /** Up to here the series about the middle loses no digits that matter; beyond, the fraction for the tail needs few terms. */
    private static final double SERIES = 3;
    /** Terms of the fraction: enough for every digit of a double from {@link #SERIES} on. */
    private static final int TERMS = 120;

    private static final double ROOT_TWO_PI = StrictMath.sqrt(2 * StrictMath.PI);

    private Normal() {}

    public static double density(double z) {
        return StrictMath.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    /** Probability of staying below z: the series 26.2.11 and the fraction 26.2.14 of Abramowitz and Stegun (1964). */
    public static double below(double z) {
        if (z > SERIES) {
            return 1 - tail(z);
        }
        return z < -SERIES ? tail(-z) : 0.5 + density(z) * series(z);
    }

    private static double series(double z) {
        double sum = 0;
        double term = z;
        for (int odd = 3; Math.abs(term) > 1e-18 * Math.abs(sum); odd += 2) {
            sum += term;
            term *= z * z / odd;
        }
        return sum;
    }

    private static double tail(double z) {
        double fraction = z;
        for (int term = TERMS; term > 0; term--) {
            fraction = z + term / fraction;
        }
        return density(z) / fraction;
    }

    /** The value it stays below with this probability. */
    public static double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("no value is stayed below with probability %s".formatted(probability));
        }
        if (probability > 0.5) {
            return -quantile(1 - probability);
        }
        double value = 0;
        double step = 1;
        // the distribution bends up below the middle, so that no step from above goes past the value
        for (int i = 0; i < 100 && Math.abs(step) > 1e-14; i++) {
            step = (below(value) - probability) / density(value);
            value -= Math.min(step, 1);
        }
        return value;
    }
}
