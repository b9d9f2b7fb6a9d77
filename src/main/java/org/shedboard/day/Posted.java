package org.shedboard.day;

import java.time.Instant;
import org.shedboard.pack.Plan;

/**
 * The plan that everybody works to.
 *
 * @param origin the moment that is minute 0 of the plan
 */
public record Posted(Plan plan, Instant origin) {
    /** The same plan without one visit, which is then free to go wherever it fits best. */
    Posted without(String visitId) {
        Plan less = new Plan(
                plan.cost(),
                plan.bound(),
                plan.unplaced(),
                plan.stays().stream()
                        .filter(stay -> !stay.job().equals(visitId))
                        .toList(),
                plan.tasks().stream()
                        .filter(task -> !task.job().equals(visitId))
                        .toList(),
                plan.seed(),
                plan.tries(),
                plan.millis());
        return new Posted(less, origin);
    }
}
