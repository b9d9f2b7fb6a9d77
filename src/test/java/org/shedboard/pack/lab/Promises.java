package org.shedboard.pack.lab;

import java.util.LinkedHashSet;
import java.util.Set;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** The promises that a plan keeps, by job. */
record Promises(Set<String> kept) {
    Promises {
        kept = Set.copyOf(kept);
    }

    static Promises of(Problem problem, Plan plan) {
        Set<String> kept = new LinkedHashSet<>();
        for (Problem.Job job : problem.jobs()) {
            int promise = job.promise().orElse(-1);
            boolean isKept = plan.finishOf(job).orElse(Integer.MAX_VALUE) <= promise;
            if (isKept) {
                kept.add(job.id());
            }
        }
        return new Promises(kept);
    }

    /** How many of the other plan's promises this one misses. */
    int missedOf(Promises other) {
        return (int) other.kept.stream().filter(job -> !kept.contains(job)).count();
    }
}
