package org.shedboard.pack.lab;

import java.io.IOException;
import java.util.List;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.WorkshopDays;

/** What the sections of {@link Targets} measure with: the engine on two threads, the folders, and the terms of this run. */
final class Laboratory implements AutoCloseable {
    static final int THREADS = 2;
    /** Days to judge on with up to so many machines get the shorter time. */
    static final int FEW_MACHINES = 14;

    static final double SECONDS_OF_FEW = 2;
    static final double SECONDS_OF_MANY = 10;

    private static final int[] WARMED_WITH = {6, 30};
    private static final double WARM_SECONDS = 4;

    final TargetTerms terms;
    final DayFolder days;
    final KeptPlans kept;
    private final TimedPacking engine = new TimedPacking(THREADS);
    private boolean isWarm;

    Laboratory(TargetTerms terms) throws IOException {
        this.terms = terms;
        days = DayFolder.read(terms.folders().days());
        kept = new KeptPlans(terms.folders().kept());
    }

    /** The seconds a search takes in this run that by its target takes so many. */
    double scaled(double seconds) {
        return seconds * terms.scale();
    }

    /** @param seconds as the target has it */
    Plan pack(Problem problem, long seed, double seconds) throws InterruptedException {
        warm();
        return engine.pack(problem, seed, scaled(seconds));
    }

    /** By days that no section judges. */
    void warm() throws InterruptedException {
        if (!isWarm) {
            isWarm = true;
            for (int machines : WARMED_WITH) {
                engine.pack(WorkshopDays.of(machines, WorkshopDays.FAIR, 0), 0, scaled(WARM_SECONDS));
            }
        }
    }

    /** The time for a day with so many machines. */
    static double secondsFor(DayFolder.Day day) {
        return day.machines() <= FEW_MACHINES ? SECONDS_OF_FEW : SECONDS_OF_MANY;
    }

    /** So many of a section's days or shops, or fewer where this run wants fewer. */
    <T> List<T> some(List<T> all, int most) {
        return DayFolder.evenly(all, Math.min(most, terms.files()));
    }

    <T> List<T> some(List<T> all) {
        return some(all, all.size());
    }

    @Override
    public void close() {
        engine.close();
    }
}
