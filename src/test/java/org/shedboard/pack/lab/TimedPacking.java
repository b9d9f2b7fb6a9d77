package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packing;
import org.shedboard.pack.search.Round;

/**
 * The engine as the program uses it with a time limit: the rounds of each step side by side, until time is up in the middle of one,
 * or the plan is proven to be best.
 */
final class TimedPacking implements AutoCloseable {
    private final ExecutorService threads;

    TimedPacking(int threads) {
        this.threads = Executors.newFixedThreadPool(threads);
    }

    /** The best plan found in so many seconds; it has been through the checker. */
    Plan pack(Problem problem, long seed, double seconds) throws InterruptedException {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        Packing packing = Packing.of(problem, seed);
        List<Round> rounds = packing.rounds();
        while (System.nanoTime() < end && !rounds.isEmpty() && !isProven(packing.plan())) {
            packing = packing.after(run(rounds, end)).proven();
            rounds = packing.rounds();
        }
        return checked(problem, packing.plan());
    }

    /** A cost is proven to be least among plans with as few jobs left out, so it says nothing while any is. */
    private static boolean isProven(Plan plan) {
        return plan.unplaced().isEmpty() && plan.cost() <= plan.bound();
    }

    private static Plan checked(Problem problem, Plan plan) {
        PlanCheck check = PlanCheck.of(problem, plan);
        if (!check.isLegal()) {
            throw new IllegalStateException("the engine broke a rule: " + check);
        }
        return plan;
    }

    private List<Round.Found> run(List<Round> rounds, long end) throws InterruptedException {
        List<Callable<Round.Found>> work = rounds.stream()
                .map(round -> (Callable<Round.Found>) () -> round.run(() -> System.nanoTime() >= end, better -> {}))
                .toList();
        List<Round.Found> found = new ArrayList<>();
        for (Future<Round.Found> one : threads.invokeAll(work)) {
            found.add(resultOf(one));
        }
        return found;
    }

    private static Round.Found resultOf(Future<Round.Found> one) throws InterruptedException {
        try {
            return one.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a round failed", failed.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
