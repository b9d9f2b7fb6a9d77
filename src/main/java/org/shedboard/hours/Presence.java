package org.shedboard.hours;

import java.time.Instant;
import java.util.List;

/**
 * One person's time at work on one day.
 *
 * @param breaks unpaid breaks within it, in order
 */
public record Presence(String personId, Instant from, Instant to, List<Break> breaks) {
    /** A time in which nobody works: from inclusive, to exclusive. */
    public record Break(Instant from, Instant to) {}

    public Presence {
        breaks = List.copyOf(breaks);
    }
}
