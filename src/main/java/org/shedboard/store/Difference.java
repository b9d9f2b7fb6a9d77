package org.shedboard.store;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Brings tables to what is to be saved, touching only the rows that differ, and keeps what the journal tells of it. */
final class Difference {
    /** Above so many rows the journal counts them instead of telling each: nobody reads the history of a shop row by row. */
    private static final int TOLD_AT_MOST = 200;

    private final List<String> before = new ArrayList<>();
    private final List<String> after = new ArrayList<>();
    private final Map<String, Integer> removedRows = new LinkedHashMap<>();
    private final Map<String, Integer> savedRows = new LinkedHashMap<>();

    /** Saves shares of which later ones may refer to earlier ones; so what is gone goes last and from the end. */
    void save(Sql sql, List<Share> parts) {
        List<Comparison> comparisons =
                parts.stream().map(part -> Comparison.of(sql, part)).toList();
        comparisons.forEach(comparison -> comparison.write(sql));
        for (int i = comparisons.size() - 1; i >= 0; i--) {
            comparisons.get(i).delete(sql);
        }
        comparisons.stream().filter(each -> each.table().isTold()).forEach(this::tell);
    }

    /** Lets the rows that name one thing in a column name another. */
    void rename(Sql sql, Table table, String column, String from, String to) {
        List<Cells> rows = sql.select(table, "WHERE %s = ?".formatted(column), from);
        List<Cells> renamed = rows.stream().map(row -> row.with(column, to)).toList();
        sql.change(table, renamed);
        for (int i = 0; i < rows.size(); i++) {
            tellBefore(rows.get(i), Optional.of(renamed.get(i)));
            tellAfter(renamed.get(i), Optional.of(rows.get(i)));
        }
        removedRows.merge(table.name(), 0, Integer::sum);
        savedRows.merge(table.name(), rows.size(), Integer::sum);
    }

    private void tell(Comparison comparison) {
        String table = comparison.table().name();
        comparison.gone().forEach(row -> tellBefore(row, Optional.empty()));
        comparison.added().forEach(row -> tellAfter(row, Optional.empty()));
        comparison.changed().forEach((now, was) -> {
            tellBefore(was, Optional.of(now));
            tellAfter(now, Optional.of(was));
        });
        removedRows.merge(table, comparison.gone().size(), Integer::sum);
        savedRows.merge(table, comparison.added().size() + comparison.changed().size(), Integer::sum);
    }

    private void tellBefore(Cells row, Optional<Cells> now) {
        if (before.size() <= TOLD_AT_MOST) {
            before.add(row.toLine(now));
        }
    }

    private void tellAfter(Cells row, Optional<Cells> was) {
        if (after.size() <= TOLD_AT_MOST) {
            after.add(row.toLine(was));
        }
    }

    String before() {
        return before.size() <= TOLD_AT_MOST ? String.join("\n", before) : counts(removedRows);
    }

    String after() {
        return after.size() <= TOLD_AT_MOST ? String.join("\n", after) : counts(savedRows);
    }

    private static String counts(Map<String, Integer> rows) {
        return rows.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> "%s %s rows".formatted(entry.getKey(), entry.getValue()))
                .collect(joining("\n"));
    }
}
