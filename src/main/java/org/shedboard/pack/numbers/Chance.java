package org.shedboard.pack.numbers;

import java.util.Arrays;

/** The search's own chance: a small generator (splitmix64) that gives the same numbers on every machine. */
public final class Chance {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    /** {@link #exponential} draws one of so many values that are equally likely. */
    private static final int EXPONENTIALS = 4096;

    private static final double[] EXPONENTIAL = new double[EXPONENTIALS];

    static {
        Arrays.setAll(EXPONENTIAL, index -> -StrictMath.log((index + 0.5) / EXPONENTIALS));
    }

    private long state;

    public Chance(long seed) {
        state = mix(seed);
    }

    /** A generator of its own for one purpose, so that no purpose depends on how often another asked. */
    public static Chance of(long seed, String purpose) {
        long mixed = mix(seed);
        for (int index = 0; index < purpose.length(); index++) {
            mixed = mix(mixed * 31 + purpose.charAt(index));
        }
        return new Chance(mixed);
    }

    public static long mix(long value) {
        long mixed = value + GOLDEN;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    public long nextLong() {
        state += GOLDEN;
        return mix(state);
    }

    /** A whole number from 0 to below the bound. */
    public int below(int bound) {
        return (int) ((nextLong() >>> 32) * bound >>> 32);
    }

    /** A draw of the exponential distribution with mean 1, never above 10. */
    public double exponential() {
        return EXPONENTIAL[below(EXPONENTIALS)];
    }
}
