package org.shedboard.store;

import java.util.UUID;
import java.util.function.Function;

/**
 * One change and how far it has come. When the way to the records breaks after the work was done, nobody can tell whether it was
 * committed; the journal can, by the change's own id.
 */
final class Attempt<T> {
    private final String changeId = UUID.randomUUID().toString();
    private final Stamp stamp;
    private final String what;
    private final Function<Tx, T> work;

    /** From the first try on it may be committed although nobody was told so. */
    private boolean isTried;

    private T result;

    Attempt(Stamp stamp, String what, Function<Tx, T> work) {
        this.stamp = stamp;
        this.what = what;
        this.work = work;
    }

    /** Makes the change over this link unless it is made already, and returns when it is durable. */
    T over(Link link) {
        boolean keepsLines = link.keepsChangeLines();
        link.write(sql -> {
            if (!isTried || !Journal.has(sql, changeId)) {
                isTried = true;
                make(sql, keepsLines);
            }
            return null;
        });
        link.sync();
        return result;
    }

    private void make(Sql sql, boolean keepsLines) {
        Tx tx = new Tx(sql, stamp.at());
        result = work.apply(tx);
        Journal.write(sql, changeId, stamp, what, tx.difference());
        if (keepsLines) {
            ChangeLines.write(sql, ChangeLine.of(sql, changeId, Migration.NEWEST));
        }
    }
}
