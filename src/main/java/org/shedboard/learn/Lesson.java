package org.shedboard.learn;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A piece of finished work to learn from: what one visit took of one sort in one stay.
 *
 * @param catalogueMinutes hands-on minutes by the catalogue, at the usual pace of who did it
 * @param actualMinutes hands-on minutes clocked, all people together, corrections made
 */
public record Lesson(
        String visitId, Sort sort, Circumstances circumstances, double catalogueMinutes, double actualMinutes) {
    /** Nobody works longer at one stay without a night between; such a clock was forgotten. */
    private static final double LONGEST = 16 * 60;

    /** Why work is not learned from. */
    public enum Fault {
        /** No minutes, or fewer than none, were clocked. */
        NO_MINUTES,
        /** The catalogue has no minutes for it. */
        NOT_IN_CATALOGUE,
        /** More than anybody works at a stretch. */
        TOO_LONG,
        /** Too far from all the others to be the same sort of thing. */
        FAR_OFF
    }

    LocalDate date() {
        return circumstances.date();
    }

    /** What is wrong with it whatever the others are like. */
    Optional<Fault> fault() {
        if (!(actualMinutes > 0)) {
            return Optional.of(Fault.NO_MINUTES);
        }
        if (!(catalogueMinutes > 0) || Double.isInfinite(catalogueMinutes)) {
            return Optional.of(Fault.NOT_IN_CATALOGUE);
        }
        return actualMinutes > LONGEST ? Optional.of(Fault.TOO_LONG) : Optional.empty();
    }

    /** The logarithm of what it took over what the catalogue says. */
    double logRatio() {
        return StrictMath.log(actualMinutes) - StrictMath.log(catalogueMinutes);
    }
}
