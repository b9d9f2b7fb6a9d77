package org.shedboard.day;

import java.util.Arrays;
import java.util.List;

/**
 * Something that a move by hand breaks, and is done all the same where the foreman insists.
 *
 * @param values strings as a person reads them
 */
public record Snag(Kind kind, List<String> values) {
    /** What it is, the gravest first. */
    public enum Kind {
        /** A machine falls out of the plan. */
        LEFT_OUT,
        /** A promise is missed that was kept. */
        PROMISE_MISSED,
        /** Somebody does what they have not the skill for. */
        SKILL_LENT,
        /** Somebody works in a break or after hours. */
        OFF_HOURS
    }

    public Snag {
        values = List.copyOf(values);
    }

    static Snag of(Kind kind, Object... values) {
        return new Snag(kind, Arrays.stream(values).map(String::valueOf).toList());
    }
}
