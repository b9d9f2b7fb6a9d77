package org.shedboard.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of one table as they are beside what they are to be. */
record Comparison(Table table, List<Cells> gone, List<Cells> added, Map<Cells, Cells> changed) {
    static Comparison of(Sql sql, Share part) {
        Map<List<Object>, Cells> old = new LinkedHashMap<>();
        part.existing(sql).forEach(row -> old.put(row.key(), row));
        List<Cells> added = new ArrayList<>();
        Map<Cells, Cells> changed = new LinkedHashMap<>();
        for (Cells row : part.rows()) {
            Cells was = old.remove(row.key());
            if (was == null) {
                added.add(row);
            } else if (!row.holdsSameAs(was)) {
                changed.put(row, was);
            }
        }
        return new Comparison(part.table(), List.copyOf(old.values()), added, changed);
    }

    void delete(Sql sql) {
        sql.batch(table.delete(), table.key(), gone);
    }

    void write(Sql sql) {
        sql.batch(table.insert(), table.insertOrder(), added);
        sql.batch(table.update(), table.updateOrder(), List.copyOf(changed.keySet()));
    }
}
