package org.shedboard.pack.lab;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;

/**
 * Until when each job must finish in a plan that costs no more than a known one: all other jobs finish as early as each could alone,
 * and what is left of the cost is its own.
 */
final class CostLimits {
    private final Network network;
    private final Costs costs;
    private final Map<String, Integer> earliest = new LinkedHashMap<>();
    /** What a plan may cost beyond every job's earliest finish. */
    private final long spare;
    /** The latest of the earliest finishes. */
    private final int latestEarliest;

    CostLimits(Network network, long known) {
        this.network = network;
        costs = network.problem.costs();
        long least = 0;
        for (Problem.Job job : network.problem.jobs()) {
            int finish = network.of(job).stream()
                    .mapToInt(network::earliestComplete)
                    .max()
                    .orElse(0);
            earliest.put(job.id(), finish);
            least += cost(job, finish);
        }
        int latest =
                earliest.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        spare = known - least - costs.makespan() * latest;
        latestEarliest = latest;
    }

    private long cost(Problem.Job job, int finish) {
        long late = Math.max(0, finish - job.promise().orElse(Integer.MAX_VALUE));
        return job.weight() * (costs.flow() * finish + costs.late() * late);
    }

    void tighten() {
        network.setLatest(this::latest);
    }

    private int latest(Problem.Job job) {
        int low = earliest.get(job.id());
        int high = network.problem.horizon();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            long more = cost(job, middle)
                    - cost(job, earliest.get(job.id()))
                    + costs.makespan() * Math.max(0, middle - latestEarliest);
            low = more <= spare ? middle : low;
            high = more <= spare ? high : middle - 1;
        }
        return low;
    }
}
