package org.shedboard.pack.lab;

import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.Chances;

/** How long the chances of a plan take, on one thread. */
final class ReplayTime implements Section {
    private static final int REPLAYS = 1000;
    private static final int WARM_TURNS = 20;
    private static final double SECONDS_FOR_THE_PLAN = 1;
    private static final double MOST_MILLISECONDS = 50;
    private static final long SEED = 1;

    @Override
    public String name() {
        return "replays";
    }

    @Override
    public String what() {
        return "1,000 replays";
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
            Problem problem = Unsure.of(day.problem());
            Plan plan = lab.pack(problem, SEED, SECONDS_FOR_THE_PLAN);
            last = milliseconds(problem, plan);
            loop = Calibration.millionSteps();
            rows.add("%-14s %2d machines  %6.1f ms  loop %.0f M/s", day.name(), day.machines(), last, loop);
        }
        return Reached.of(
                Verdict.of(last <= MOST_MILLISECONDS),
                "%.1f ms (best of %d, loop %.0f M/s)",
                last,
                Calibration.TURNS,
                loop);
    }

    private static double milliseconds(Problem problem, Plan plan) {
        for (int turn = 0; turn < WARM_TURNS; turn++) {
            Chances.of(problem, plan, REPLAYS, turn);
        }
        return Calibration.fastest(() -> Chances.of(problem, plan, REPLAYS, SEED)) / 1e6;
    }
}
