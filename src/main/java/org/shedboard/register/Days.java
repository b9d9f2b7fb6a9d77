package org.shedboard.register;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** Moments as days and parts of a day since 1970, to reckon use per day with. */
final class Days {
    private static final double SECONDS = 86_400;
    /** Beyond this nothing is foretold. */
    private static final double FARTHEST = 200_000;

    private Days() {}

    static double of(Instant at) {
        return at.getEpochSecond() / SECONDS;
    }

    static LocalDate date(double day, ZoneId zone) {
        double bounded = Math.min(day, FARTHEST);
        return LocalDate.ofInstant(Instant.ofEpochSecond(Math.round(bounded * SECONDS)), zone);
    }
}
