package org.shedboard.pack.lab;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.shedboard.pack.Problem;
import org.shedboard.pack.search.Packing;
import org.shedboard.pack.search.Round;

/** How long a round goes on after it is told to stop: by the clock, and of its own time on a processor, which no other process prolongs. */
record Stops(int count, long longestNanoseconds, long longestOwnNanoseconds) {
    private static final int STOPS = 200;
    private static final int LONGEST_BEFORE_STOP_MILLISECONDS = 30;

    static Stops of(Problem problem) throws InterruptedException {
        Round round = Packing.of(problem, 1).rounds().get(0);
        Stops all = new Stops(0, 0, 0);
        for (int stop = 0; stop < STOPS; stop++) {
            all = all.and(once(round, 1 + stop % LONGEST_BEFORE_STOP_MILLISECONDS));
        }
        return all;
    }

    private Stops and(Stops other) {
        return new Stops(
                count + other.count,
                Math.max(longestNanoseconds, other.longestNanoseconds),
                Math.max(longestOwnNanoseconds, other.longestOwnNanoseconds));
    }

    private static Stops once(Round round, int afterMilliseconds) throws InterruptedException {
        ThreadMXBean times = ManagementFactory.getThreadMXBean();
        AtomicBoolean stop = new AtomicBoolean();
        AtomicLong stopped = new AtomicLong();
        AtomicLong ownAtEnd = new AtomicLong();
        Thread thread = new Thread(() -> {
            while (!stop.get()) {
                round.run(stop::get, better -> {});
            }
            stopped.set(System.nanoTime());
            ownAtEnd.set(times.getCurrentThreadCpuTime());
        });
        thread.start();
        Thread.sleep(afterMilliseconds);
        long own = times.getThreadCpuTime(thread.getId());
        long told = System.nanoTime();
        stop.set(true);
        thread.join();
        return new Stops(1, stopped.get() - told, ownAtEnd.get() - own);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "longest of %d stops %.2f ms, %.2f ms in its own time",
                count,
                longestNanoseconds / 1e6,
                longestOwnNanoseconds / 1e6);
    }
}
