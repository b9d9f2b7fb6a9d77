package org.shedboard.store;

import java.util.List;

/** Changes made again on records that lack them, each after the one that it names. */
final class Replay {
    private final Sql sql;
    private final Tables tables;

    /** On records of the schema that the changes were made in. */
    Replay(Sql sql) {
        this.sql = sql;
        this.tables = Tables.of(sql);
    }

    /**
     * Makes them within what is under way, as far as one follows on another.
     *
     * @return the number of the last change that the records have then
     */
    long all(List<ChangeLine> lines) {
        long newest = Journal.newest(sql);
        for (ChangeLine line : lines) {
            if (line.previous() != newest) {
                return newest;
            }
            line.redo(sql, tables);
            newest = line.id();
        }
        return newest;
    }

    /** Lets the numbers of the journal go on after those of the changes. */
    void goOnNumbering() {
        tables.goOnNumbering(sql);
    }
}
