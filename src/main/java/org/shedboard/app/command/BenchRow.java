package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * What came of one problem.
 *
 * @param plans one a seed, the best first
 * @param known the best cost that anybody knows, of a plan that leaves nothing out
 * @param tries plans decoded in all searches together
 * @param nanoseconds all searches took together
 */
public record BenchRow(
        String name, int jobs, int tasks, List<Plan> plans, Optional<Long> known, long tries, long nanoseconds) {
    public BenchRow {
        plans = plans.stream().sorted(BenchRow::compare).toList();
    }

    /** @param plans one a seed */
    public static BenchRow of(
            String name, Problem problem, List<Plan> plans, Optional<Long> known, long tries, long nanoseconds) {
        int tasks = problem.jobs().stream()
                .flatMap(job -> job.stays().stream())
                .mapToInt(stay -> stay.tasks().size())
                .sum();
        return new BenchRow(name, problem.jobs().size(), tasks, plans, known, tries, nanoseconds);
    }

    private static int compare(Plan one, Plan other) {
        if (one.isBetterThan(other)) {
            return -1;
        }
        return other.isBetterThan(one) ? 1 : 0;
    }

    Plan best() {
        return plans.get(0);
    }

    /** The one in the middle; the worse of two. */
    Plan median() {
        return plans.get(plans.size() / 2);
    }

    Plan worst() {
        return plans.get(plans.size() - 1);
    }

    /** The best bound that any search proved, for as many jobs left out as the best plan does. */
    long bound() {
        return plans.stream()
                .filter(plan -> plan.unplaced().size() == best().unplaced().size())
                .mapToLong(Plan::bound)
                .max()
                .orElse(0);
    }

    /** The most jobs that any of the plans leaves out. */
    int leftOut() {
        return worst().unplaced().size();
    }

    /** By how many percent the median is above the bound; empty where it has no meaning. */
    OptionalDouble gapToBound() {
        return gapTo(bound());
    }

    /** By how many percent the median is above the best known cost, below it when negative; empty where it has no meaning. */
    OptionalDouble gapToKnown() {
        return known.isPresent() ? gapTo(known.get()) : OptionalDouble.empty();
    }

    /** Costs of plans that leave something out cannot be compared, nor can nothing be exceeded by a share. */
    private OptionalDouble gapTo(long cost) {
        long above = median().cost() - cost;
        if (!median().unplaced().isEmpty() || (cost == 0 && above != 0)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(above == 0 ? 0 : 100.0 * above / cost);
    }

    /** Plans decoded a second. */
    long triesASecond() {
        return Math.round(tries * 1e9 / Math.max(1, nanoseconds));
    }
}
