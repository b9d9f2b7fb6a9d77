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
        sql.delete(table, gone);
    }

    void write(Sql sql) {
        sql.insert(table, added);
        sql.change(table, List.copyOf(changed.keySet()));
    }
}
