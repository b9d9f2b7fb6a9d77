package org.shedboard.pack.search;

import java.util.Comparator;
import org.shedboard.pack.Plan;

/**
 * One of the best solutions found so far.
 *
 * @param handicaps per stay in minutes, those with which dispatching did best on the way to it; empty where nothing was dispatched
 */
record Elite(int stranded, int unplaced, long cost, Solution solution, Plan plan, int[] handicaps) {
    /** Fewer left out always beat cost. */
    static final Comparator<Elite> BEST_FIRST = Comparator.comparingInt(Elite::stranded)
            .thenComparingInt(Elite::unplaced)
            .thenComparingLong(Elite::cost);

    static Elite of(Trial trial, int[] handicaps) {
        Plan plan = trial.bestPlan();
        return new Elite(trial.bestStranded(), plan.unplaced().size(), plan.cost(), trial.best(), plan, handicaps);
    }

    /** Fewer left out always beat cost. */
    boolean isBetterThan(Elite other) {
        return BEST_FIRST.compare(this, other) < 0;
    }
}
