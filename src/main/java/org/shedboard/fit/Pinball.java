package org.shedboard.fit;

/** The loss by which a forecast quantile is scored (R. Koenker and G. Bassett, Econometrica 46, 1978). */
public final class Pinball {
    private Pinball() {}

    /** What is missed above the quantile counts with its probability, what is missed below with the rest. */
    public static double loss(double quantile, double probability, double actual) {
        return actual >= quantile ? probability * (actual - quantile) : (1 - probability) * (quantile - actual);
    }
}
