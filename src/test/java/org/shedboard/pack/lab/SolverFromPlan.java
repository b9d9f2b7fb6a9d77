package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Plan;

/** How much the constraint solver still finds when it starts from the engine's plan. */
final class SolverFromPlan implements Section {
    private static final int LEAST_MACHINES = 8;
    private static final int MOST_MACHINES = 12;
    private static final double SECONDS = 60;
    private static final double MOST_PERCENT = 1;
    private static final long SEED = 1;

    @Override
    public String name() {
        return "hint";
    }

    @Override
    public String what() {
        return "CP-SAT given the engine's plan as hint, 60 s, 8–12 machines";
    }

    @Override
    public String target() {
        return "finds less than 1 %";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws InterruptedException {
        List<DayFolder.Day> days = lab.some(lab.days.judged(LEAST_MACHINES, MOST_MACHINES), lab.terms.longDays());
        if (days.isEmpty()) {
            return Reached.nothing("no day with so many machines");
        }
        List<Double> gains = new ArrayList<>();
        for (DayFolder.Day day : days) {
            gains.add(gain(lab, rows, day));
        }
        double most = gains.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return Reached.of(
                verdict(gains),
                "finds at most %s (%d days, 1 seed, the engine's plan after %.0f s)",
                Score.percent(most),
                days.size(),
                Laboratory.SECONDS_OF_FEW);
    }

    static Verdict verdict(List<Double> gains) {
        return Verdict.of(gains.stream().allMatch(gain -> gain < MOST_PERCENT));
    }

    /** By how many percent of the engine's cost the solver's plan is cheaper. */
    static double gain(Score engine, Score solver) {
        if (engine.unplaced() != solver.unplaced()) {
            return engine.isWorseThan(solver) ? Double.POSITIVE_INFINITY : 0;
        }
        return engine.cost() == 0 ? 0 : Math.max(0, 100.0 * (engine.cost() - solver.cost()) / engine.cost());
    }

    private static double gain(Laboratory lab, Rows rows, DayFolder.Day day) throws InterruptedException {
        Plan plan = lab.pack(day.problem(), SEED, Laboratory.SECONDS_OF_FEW);
        ExactLimit limit = ExactLimit.of(lab.scaled(SECONDS), Laboratory.THREADS);
        ExactAnswer answer = ExactPacker.pack(day.problem(), limit.withHint(plan));
        Score solver = Score.of(answer.expectPlan());
        double gain = gain(Score.of(plan), solver);
        rows.add(
                "%-14s %2d machines  engine %-10s solver after %4.1f s %-10s %-8s bound %-8d finds %s",
                day.name(),
                day.machines(),
                Score.of(plan),
                lab.scaled(SECONDS),
                solver,
                answer.word(),
                answer.bound(),
                Score.percent(gain));
        return gain;
    }
}
