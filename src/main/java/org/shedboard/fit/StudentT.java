package org.shedboard.fit;

/**
 * Student's distribution of a mean over its estimated error, for whole degrees of freedom.
 *
 * <p>For those the probability is a finite sum in the angle whose tangent is t over the root of the degrees (Abramowitz and Stegun, 26.7.3
 * and 26.7.4, from memory; the sums are proved by the tables in the test).
 */
final class StudentT {
    /** More than the search for a quantile ever took. */
    private static final int MOST_STEPS = 100;
    /** From here on the series about the normal quantile has ten digits at least, and the sums would be long. */
    private static final int MANY = 500;

    private StudentT() {}

    /** Probability that it stays below t. */
    static double probability(double t, int degrees) {
        return (1 + within(StrictMath.atan(t / StrictMath.sqrt(degrees)), degrees)) / 2;
    }

    /** The t that it stays below with this probability. */
    static double quantile(double probability, int degrees) {
        if (!(probability > 0 && probability < 1) || degrees < 1) {
            throw new IllegalArgumentException(
                    "no quantile at %s for %s degrees of freedom".formatted(probability, degrees));
        }
        return degrees < MANY
                ? StrictMath.tan(angle(probability, degrees)) * StrictMath.sqrt(degrees)
                : nearNormal(Normal.quantile(probability), degrees);
    }

    /**
     * Where the chord of the probability between two angles meets the one that is sought, over and over; an end that stays is pulled in
     * (the Illinois rule), so that both ends close in.
     */
    private static double angle(double probability, int degrees) {
        double low = -StrictMath.PI / 2;
        double high = StrictMath.PI / 2;
        double below = -probability;
        double above = 1 - probability;
        double angle = 0;
        for (int step = 0; step < MOST_STEPS && high - low > Math.ulp(high); step++) {
            angle = (low * above - high * below) / (above - below);
            double off = (1 + within(angle, degrees)) / 2 - probability;
            if (Math.abs(off) <= 2 * Math.ulp(probability)) {
                return angle;
            }
            if (off < 0) {
                low = angle;
                below = off;
                above /= 2;
            } else {
                high = angle;
                above = off;
                below /= 2;
            }
        }
        return angle;
    }

    /** The expansion about the normal quantile (Abramowitz and Stegun, 26.7.5, from memory; the test holds it to the sums and to a library). */
    private static double nearNormal(double z, double degrees) {
        double square = z * z;
        double first = (square + 1) / 4;
        double second = ((5 * square + 16) * square + 3) / 96;
        double third = (((3 * square + 19) * square + 17) * square - 15) / 384;
        double fourth = ((((79 * square + 776) * square + 1482) * square - 1920) * square - 945) / 92160;
        return z + z * (first + (second + (third + fourth / degrees) / degrees) / degrees) / degrees;
    }

    /** Probability of the middle between minus and plus this angle; negative for a negative angle. */
    private static double within(double angle, int degrees) {
        double sine = StrictMath.sin(angle);
        double cosine = StrictMath.cos(angle);
        boolean odd = degrees % 2 == 1;
        double term = odd ? cosine : 1;
        double sum = degrees == 1 ? 0 : term;
        for (int i = odd ? 3 : 2; i < degrees; i += 2) {
            term *= cosine * cosine * (i - 1) / i;
            sum += term;
        }
        return odd ? 2 / StrictMath.PI * (angle + sine * sum) : sine * sum;
    }
}
