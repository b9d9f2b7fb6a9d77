package org.shedboard.pack.bound;

import java.util.Arrays;

/** The least that something costs when it is complete by each number of the axis, and which choice that comes from. */
final class Ledger {
    /** More than anything costs, and small enough to be added to itself. */
    static final long NEVER = 1L << 60;

    final long[] least;
    final int[] choice;

    Ledger(int width) {
        least = new long[width];
        choice = new int[width];
    }

    void clear() {
        Arrays.fill(least, NEVER);
    }

    /** Notes what a choice costs that is complete at a number. */
    void offer(int number, long cost, int code) {
        if (cost < least[number]) {
            least[number] = cost;
            choice[number] = code;
        }
    }

    /** What is complete at a number is complete by every later one, too. */
    void settle() {
        for (int number = 1; number < least.length; number++) {
            if (least[number - 1] <= least[number]) {
                least[number] = least[number - 1];
                choice[number] = choice[number - 1];
            }
        }
    }

    /** Adds costs to others, number by number. */
    static void add(long[] sums, long[] costs) {
        for (int number = 0; number < sums.length; number++) {
            sums[number] = Math.min(NEVER, sums[number] + costs[number]);
        }
    }
}
