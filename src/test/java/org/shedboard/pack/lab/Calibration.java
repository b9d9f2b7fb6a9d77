package org.shedboard.pack.lab;

import java.util.function.LongSupplier;

/**
 * Times, and the pace of a fixed loop measured right after them: two runs can be compared only where the loop ran at the same pace,
 * since the machine may be busier in one of them.
 */
final class Calibration {
    /** Of so many turns the fastest counts. */
    static final int TURNS = 5;

    private static final long STEPS = 60_000_000;

    private Calibration() {}

    /** Steps of the loop a second, in millions, in this process, now. */
    static double millionSteps() {
        long begun = System.nanoTime();
        long sum = 0;
        for (long step = 0; step < STEPS; step++) {
            sum += mix(step ^ sum);
        }
        long nanoseconds = System.nanoTime() - begun;
        return sum == 0 ? 0 : STEPS * 1e3 / nanoseconds;
    }

    /** The finish of splitmix64. */
    private static long mix(long value) {
        long mixed = value + 0x9E3779B97F4A7C15L;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    /** The least of {@link #TURNS} numbers. */
    static long least(LongSupplier turn) {
        long least = Long.MAX_VALUE;
        for (int index = 0; index < TURNS; index++) {
            least = Math.min(least, turn.getAsLong());
        }
        return least;
    }

    /** Nanoseconds of the fastest turn. */
    static long fastest(Runnable work) {
        return least(() -> {
            long begun = System.nanoTime();
            work.run();
            return System.nanoTime() - begun;
        });
    }
}
