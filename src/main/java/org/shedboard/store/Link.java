package org.shedboard.store;

import java.util.function.Function;
import java.util.function.Supplier;

/** A way to the records, as the owner of the file or as its guest, until it breaks or is closed. */
final class Link {
    /** What belongs to one way of being connected: how commits are made durable, and what is closed at the end. */
    interface Tie {
        void sync();

        /** Does the work, which changes something, when its turn has come, where there are turns. */
        default <T> T inTurn(Supplier<T> work) {
            return work.get();
        }

        /** Whether each change is to be left for the owner of the file, who writes it to the day's file of changes. */
        default boolean keepsChangeLines() {
            return true;
        }

        void close();

        /** One more connection to the same records, on which a transaction sees them as they were at its beginning. */
        Sql another();
    }

    private final Sql reading;
    private final Sql writing;
    private final Tie tie;
    private final boolean isOwner;

    Link(Sql reading, Sql writing, Tie tie, boolean isOwner) {
        this.reading = reading;
        this.writing = writing;
        this.tie = tie;
        this.isOwner = isOwner;
    }

    boolean isOwner() {
        return isOwner;
    }

    <T> T read(Function<Sql, T> work) {
        return reading.inOne(work);
    }

    /** One transaction that nobody else's can interleave with; done again when the database could not tell two apart. */
    <T> T write(Function<Sql, T> work) {
        return tie.inTurn(() -> writeNow(work));
    }

    private <T> T writeNow(Function<Sql, T> work) {
        try {
            return writing.inOne(sql -> alone(sql, work));
        } catch (StoreFailure failure) {
            if (failure.isConflict()) {
                return writing.inOne(sql -> alone(sql, work));
            }
            throw failure;
        }
    }

    /** Takes the one row that whoever changes anything has until it is committed. */
    static boolean hold(Sql sql) {
        return sql.findNumber("SELECT id FROM shop_lock WHERE id = 1 FOR UPDATE")
                .isPresent();
    }

    private static <T> T alone(Sql sql, Function<Sql, T> work) {
        hold(sql);
        return work.apply(sql);
    }

    Sql another() {
        return tie.another();
    }

    boolean keepsChangeLines() {
        return tie.keepsChangeLines();
    }

    void sync() {
        tie.sync();
    }

    void close() {
        tie.close();
        reading.close();
        writing.close();
    }
}
