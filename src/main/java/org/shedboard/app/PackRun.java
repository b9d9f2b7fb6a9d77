package org.shedboard.app;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import org.shedboard.app.command.PackCommand;
import org.shedboard.pack.Packer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.check.PlanCheck;

/**
 * One problem being packed from the command line. With a number of tries the plan hangs on nothing else; with a time, rounds with
 * seeds of their own are run until it is up, and only whole rounds count, so that each plan can be had again by its seed and tries.
 * Whoever interrupts it gets the best plan seen so far.
 */
final class PackRun {
    private static final long FIRST_ROUND = 500;
    /** Rounds shorter than this are not worth their start. */
    private static final long SHORTEST_ROUND = 50;
    /** Share of the time left that a round is given, in a hundred: the guess of its pace is a guess. */
    private static final long SHARE = 85;

    private final Problem problem;
    private final Consumer<Plan> print;
    private final long begun = System.nanoTime();
    private boolean printed;
    private Optional<Plan> best = Optional.empty();
    private Optional<Plan> glimpsed = Optional.empty();

    /** @param print called once, with a plan that obeys every rule */
    PackRun(Problem problem, Consumer<Plan> print) {
        this.problem = problem;
        this.print = print;
    }

    /** From here on there is a plan for whoever interrupts. */
    void begin() {
        glimpse(Packer.first(problem));
    }

    void run(PackCommand asked) {
        begin();
        if (asked.time().isPresent()) {
            runFor(asked.time().get(), asked.seed());
        } else {
            offer(Packer.pack(problem, new Search(asked.seed(), asked.tries()), () -> false, this::glimpse));
        }
        printOnce(false);
    }

    private void runFor(Duration time, long firstSeed) {
        long end = begun + time.toNanos();
        long seed = firstSeed;
        long tries = FIRST_ROUND;
        while (System.nanoTime() < end && tries >= SHORTEST_ROUND) {
            long from = System.nanoTime();
            boolean[] cut = {false};
            Plan plan = Packer.pack(
                    problem, new Search(seed, tries), () -> cut[0] = System.nanoTime() >= end, this::glimpse);
            if (!cut[0]) {
                offer(plan);
            }
            long now = System.nanoTime();
            tries = (long) ((double) tries / Math.max(1, now - from) * (end - now) * SHARE / 100);
            seed++;
        }
        if (!hasWholeRound()) {
            offer(Packer.first(problem));
        }
    }

    /** The best plan so far is printed, unless one was; for whoever does not want to wait longer. */
    void interrupt() {
        printOnce(true);
    }

    /** Whoever comes second waits until the plan is out, so that the program does not end in the middle of it. */
    private synchronized void printOnce(boolean early) {
        if (printed) {
            return;
        }
        printed = true;
        Optional<Plan> plan = early ? seenSoFar() : whole();
        if (plan.isPresent()) {
            long millis = Duration.ofNanos(System.nanoTime() - begun).toMillis();
            Plan checked = checked(plan.get()).withMillis(millis);
            print.accept(early ? checked : Packer.proven(problem, checked));
        }
    }

    private Plan checked(Plan plan) {
        PlanCheck check = PlanCheck.of(problem, plan);
        if (!check.isLegal()) {
            throw new IllegalStateException("the packing engine broke a rule: " + check);
        }
        return plan;
    }

    private synchronized Optional<Plan> whole() {
        return best;
    }

    private synchronized boolean hasWholeRound() {
        return best.isPresent();
    }

    /** The last plan glimpsed in a round that is not over may still lack a job that has begun; then it does not count. */
    private synchronized Optional<Plan> seenSoFar() {
        return glimpsed.filter(plan -> best.isEmpty() || plan.isBetterThan(best.get()))
                .filter(plan -> PlanCheck.of(problem, plan).isLegal())
                .or(() -> best);
    }

    private synchronized void offer(Plan plan) {
        if (best.isEmpty() || plan.isBetterThan(best.get())) {
            best = Optional.of(plan);
        }
    }

    private synchronized void glimpse(Plan plan) {
        if (glimpsed.isEmpty() || plan.isBetterThan(glimpsed.get())) {
            glimpsed = Optional.of(plan);
        }
    }
}
