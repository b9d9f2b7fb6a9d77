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
        HOURS("h", 24, 12),
        KILOMETRES("km", 1_000, 100);

        private final String symbol;
        private final int mostPerDay;
        private final int busyPerDay;

        Unit(String symbol, int mostPerDay, int busyPerDay) {
            this.symbol = symbol;
            this.mostPerDay = mostPerDay;
            this.busyPerDay = busyPerDay;
        }

        public String symbol() {
            return symbol;
        }

        /** A value with its unit: whole, or with one digit behind the point. */
        public String say(double value) {
            String number = value == Math.rint(value)
                    ? String.valueOf((long) value)
                    : String.format(Locale.ROOT, "%.1f", value);
            return number + " " + symbol;
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

    Reading of(String otherMachineId) {
        return new Reading(id, otherMachineId, at, unit, value, told, by);
    }

    /** When it was, in days and parts of a day. */
    double day() {
        return Days.of(at);
    }

    /** As the meter shows it, with its unit. */
    public String shown() {
        return unit.say(value);
    }
}
