package org.shedboard.ahead;

import java.util.List;

/**
 * A group of people, or of places, and all that only they can take.
 *
 * @param what what they are wanted for
 * @param booked minutes of it
 * @param open minutes they have
 * @param isEverybody whether they are all there are
 */
public record Squeeze<K>(List<K> what, int booked, int open, boolean isEverybody) {
    public Squeeze {
        what = List.copyOf(what);
    }

    public boolean isOver() {
        return booked > open;
    }

    int left() {
        return open - booked;
    }
}
