package org.shedboard.day;

import java.util.List;
import java.util.Optional;

/**
 * Something that needs the foreman.
 *
 * @param values what belongs into its sentence, as a person reads it
 */
public record Concern(Kind kind, Optional<String> visitId, List<String> values) {
    /** What it is about, the most urgent first. */
    public enum Kind {
        UNSETTLED,
        DAY_NOT_CLOSED,
        NOT_TO_BE_RIDDEN,
        PROMISE_MISSED,
        PROMISE_IN_DANGER,
        NOT_IN_PLAN,
        PART_SHORT,
        OWNER_TO_ASK,
        HELD_FOR_PARTS,
        HELD_FOR_LOOK,
        HOIST_UNCHECKED,
        HOIST_LOCKED_OUT,
        BOOKING_LATE,
        RUNS_OVER,
        ON_AFTER_KNOCK_OFF,
        OWNER_TO_RING,
        PROMISE_AT_RISK,
        NO_PROMISE
    }

    public Concern {
        values = List.copyOf(values);
    }
}
