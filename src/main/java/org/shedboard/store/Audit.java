package org.shedboard.store;

import java.util.List;

/**
 * The journal held against the tables.
 *
 * @param changes how many changes the journal tells
 * @param rows how many rows of tables it tells all of, or the last change of
 * @param faults what does not agree, by table and key alone: what stands in a row may be about somebody
 */
public record Audit(long changes, int rows, List<Fault> faults) {
    public Audit {
        faults = List.copyOf(faults);
    }

    /** What is wrong. */
    public enum Kind {
        /** The row is not there, though the journal tells of no end of it. */
        MISSING,
        /** A column holds something else than the journal says it was changed to. */
        DIFFERENT,
        /** The row is there, and no change made it. */
        UNTOLD,
        /** A change of this number is in the journal twice. */
        TWICE
    }

    /** @param row the table and the key of the row, and its column where one is meant */
    public record Fault(Kind kind, String row) {}
}
