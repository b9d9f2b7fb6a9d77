package org.shedboard.register;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.shop.Amount;

/**
 * One change of what lies on the shelf; never changed itself, so that all of an item's changes add up to what is there.
 *
 * @param change more, or less when it is below nothing
 * @param source what it was taken for or came with: id of the task's visit, or of the order
 */
public record Movement(
        String id, String itemId, Kind kind, Amount change, Instant at, String by, Optional<String> source) {
    /** Why it changed. */
    public enum Kind {
        COUNTED,
        TAKEN,
        CAME,
        /** What was taken was not used after all. */
        PUT_BACK
    }
}
