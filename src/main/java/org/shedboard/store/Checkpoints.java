package org.shedboard.store;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

/**
 * Makes commits durable. H2 acknowledges a commit while it is still in memory only: a power cut or a killed process would lose up
 * to half a second of them. Whoever committed waits here for a checkpoint that began afterwards; those who wait together share one.
 */
final class Checkpoints {
    /** What is not waited for here is given up by a kill anyway; the less often the database writes by itself, the rarer both meet. */
    private static final int WRITER_WAITS_MILLIS = 10_000;

    private final Sql sql;
    private final Consumer<Sql> before;
    private final Consumer<Sql> after;
    /** How many have asked so far; each one's own number is what it was when it asked. */
    private final AtomicLong asked = new AtomicLong();

    private long covered;
    private StoreFailure broken;

    /**
     * @param before what is done with each checkpoint and has no hurry to be durable
     * @param after what has to succeed too before anybody is told
     */
    Checkpoints(Sql sql, Consumer<Sql> before, Consumer<Sql> after) {
        this.sql = sql;
        this.before = before;
        this.after = after;
    }

    /** Readies the connection of the file's owner; what it makes is this connection's own, though kept in the file. */
    static Checkpoints ready(Sql owner, Home home, ChangeWriter changes) {
        Presence presence = Presence.of(home);
        owner.run("SET WRITE_DELAY " + WRITER_WAITS_MILLIS);
        owner.run("CREATE CACHED LOCAL TEMPORARY TABLE forced (turn BIGINT)");
        owner.run("INSERT INTO forced VALUES (0)");
        return new Checkpoints(owner, changes::dropWritten, sql -> {
            presence.expect();
            changes.write(sql);
        });
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
     * <p>Where the database's own writer has just taken up the commit, a checkpoint finds nothing left to save and returns while that
     * is still on its way to the disk. So a second one follows, which has the turn to save and by that has to wait for all before it;
     * the writer cannot take that up too, since it waits {@value #WRITER_WAITS_MILLIS} milliseconds after each time.
     */
    private void checkpoint() {
        try {
            sql.run("CHECKPOINT SYNC");
            sql.run("UPDATE forced SET turn = turn + 1");
            before.accept(sql);
            sql.run("COMMIT");
            sql.run("CHECKPOINT SYNC");
            after.accept(sql);
        } catch (StoreFailure failure) {
            broken = failure;
            throw failure;
        }
    }
}
