package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.shop.Amount;

/**
 * Where the part that a task needs comes from.
 *
 * @param itemId the item, or one of those it can be
 * @param fromShelf how much of it is set aside from what is there
 * @param from when all of it can be here; empty where it is on the shelf, and where nobody has counted the item
 */
public record Cover(Need need, String itemId, State state, Amount fromShelf, Optional<Instant> from) {
    /** Where it is. */
    public enum State {
        ON_SHELF,
        ON_ORDER,
        NOT_ORDERED,
        /** Nobody has counted it, so nothing waits for it. */
        NOT_COUNTED
    }

    public boolean isShort() {
        return state == State.ON_ORDER || state == State.NOT_ORDERED;
    }

    /** What is not on the shelf of it. */
    public Amount missing() {
        return isShort() ? need.amount().minus(fromShelf) : Amount.NOTHING;
    }
}
