package org.shedboard.learn;

import org.shedboard.fit.LogNormal;

/**
 * A piece of finished work with what was, or would have been, said of it before: by all that was learned until then, by the catalogue
 * alone, and by the last ten of its sort.
 */
public record Said(Lesson lesson, LogNormal learned, LogNormal catalogue, LogNormal lastTen) {
    public boolean isWithinLikely() {
        return lesson.actualMinutes() <= learned.median();
    }

    public boolean isWithinSafe() {
        return lesson.actualMinutes() <= learned.quantile(SAFE);
    }

    /** The share of such work that is called safe. */
    static final double SAFE = 0.8;

    static final double LIKELY = 0.5;

    /** Where what it took lies in what was said, from 0 to 1: evenly spread where forecasts are right. */
    public double place() {
        return learned.below(lesson.actualMinutes());
    }

    /** By how much it ran over what half of such work stays within, as a logarithm. */
    double overrun() {
        return StrictMath.log(lesson.actualMinutes()) - learned.mu();
    }
}
