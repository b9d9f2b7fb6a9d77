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

    /** Each as long as anybody waits for a lock. */
    private static final int HOLD_TRIES = 3;

    private final Sql sql;
    private final Consumer<Runnable> alone;
    private final Consumer<Sql> before;
    private final Consumer<Sql> after;
    /** How many have asked so far; each one's own number is what it was when it asked. */
    private final AtomicLong asked = new AtomicLong();

    private long covered;
    private StoreFailure broken;

    /**
     * @param alone does its work while nobody changes anything
     * @param before what is done with each checkpoint and has no hurry to be durable
     * @param after what has to succeed too before anybody is told
     */
    Checkpoints(Sql sql, Consumer<Runnable> alone, Consumer<Sql> before, Consumer<Sql> after) {
        this.sql = sql;
        this.alone = alone;
        this.before = before;
        this.after = after;
    }

    /** Readies the connection of the file's owner; what it makes is this connection's own, though kept in the file. */
    static Checkpoints ready(Sql owner, Sql holder, Turns turns, Home home, ChangeWriter changes) {
        Presence presence = Presence.of(home);
        owner.run("SET WRITE_DELAY " + WRITER_WAITS_MILLIS);
        owner.run("CREATE CACHED LOCAL TEMPORARY TABLE forced (turn BIGINT)");
        owner.run("INSERT INTO forced VALUES (0)");
        return new Checkpoints(owner, work -> alone(holder, turns, work), changes::dropWritten, sql -> {
            presence.expect();
            changes.write(sql);
        });
    }

    /**
     * Holds the row that whoever changes anything has to have. Where the database saves while a change is under way it can save one half
     * of it, and after a kill an index was seen to name a row that is not there. Who has the row for very long is not waited for.
     */
    private static void alone(Sql holder, Turns turns, Runnable work) {
        turns.during(() -> holder.inOne(sql -> {
            boolean isHeld = false;
            for (int i = 0; i < HOLD_TRIES && !isHeld; i++) {
                isHeld = holds(sql);
            }
            work.run();
            return null;
        }));
    }

    private static boolean holds(Sql sql) {
        try {
            return Link.hold(sql);
        } catch (StoreFailure failure) {
            if (!failure.is(StoreFailure.Kind.BUSY)) {
                throw failure;
            }
            return false;
        }
    }

    /** Returns when everything committed before the call would survive a power cut. */
    void await() {
        long mine = asked.incrementAndGet();
        synchronized (this) {
            if (broken != null) {
                throw broken;
            }
            if (covered < mine) {
                checkpoint();
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
        AtomicLong covers = new AtomicLong();
        try {
            alone.accept(() -> {
                // those who have committed while this waited to be alone are in it too
                covers.set(asked.get());
                save();
            });
            after.accept(sql);
            covered = covers.get();
        } catch (StoreFailure failure) {
            broken = failure;
            throw failure;
        }
    }

    private void save() {
        sql.run("CHECKPOINT SYNC");
        sql.run("UPDATE forced SET turn = turn + 1");
        before.accept(sql);
        sql.run("COMMIT");
        sql.run("CHECKPOINT SYNC");
    }
}
