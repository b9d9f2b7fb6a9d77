package org.shedboard.store;

import java.util.concurrent.atomic.AtomicLong;

/**
 * Makes commits durable. H2 acknowledges a commit while it is still in memory only: a power cut or a killed process would lose up
 * to half a second of them. Whoever committed waits here for a checkpoint that began afterwards; those who wait together share one.
 */
final class Checkpoints {
    private final Sql sql;
    /** How many have asked so far; each one's own number is what it was when it asked. */
    private final AtomicLong asked = new AtomicLong();

    private long covered;
    private StoreFailure broken;

    Checkpoints(Sql sql) {
        this.sql = sql;
    }

    /** Returns when everything committed before the call would survive a power cut. */
    void await() {
        long mine = asked.incrementAndGet();
        synchronized (this) {
            if (broken != null) {
                throw broken;
            }
            if (covered < mine) {
                long covers = asked.get();
                checkpoint();
                covered = covers;
            }
        }
    }

    /**
     * After one failure what is on disk is not known any more, so none is tried again before the file is opened anew.
     *
     * <p>Twice: where H2's own writer has just taken up the commit, the first finds nothing left to do and returns before that is on
     * disk. On a busy machine every other process killed right after its first change lost it so; with two, none of six did.
     */
    private void checkpoint() {
        try {
            sql.run("CHECKPOINT SYNC");
            sql.run("CHECKPOINT SYNC");
        } catch (StoreFailure failure) {
            broken = failure;
            throw failure;
        }
    }
}
