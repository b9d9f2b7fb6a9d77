package org.shedboard.tally;

import java.time.Instant;

/**
 * Something the journal tells of a visit.
 *
 * @param lineId the line it is about; empty where it is about the visit as a whole
 */
public record Noted(Kind kind, Instant at, String visitId, String lineId) {
    /** What happened. */
    public enum Kind {
        /** A line was added after the machine had been taken in. */
        WORK_ADDED,
        HELD,
        RELEASED,
        /** It came in muddier, or cleaner, than it was booked. */
        MUD_CHANGED
    }
}
