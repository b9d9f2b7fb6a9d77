package org.shedboard.shop;

import java.time.Instant;
import java.util.OptionalDouble;

/** What one person found at one inspection point of one visit. */
public record Finding(String pointId, Mark mark, OptionalDouble measured, String note, String by, Instant at) {
    /** Whether what is renewed when dirty has to be renewed. */
    public boolean isDirt() {
        return mark == Mark.WATCH || mark == Mark.FIX;
    }
}
