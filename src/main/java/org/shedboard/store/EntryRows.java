package org.shedboard.store;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Step;

/** Clock entries, in the table clock_entry. */
final class EntryRows {
    private static final Table ENTRY = Table.named("clock_entry")
            .text("id", "person_id", "visit_id", "step", "other_kind")
            .instant("from_at", "to_at")
            .keyed("id")
            .scoped("id");

    /** Those that share a moment with the span, and those that begin in it and took none. */
    private static final String WITHIN = """
            WHERE from_at < ? AND (to_at IS NULL OR to_at > ? OR from_at >= ?)
            ORDER BY from_at, id""";

    private static final String OPEN = """
            WHERE to_at IS NULL
            ORDER BY from_at, id""";

    private EntryRows() {}

    static List<ClockEntry> within(Sql sql, Instant from, Instant to) {
        return read(sql.select(ENTRY, WITHIN, to, from, from));
    }

    static List<ClockEntry> open(Sql sql) {
        return read(sql.select(ENTRY, OPEN));
    }

    private static List<ClockEntry> read(List<Cells> rows) {
        return rows.stream().map(row -> row.map(EntryRows::toEntry)).toList();
    }

    private static ClockEntry toEntry(Cells row) {
        return new ClockEntry(
                row.text("id"),
                row.text("person_id"),
                toActivity(row),
                row.instant("from_at"),
                row.findInstant("to_at"));
    }

    private static Activity toActivity(Cells row) {
        return row.findText("other_kind").isPresent()
                ? new OtherWork(row.one(OtherWork.Kind.class, "other_kind"))
                : new OnStay(row.text("visit_id"), row.one(Step.class, "step"));
    }

    static Share share(Collection<ClockEntry> entries) {
        return Share.of(
                ENTRY,
                entries.stream().map(ClockEntry::id).toList(),
                entries.stream().map(EntryRows::cells).toList());
    }

    private static Cells cells(ClockEntry entry) {
        Optional<OnStay> onStay = entry.activity() instanceof OnStay stay ? Optional.of(stay) : Optional.empty();
        Optional<OtherWork> other = entry.activity() instanceof OtherWork work ? Optional.of(work) : Optional.empty();
        return Cells.in(ENTRY)
                .set("id", entry.id())
                .set("person_id", entry.personId())
                .set("visit_id", onStay.map(OnStay::visitId))
                .set("step", onStay.map(OnStay::step))
                .set("other_kind", other.map(OtherWork::kind))
                .set("from_at", entry.from())
                .set("to_at", entry.to());
    }
}
