package org.shedboard.learn;

/**
 * What a deviation from the catalogue can hang on.
 *
 * <p>The deviations are how far a trait is taken to move the logarithm before anything is seen: about as many hundredths as per cent.
 * Invented figures: a shop that differs from its catalogue by more than twice as much will be believed after a few more stays.
 */
public enum Trait {
    SHOP(0.20),
    MUD(0.12),
    DEPTH(0.10),
    CLASS(0.12),
    AGE(0.08),
    PERSON(0.12),
    PRACTICE(0.05),
    SEASON(0.05);

    private final double deviation;

    Trait(double deviation) {
        this.deviation = deviation;
    }

    double deviation() {
        return deviation;
    }
}
