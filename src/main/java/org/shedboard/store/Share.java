package org.shedboard.store;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What one table is to hold of the things being saved; what it holds of them besides is deleted.
 *
 * @param scopes the things, by the table's scope column; empty when it is the whole table
 */
record Share(Table table, Optional<Collection<?>> scopes, List<Cells> rows) {
    static Share whole(Table table, List<Cells> rows) {
        return new Share(table, Optional.empty(), rows);
    }

    static Share of(Table table, Collection<?> scopes, List<Cells> rows) {
        return new Share(table, Optional.of(scopes), rows);
    }

    /** The rows that are there of these things. */
    List<Cells> existing(Sql sql) {
        if (scopes.isEmpty()) {
            return sql.select(table, "");
        }
        String column = table.scope().orElseThrow();
        return sql.select(table, "WHERE %s = ANY (?)".formatted(column), scopes.get());
    }
}
