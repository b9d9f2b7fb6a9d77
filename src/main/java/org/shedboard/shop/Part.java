package org.shedboard.shop;

import java.time.Instant;
import java.util.Optional;

/**
 * Something a line needs from the shelf.
 *
 * @param quantity a text, such as "2.5 L"
 * @param fitted which item went in, or will; empty until somebody said so, or the task that uses it was finished
 */
public record Part(String name, String quantity, Optional<Fitted> fitted) {
    /** An item of the catalogue that somebody says is the one. */
    public record Fitted(String itemId, String by, Instant at) {}

    public Part(String name, String quantity) {
        this(name, quantity, Optional.empty());
    }

    public Part with(Fitted said) {
        return new Part(name, quantity, Optional.of(said));
    }
}
