package org.shedboard.register;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.shop.Amount;

/**
 * Something that was ordered.
 *
 * @param due when it is expected
 * @param come when it came; empty while it is waited for
 */
public record Order(String id, String itemId, Amount amount, Instant ordered, Instant due, Optional<Instant> come) {
    public Order {
        if (!amount.isPositive()) {
            throw new IllegalArgumentException("order %s is for %s of %s".formatted(id, amount, itemId));
        }
    }

    public boolean isOpen() {
        return come.isEmpty();
    }

    public Order cameAt(Instant at) {
        return new Order(id, itemId, amount, ordered, due, Optional.of(at));
    }
}
