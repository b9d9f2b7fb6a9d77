package org.shedboard.pack.lab;

import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.Chances;
import org.shedboard.pack.chance.Insertion;
import org.shedboard.pack.chance.MeanCost;
import org.shedboard.pack.search.Packer;

/** How long a quote for one more machine takes: fitting a day's last machine into the plan of the others, and the chances of that. */
final class QuoteTime implements Section {
    private static final int REPLAYS = 1000;
    private static final int WARM_TURNS = 10;
    private static final double SECONDS_FOR_THE_PLAN = 1;
    private static final double MOST_MILLISECONDS = 50;
    private static final long SEED = 1;
    /** Of drawn days that the fitting has not seen. */
    private static final long UNSEEN = 99;

    @Override
    public String name() {
        return "quote";
    }

    @Override
    public String what() {
        return "promise quote on the posted plan";
    }

    @Override
    public String target() {
        return "≤ 50 ms at 40 machines";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws InterruptedException {
        double last = 0;
        double loop = 0;
        for (DayFolder.Day day : TimedDays.of(lab)) {
            Problem problem = posted(lab, day);
            String job = problem.jobs().get(problem.jobs().size() - 1).id();
            last = milliseconds(problem, job);
            loop = Calibration.millionSteps();
            rows.add(
                    "%-14s %2d machines  %6.1f ms  loop %.0f M/s  mean cost %s, of the plan moved along %.0f",
                    day.name(),
                    day.machines(),
                    last,
                    loop,
                    Insertion.of(problem, job)
                            .map(plan -> "%.0f".formatted(meanCost(problem, plan)))
                            .orElse("- (does not fit)"),
                    meanCost(problem, Packer.follow(problem)));
        }
        return Reached.of(
                Verdict.of(last <= MOST_MILLISECONDS),
                "%.1f ms with its %,d replays (best of %d, loop %.0f M/s)",
                last,
                REPLAYS,
                Calibration.TURNS,
                loop);
    }

    /** The day with the plan of all machines but the last. */
    private static Problem posted(Laboratory lab, DayFolder.Day day) throws InterruptedException {
        Problem problem = Unsure.of(day.problem());
        List<Problem.Job> others = problem.jobs().subList(0, problem.jobs().size() - 1);
        return problem.withPosted(lab.pack(problem.withJobs(others), SEED, SECONDS_FOR_THE_PLAN));
    }

    private static double milliseconds(Problem problem, String job) {
        for (int turn = 0; turn < WARM_TURNS; turn++) {
            quote(problem, job);
        }
        return Calibration.fastest(() -> quote(problem, job)) / 1e6;
    }

    private static void quote(Problem problem, String job) {
        Optional<Plan> plan = Insertion.of(problem, job);
        plan.ifPresent(fitted -> Chances.of(problem, fitted, REPLAYS, SEED));
    }

    private static double meanCost(Problem problem, Plan plan) {
        return MeanCost.of(problem, plan, REPLAYS, UNSEEN).points();
    }
}
