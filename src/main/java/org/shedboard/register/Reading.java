package org.shedboard.register;

import java.time.Instant;
import java.util.Locale;

/**
 * What a meter showed at a moment.
 *
 * @param by id of whoever read it, or was told it
 */
public record Reading(String id, String machineId, Instant at, Unit unit, double value, Told told, String by) {
    /** What the meter counts; how far a farm's machine goes in a day is invented. */
    public enum Unit {
        HOURS(24, 12),
        KILOMETRES(1_000, 100);

        private final int mostPerDay;
        private final int busyPerDay;

        Unit(int mostPerDay, int busyPerDay) {
            this.mostPerDay = mostPerDay;
            this.busyPerDay = busyPerDay;
        }

        /** More than this in a day is impossible. */
        double mostPerDay() {
            return mostPerDay;
        }

        /** As much as this in a day is work from dawn to dusk. */
        double busyPerDay() {
            return busyPerDay;
        }
    }

    /** What was said of the reading when it was asked about. */
    public enum Told {
        /** Nothing: it goes with those before it. */
        AS_EXPECTED,
        /** The meter is another one than before. */
        NEW_METER,
        /** It is right as typed; where others cannot be right beside it, they are wrong. */
        RIGHT_AS_TYPED
    }

    public Reading {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no meter shows %s".formatted(value));
        }
    }

    /** When it was, in days and parts of a day. */
    double day() {
        return Days.of(at);
    }

    /** As the meter shows it: whole, or with one digit behind the point. */
    public String shown() {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }
}
