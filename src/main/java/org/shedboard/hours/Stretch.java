package org.shedboard.hours;

import java.time.Instant;
import java.util.Optional;

/**
 * A time in which one person was in the shop and at one thing.
 *
 * @param from its first minute
 * @param to the minute after its last one
 * @param on what it counts for; empty while nothing was clocked, and on a break that nobody clocked
 * @param isLent whether it was worked at another machine than the one it counts for, being too short to move
 */
public record Stretch(Instant from, Instant to, Use use, Optional<Activity> on, boolean isLent) {
    /** What a time in the shop comes to. All but {@link #FREE} is attended. */
    public enum Use {
        ON_MACHINE,
        OTHER_WORK,
        /** A break that is time worked. */
        REST,
        /** A break of a length that somebody has to say something to; time worked until then. */
        REST_TO_SAY,
        /** A break that is not time worked. */
        FREE,
        UNACCOUNTED;

        public boolean isAttended() {
            return this != FREE;
        }

        public boolean isRest() {
            return this == REST || this == REST_TO_SAY;
        }
    }

    public int minutes() {
        return (int) ((to.getEpochSecond() - from.getEpochSecond()) / 60);
    }
}
