package org.shedboard.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The changes that wait in the records, each committed with what it did, for the owner of the file to write them to the day's file. */
final class ChangeLines {
    private static final Table TABLE = Table.named("change_line")
            .wide("journal_id")
            .number("part")
            .text("line")
            .keyed("journal_id", "part");
    /** What a text in the database can hold, with room to spare. */
    private static final int PART = 500_000;

    private ChangeLines() {}

    static void write(Sql sql, ChangeLine line) {
        List<Cells> parts = new ArrayList<>();
        for (int from = 0; from < line.text().length(); from += PART) {
            parts.add(Cells.in(TABLE)
                    .set("journal_id", line.id())
                    .set("part", parts.size())
                    .set(
                            "line",
                            line.text().substring(from, Math.min(line.text().length(), from + PART))));
        }
        sql.batch(TABLE.insert(), TABLE.insertOrder(), parts);
    }

    /** Those after this change, in order. */
    static List<ChangeLine> after(Sql sql, long id) {
        Map<Long, StringBuilder> whole = new LinkedHashMap<>();
        for (Cells row : sql.select(TABLE, "WHERE journal_id > ? ORDER BY journal_id, part", id)) {
            whole.computeIfAbsent(row.wide("journal_id"), number -> new StringBuilder())
                    .append(row.text("line"));
        }
        return whole.values().stream()
                .map(text -> ChangeLine.parse(text.toString()).orElseThrow(ChangeLines::unreadable))
                .toList();
    }

    private static StoreFailure unreadable() {
        return new StoreFailure(
                StoreFailure.Kind.DAMAGED,
                "a change in table change_line is not as it was written; go back to a backup: shedboard restore newest");
    }

    static void drop(Sql sql, long upTo) {
        sql.update("DELETE FROM change_line WHERE journal_id <= ?", upTo);
    }
}
