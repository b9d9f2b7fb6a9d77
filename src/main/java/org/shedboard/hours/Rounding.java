package org.shedboard.hours;

import java.time.Instant;
import java.time.ZoneId;

/**
 * How minutes are rounded: to which unit, and which way.
 *
 * <p>Half of a unit is rounded up: of a tenth of an hour three minutes make six; half a quarter is never met by whole minutes, so that
 * seven go down and eight go up, as the United States Department of Labor's fact sheets have it. Rounding to the nearest five minutes,
 * tenth or quarter is what 29 CFR 785.48(b) accepts where it does not, over time, underpay; other places have other rules, and
 * theirs come first.
 */
public record Rounding(Unit unit, Direction direction) {
    /** What is rounded to. */
    public enum Unit {
        EXACT(1),
        FIVE(5),
        TENTH(6),
        QUARTER(15);

        private final int minutes;

        Unit(int minutes) {
            this.minutes = minutes;
        }

        public int minutes() {
            return minutes;
        }
    }

    /** Which way it goes; up is to the good of whoever is paid. */
    public enum Direction {
        NEAREST,
        UP
    }

    public static final Rounding EXACT = new Rounding(Unit.EXACT, Direction.NEAREST);

    /** A length of time, in minutes. */
    public int minutes(int minutes) {
        return (int) (direction == Direction.UP ? up(minutes) : nearest(minutes));
    }

    /** The minute somebody came; minutes count from 1970, and the marks are those of the shop's clock on the wall. */
    long arrival(long minute, ZoneId zone) {
        long wall = minute + offset(minute, zone);
        return minute + (direction == Direction.UP ? down(wall) : nearest(wall)) - wall;
    }

    /** The minute somebody left. */
    long leaving(long minute, ZoneId zone) {
        long wall = minute + offset(minute, zone);
        return minute + minutesFrom(wall) - wall;
    }

    private long minutesFrom(long wall) {
        return direction == Direction.UP ? up(wall) : nearest(wall);
    }

    private static long offset(long minute, ZoneId zone) {
        return Instant.ofEpochSecond(60L * minute).atZone(zone).getOffset().getTotalSeconds() / 60;
    }

    private long down(long minutes) {
        return Math.floorDiv(minutes, unit.minutes) * unit.minutes;
    }

    private long up(long minutes) {
        return down(minutes + unit.minutes - 1);
    }

    private long nearest(long minutes) {
        return down(minutes + unit.minutes / 2);
    }
}
