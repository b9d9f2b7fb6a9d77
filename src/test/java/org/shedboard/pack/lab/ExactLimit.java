package org.shedboard.pack.lab;

import java.util.Optional;
import org.shedboard.pack.Plan;

/**
 * How long the constraint solver may look, and what it starts from.
 *
 * @param hint a legal plan of the problem; nothing worse is looked at
 */
record ExactLimit(double seconds, int workers, Optional<Plan> hint) {
    static ExactLimit of(double seconds, int workers) {
        return new ExactLimit(seconds, workers, Optional.empty());
    }

    ExactLimit withHint(Plan plan) {
        return new ExactLimit(seconds, workers, Optional.of(plan));
    }
}
