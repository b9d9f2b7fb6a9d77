package org.shedboard.shop;

import java.time.Instant;

/**
 * Why a visit does not go on, and until when that is expected to last.
 *
 * @param until the minute from which it is planned again
 */
public record Hold(Reason reason, String note, Instant since, Instant until) {
    /** What a held machine waits for. */
    public enum Reason {
        PARTS,
        OWNERS_WORD,
        ANOTHER_LOOK
    }
}
