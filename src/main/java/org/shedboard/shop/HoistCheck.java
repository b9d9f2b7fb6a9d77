package org.shedboard.shop;

import java.time.Instant;
import java.util.Optional;

/**
 * The day's look at one hoist before it is used.
 *
 * @param by id of the person who checked it or locked it out
 * @param lockedOut why it may not be used; empty when it was found sound
 */
public record HoistCheck(String placeId, String by, Instant at, Optional<String> lockedOut) {
    public boolean isSound() {
        return lockedOut.isEmpty();
    }
}
