package org.shedboard.estimate;

import java.util.EnumMap;
import java.util.Map;
import org.shedboard.shop.WorkKind;

/**
 * How far the minutes of each kind of work scatter: standard deviations of the logarithm of (actual / catalogue).
 *
 * @param machine the part all tasks of one machine share
 * @param person the part all tasks of one person share on one day
 */
public record Spreads(Map<WorkKind, Double> byKind, double machine, double person) {
    public Spreads {
        byKind = Map.copyOf(new EnumMap<>(byKind));
        for (WorkKind kind : WorkKind.values()) {
            if (!byKind.containsKey(kind)) {
                throw new IllegalArgumentException("no spread for %s".formatted(kind));
            }
        }
    }

    public double of(WorkKind kind) {
        return byKind.get(kind);
    }
}
