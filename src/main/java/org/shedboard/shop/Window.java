package org.shedboard.shop;

import java.time.LocalTime;

/** Hours of every working day: from inclusive, to exclusive, never over midnight. */
public record Window(LocalTime from, LocalTime to) {
    public Window {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a window cannot end (%s) before it starts (%s)".formatted(to, from));
        }
    }
}
