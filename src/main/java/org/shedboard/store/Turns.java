package org.shedboard.store;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Lets those who are about to change something do so in the order in which they came. The database gives its lock to whichever of the
 * waiting it wakes first, so that at a busy hour some would wait until they are refused. What keeps changes apart is that lock alone:
 * whoever has waited for a turn for very long goes on without one.
 */
final class Turns {
    /** No longer than anybody waits for a lock. */
    static final int LONGEST_MILLIS = 10_000;

    private final Semaphore free = new Semaphore(1, true);

    /** What is done in a turn. */
    interface Work<T, X extends Exception> {
        T run() throws X;
    }

    /** Does it when the caller's turn has come. */
    <T, X extends Exception> T during(Work<T, X> work) throws X {
        boolean isMine = take();
        try {
            return work.run();
        } finally {
            if (isMine) {
                free.release();
            }
        }
    }

    private boolean take() {
        try {
            return free.tryAcquire(LONGEST_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
