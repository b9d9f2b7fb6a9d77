package org.shedboard.learn;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * What is expected before any work is seen: how far each sort scatters about the catalogue, and who is still learning the trade.
 *
 * @param spreads standard deviations of the logarithm of (actual / catalogue) of the work of one sort in one stay
 * @param machine the part of it that all work on one machine shares
 * @param person the part of it that all work of one person shares on one day
 * @param learners ids of people
 */
public record Expectation(Map<Sort, Double> spreads, double machine, double person, Set<String> learners) {
    public Expectation {
        spreads = Map.copyOf(new EnumMap<>(spreads));
        learners = Set.copyOf(learners);
        for (Sort sort : Sort.values()) {
            if (!(spreads.getOrDefault(sort, 0.0) > 0) || !Double.isFinite(spreads.get(sort))) {
                throw new IllegalArgumentException("no spread for %s".formatted(sort));
            }
        }
        if (!(machine >= 0) || !(person >= 0)) {
            throw new IllegalArgumentException("machines cannot share %s, people %s".formatted(machine, person));
        }
    }

    double spreadOf(Sort sort) {
        return spreads.get(sort);
    }
}
