package org.shedboard.app.command;

import java.util.List;
import java.util.OptionalDouble;

/** Percentages of many problems taken together; those that have none are not counted. */
record Gaps(List<Double> sorted) {
    Gaps {
        sorted = sorted.stream().sorted().toList();
    }

    static Gaps of(List<OptionalDouble> gaps) {
        return new Gaps(gaps.stream()
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList());
    }

    int count() {
        return sorted.size();
    }

    /** The one in the middle, or the mean of two. */
    OptionalDouble median() {
        int count = sorted.size();
        return count == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((sorted.get((count - 1) / 2) + sorted.get(count / 2)) / 2);
    }

    OptionalDouble mean() {
        return sorted.stream().mapToDouble(Double::doubleValue).average();
    }

    OptionalDouble max() {
        return sorted.stream().mapToDouble(Double::doubleValue).max();
    }
}
