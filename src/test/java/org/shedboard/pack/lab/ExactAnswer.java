package org.shedboard.pack.lab;

import java.util.Optional;
import org.shedboard.pack.Plan;

/**
 * What the constraint solver says of a problem.
 *
 * @param isProven whether no plan is better: neither fewer jobs left out nor, with as few, a lower cost
 * @param plan the best plan it found; empty when it found none in its time
 * @param bound proven lower bound on the cost of any plan with as few unplaced jobs
 */
record ExactAnswer(boolean isProven, Optional<Plan> plan, long bound) {
    Plan expectPlan() {
        return plan.orElseThrow(() -> new IllegalStateException("no plan found in the time given"));
    }

    String word() {
        return isProven ? "optimal" : plan.isPresent() ? "feasible" : "nothing";
    }
}
