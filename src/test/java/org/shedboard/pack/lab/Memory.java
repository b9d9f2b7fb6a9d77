package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.Chances;
import org.shedboard.pack.search.Packer;

/** Whether anything is kept from one replanning to the next. */
final class Memory implements Section {
    /** The board looks six times a minute at most: more than three hours of that. Shorter looks than the board's. */
    private static final int REPLANNINGS = 1200;

    private static final long TRIES = 200;
    private static final int REPLAYS = 100;
    private static final int SAMPLES = 6;
    private static final int MACHINES = 40;
    /** What a collector may leave lying about. Invented. */
    private static final long SLACK_KILOBYTES = 1024;

    @Override
    public String name() {
        return "memory";
    }

    @Override
    public String what() {
        return "memory";
    }

    @Override
    public String target() {
        return "flat over an hour of replanning";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) {
        DayFolder.Day day = lab.days.nearest(MACHINES);
        Problem problem = Unsure.of(day.problem());
        int each = Math.max(1, (int) lab.scaled(REPLANNINGS) / SAMPLES);
        List<Long> kilobytes = new ArrayList<>();
        Plan posted = Packer.first(problem);
        for (int replanning = 0; replanning <= each * SAMPLES; replanning++) {
            if (replanning % each == 0) {
                kilobytes.add(heapKilobytes());
                rows.add(
                        "heap after %5d replannings of %s  %,8d kB",
                        replanning, day.name(), kilobytes.get(kilobytes.size() - 1));
            }
            posted = replan(problem.withPosted(posted), replanning);
        }
        return Reached.of(
                Verdict.of(isFlat(kilobytes)),
                "%,d kB after %d replannings, %,d kB after %d (%d machines, %d tries each)",
                kilobytes.get(1),
                each,
                kilobytes.get(SAMPLES),
                each * SAMPLES,
                day.machines(),
                TRIES);
    }

    private static Plan replan(Problem problem, long seed) {
        Plan plan = Packer.pack(problem, Search.of(seed, TRIES));
        Packer.follow(problem);
        Chances.of(problem, plan, REPLAYS, seed);
        return plan;
    }

    /** Whether no sample lies above the second by more than the slack; before it classes are still being loaded. */
    static boolean isFlat(List<Long> kilobytes) {
        return kilobytes.stream().skip(1).allMatch(sample -> sample <= kilobytes.get(1) + SLACK_KILOBYTES);
    }

    private static long heapKilobytes() {
        Runtime runtime = Runtime.getRuntime();
        for (int time = 0; time < 3; time++) {
            runtime.gc();
        }
        return (runtime.totalMemory() - runtime.freeMemory()) / 1024;
    }
}
