package org.shedboard.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The journal: one row a change, never altered but where somebody has to be forgotten ({@link Forgetting}). */
final class Journal {
    private static final Table ROW = Table.named("journal")
            .wide("id")
            .instant("happened_at")
            .text("who", "terminal", "what", "before_text", "after_text")
            .keyed("id");
    /** The database numbers the rows, so the number is not among what is written. */
    private static final Table NEW_ROW = Table.named("journal")
            .text("change_id")
            .instant("happened_at")
            .text("who", "terminal", "what", "before_text", "after_text")
            .keyed("change_id");

    /** All of a row. */
    private static final Table WHOLE = Table.named("journal")
            .wide("id")
            .text("change_id")
            .instant("happened_at")
            .text("who", "terminal", "what", "before_text", "after_text")
            .keyed("id");

    private Journal() {}

    static void write(Sql sql, String changeId, Stamp stamp, String what, Difference difference) {
        Cells row = Cells.in(NEW_ROW)
                .set("change_id", changeId)
                .set("happened_at", stamp.at())
                .set("who", stamp.who())
                .set("terminal", stamp.terminal())
                .set("what", what)
                .set("before_text", difference.before())
                .set("after_text", difference.after());
        sql.batch(NEW_ROW.insert(), NEW_ROW.insertOrder(), List.of(row));
    }

    static boolean has(Sql sql, String changeId) {
        return sql.findNumber("SELECT id FROM journal WHERE change_id = ?", changeId)
                .isPresent();
    }

    /** The whole row of a change that is in it. */
    static Cells expect(Sql sql, String changeId) {
        return sql.select(WHOLE, "WHERE change_id = ?", changeId).get(0);
    }

    /** Number of the row before that one, 0 for the first. */
    static long before(Sql sql, long id) {
        return sql.findNumber("SELECT MAX(id) FROM journal WHERE id < ?", id).orElse(0L);
    }

    /** Whether that change has this number. */
    static boolean has(Sql sql, long id, String changeId) {
        return sql.findNumber("SELECT id FROM journal WHERE change_id = ?", changeId)
                .filter(found -> found == id)
                .isPresent();
    }

    static long newest(Sql sql) {
        return sql.findNumber("SELECT MAX(id) FROM journal").orElse(0L);
    }

    static Optional<JournalRow> newestRow(Sql sql) {
        return sql.select(ROW, "WHERE id = (SELECT MAX(id) FROM journal)").stream()
                .findFirst()
                .map(row -> row.map(Journal::toRow));
    }

    static List<JournalRow> from(Sql sql, long id) {
        return sql.select(ROW, "WHERE id >= ? ORDER BY id", id).stream()
                .map(row -> row.map(Journal::toRow))
                .toList();
    }

    /** So many rows from this one on. */
    static List<JournalRow> page(Sql sql, long id, int count) {
        return sql.select(ROW, "WHERE id >= ? ORDER BY id LIMIT " + count, id).stream()
                .map(row -> row.map(Journal::toRow))
                .toList();
    }

    /** The changes of these names from one moment to another, in order. */
    static List<JournalRow> of(Sql sql, List<String> what, Instant from, Instant to) {
        return sql
                .select(
                        ROW,
                        "WHERE happened_at >= ? AND happened_at < ? AND what = ANY (?) ORDER BY id",
                        from,
                        to,
                        what)
                .stream()
                .map(row -> row.map(Journal::toRow))
                .toList();
    }

    private static JournalRow toRow(Cells row) {
        return new JournalRow(
                row.wide("id"),
                row.instant("happened_at"),
                row.text("who"),
                row.text("terminal"),
                row.text("what"),
                row.text("before_text"),
                row.text("after_text"));
    }
}
