package org.shedboard.hours;

import java.time.Instant;
import java.util.Optional;

/**
 * Why a clock entry was written after the fact.
 *
 * @param replaces id of the entry it stands for from now on; empty where none was there
 * @param isStruck whether it only takes that one away
 * @param by id of the person who answers for it
 */
public record Correction(Optional<String> replaces, boolean isStruck, String by, Instant at, String why) {
    public Correction {
        if (why.isBlank()) {
            throw new IllegalArgumentException("a correction needs its reason");
        }
        if (isStruck && replaces.isEmpty()) {
            throw new IllegalArgumentException("nothing is named that is to be struck out");
        }
    }
}
