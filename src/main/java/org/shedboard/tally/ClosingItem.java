package org.shedboard.tally;

import java.util.List;
import java.util.Optional;
import org.shedboard.hours.ClockEntry;

/**
 * Something the foreman looks at before the day is closed.
 *
 * @param entry the row of the hours it is about, where it is about one
 * @param values what belongs into its sentence, as a person reads it
 */
public record ClosingItem(Kind kind, Optional<ClockEntry> entry, List<String> values) {
    /** What it is about, in the order in which it is gone through; the bundle has its sentence under {@code closing.NAME}. */
    public enum Kind {
        OPEN_ENTRY(true),
        STILL_HERE(true),
        REST_TO_SAY(false),
        OVERLAPPED(false),
        NO_OIL(false),
        ON_HOIST(false),
        NOT_REACHED(false),
        MISSED_UNTOLD(false),
        MISSED_TOLD(false),
        PARTS_TO_ORDER(false),
        HOIST_LOCKED(false),
        GOES_OVER(false);

        private final boolean blocks;

        Kind(boolean blocks) {
            this.blocks = blocks;
        }

        /** Whether the day cannot be closed before it is settled. */
        public boolean blocks() {
            return blocks;
        }

        /** Whether it ought to be settled, or somebody be told, before everybody goes home. */
        public boolean isUrgent() {
            return blocks || this == REST_TO_SAY || this == NO_OIL || this == MISSED_UNTOLD;
        }
    }

    public ClosingItem {
        values = List.copyOf(values);
    }
}
