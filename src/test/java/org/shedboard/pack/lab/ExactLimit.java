package org.shedboard.pack.lab;

import java.util.Optional;
import org.shedboard.pack.Plan;

/**
 * How long the constraint solver may look, and what it starts from.
 *
 * @param seconds by the clock; for comparisons
 * @param effort in the solver's own units, of about a second on a quiet machine; does not depend on how busy this one is
 * @param hint a legal plan of the problem; nothing worse is looked at
 */
record ExactLimit(double seconds, double effort, int workers, Optional<Plan> hint) {
    private static final double NO_LIMIT = 1e6;

    static ExactLimit of(double seconds, int workers) {
        return new ExactLimit(seconds, NO_LIMIT, workers, Optional.empty());
    }

    static ExactLimit ofEffort(double effort, int workers) {
        return new ExactLimit(NO_LIMIT, effort, workers, Optional.empty());
    }

    ExactLimit withHint(Plan plan) {
        return new ExactLimit(seconds, effort, workers, Optional.of(plan));
    }
}
