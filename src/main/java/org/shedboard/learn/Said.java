package org.shedboard.learn;

import org.shedboard.fit.LogNormal;

/**
 * A piece of finished work with what was, or would have been, said of it before: by all that was learned until then, by the catalogue
 * alone, and by the last ten of its sort.
 */
public record Said(Lesson lesson, LogNormal learned, LogNormal catalogue, LogNormal lastTen) {
    /** The share of such work that is called safe. */
    public static final double SAFE = 0.8;

    public static final double LIKELY = 0.5;

    public boolean isWithinLikely() {
        return lesson.actualMinutes() <= likelyMinutes();
    }

    public boolean isWithinSafe() {
        return lesson.actualMinutes() <= safeMinutes();
    }

    /** The minutes that half of such work was said to stay within. */
    public double likelyMinutes() {
        return learned.median();
    }

    /** The minutes that four fifths were said to stay within. */
    public double safeMinutes() {
        return learned.quantile(SAFE);
    }

    /** Where what it took lies in what was said, from 0 to 1: evenly spread where forecasts are right. */
    public double place() {
        return learned.below(lesson.actualMinutes());
    }

    /** By how much it ran over what half of such work stays within, as a logarithm. */
    double overrun() {
        return StrictMath.log(lesson.actualMinutes()) - learned.mu();
    }
}
