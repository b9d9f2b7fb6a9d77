package org.shedboard.pack.story;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Another person or another place for a task, and when it could start with that, everything else of the plan being as it is.
 *
 * @param id of the person or the place
 * @param bar why it can never be that one; empty where it can
 * @param earliest the first minute at which it could start, no later than it does, and be over by when it is; empty where there is none
 * @param against what forbids the minute at which it starts; empty where it could start then
 */
public record Instead(String id, Optional<Bar> bar, OptionalInt earliest, List<Reason> against) {
    /** What rules somebody or a place out for good. */
    public enum Bar {
        /** They may not: the skill is not theirs. */
        SKILL,
        /** Whoever did another task of the machine may not do this one. */
        APART,
        /** The task is set for somebody else. */
        PINNED,
        /** It is rated for less than the machine. */
        RATED
    }

    public Instead {
        against = List.copyOf(against);
    }

    static Instead never(String id, Bar bar) {
        return new Instead(id, Optional.of(bar), OptionalInt.empty(), List.of());
    }
}
