package org.shedboard.store;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Work that no interrupt of the caller reaches, since a thread of its own does it. When the database closes its file it moves what
 * was long safe to save room; cut off in the middle of that by an interrupt, it was seen to open again without the last change.
 */
final class Undisturbed {
    private Undisturbed() {}

    /** Returns when the work is done, or fails as it did; whoever is interrupted meanwhile still is afterwards. */
    static void run(String name, Runnable work) {
        FutureTask<Void> task = new FutureTask<>(work, null);
        new Thread(task, name).start();
        boolean isInterrupted = false;
        try {
            while (!isOver(task)) {
                isInterrupted = true;
            }
        } finally {
            if (isInterrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Waits for it; false when an interrupt came first. */
    private static boolean isOver(FutureTask<Void> task) {
        try {
            task.get();
            return true;
        } catch (InterruptedException interrupt) {
            return false;
        } catch (ExecutionException failed) {
            throw asThrown(failed.getCause());
        }
    }

    private static RuntimeException asThrown(Throwable cause) {
        return cause instanceof RuntimeException failure ? failure : new IllegalStateException(cause);
    }
}
