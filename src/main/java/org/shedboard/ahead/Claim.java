package org.shedboard.ahead;

import java.util.Set;

/**
 * Minutes that any of some people, or any of some places, can take.
 *
 * @param what what they are for: a skill, a kind of place
 * @param by ids of those who can take them, each of them a part or all
 */
public record Claim<K>(K what, Set<String> by, int minutes) {
    public Claim {
        by = Set.copyOf(by);
        if (minutes < 0) {
            throw new IllegalArgumentException("%s cannot take %s minutes".formatted(what, minutes));
        }
    }

    Claim<K> of(int others) {
        return new Claim<>(what, by, others);
    }
}
