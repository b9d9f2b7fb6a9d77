package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shedboard.pack.Problem;
import org.shedboard.pack.search.Packing;
import org.shedboard.pack.search.Round;

/** Plans decoded a second on one thread, cut-off ones counted, once the search is warm; and how soon it stops when told to. */
final class Pace implements Section {
    /** A second, at the days of {@link TimedDays}. */
    private static final int[] LEAST = {500_000, 100_000, 60_000};

    private static final double WARM_SECONDS = 3;
    private static final double TURN_SECONDS = 1;
    private static final long SEED = 1;

    @Override
    public String name() {
        return "pace";
    }

    @Override
    public String what() {
        return "decoded plans a second, warm, one thread";
    }

    @Override
    public String target() {
        return "≥ 500,000 at 6 machines, ≥ 100,000 at 20, ≥ 60,000 at 40";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws InterruptedException {
        lab.warm();
        List<DayFolder.Day> days = TimedDays.of(lab);
        List<String> texts = new ArrayList<>();
        Verdict verdict = Verdict.MET;
        for (int index = 0; index < days.size(); index++) {
            long pace = best(lab, days.get(index).problem());
            texts.add(String.format(
                    Locale.ROOT, "%,d at %d", pace, days.get(index).machines()));
            verdict = verdict.and(Verdict.of(pace >= LEAST[index]));
            rows.add(
                    "%-14s %2d machines  %,9d a second  loop %.0f M/s",
                    days.get(index).name(), days.get(index).machines(), pace, Calibration.millionSteps());
        }
        DayFolder.Day largest = days.get(days.size() - 1);
        rows.add("%-14s %2d machines  %s", largest.name(), largest.machines(), Stops.of(largest.problem()));
        return Reached.of(
                verdict,
                "%s (best of %d, loop %.0f M/s)",
                String.join(", ", texts),
                Calibration.TURNS,
                Calibration.millionSteps());
    }

    private static long best(Laboratory lab, Problem problem) {
        paceOf(problem, lab.scaled(WARM_SECONDS));
        return -Calibration.least(() -> -paceOf(problem, lab.scaled(TURN_SECONDS)));
    }

    private static long paceOf(Problem problem, double seconds) {
        long begun = System.nanoTime();
        long end = begun + (long) (seconds * 1e9);
        long tries = 0;
        Packing packing = Packing.of(problem, SEED);
        while (System.nanoTime() < end) {
            List<Round.Found> found = new ArrayList<>();
            for (Round round : packing.rounds()) {
                found.add(round.run(() -> System.nanoTime() >= end, better -> {}));
            }
            packing = packing.after(found);
            tries = packing.tries();
        }
        return (long) (tries * 1e9 / (System.nanoTime() - begun));
    }
}
