package org.shedboard.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.AtWork;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.Lent;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.shop.Step;

/** Clock entries and the corrections to them, in the table clock_entry. */
final class EntryRows {
    private static final Table ENTRY = Table.named("clock_entry")
            .text("id", "person_id", "visit_id", "step", "task_id", "other_kind")
            .text("lent_visit_id", "lent_step", "lent_task_id")
            .instant("from_at", "to_at")
            .text("replaces_id")
            .flag("struck")
            .text("corrected_by")
            .instant("corrected_at")
            .text("why")
            .keyed("id")
            .scoped("id");

    /** What other_kind says of who is in the shop. */
    private static final String AT_WORK = "AT_WORK";

    /** Those that share a moment with the span, and those that begin in it and took none. */
    private static final String WITHIN = """
            WHERE from_at < ? AND (to_at IS NULL OR to_at > ? OR from_at >= ?)
            ORDER BY from_at, id""";

    private static final String OPEN = """
            WHERE to_at IS NULL
            ORDER BY from_at, id""";

    private static final String REPLACING = """
            WHERE replaces_id = ANY (?)
            ORDER BY from_at, id""";

    /** Presences have ids that begin with their date. */
    private static final String REPLACING_PRESENCES = """
            WHERE replaces_id >= ? AND replaces_id < ?
            ORDER BY from_at, id""";

    private static final List<String> STATE_OF_FINISHED_WORK = List.of(
            "SELECT COUNT(*) FROM visit WHERE finished_at >= ?",
            "SELECT CAST(EXTRACT(EPOCH FROM MAX(finished_at)) AS BIGINT) FROM visit WHERE finished_at >= ?",
            "SELECT COUNT(*) FROM clock_entry WHERE corrected_at >= ?",
            """
            SELECT COUNT(*) FROM clock_entry
            JOIN visit ON visit.id = clock_entry.visit_id
            WHERE visit.finished_at >= ? AND clock_entry.to_at IS NOT NULL""");
    /** H2 takes at most 65,536 values in an array. */
    private static final int IDS_AT_ONCE = 20_000;

    private EntryRows() {}

    /** Those that touch the span, and wherever they lie those that stand for one of them or for a presence of its days. */
    static List<ClockEntry> within(Sql sql, Instant from, Instant to) {
        Map<String, ClockEntry> entries = new LinkedHashMap<>();
        List<ClockEntry> touching = read(sql.select(ENTRY, WITHIN, to, from, from));
        touching.forEach(entry -> entries.put(entry.id(), entry));
        List<String> ids = List.copyOf(entries.keySet());
        for (int i = 0; i < ids.size(); i += IDS_AT_ONCE) {
            List<String> some = ids.subList(i, Math.min(ids.size(), i + IDS_AT_ONCE));
            read(sql.select(ENTRY, REPLACING, some)).forEach(entry -> entries.putIfAbsent(entry.id(), entry));
        }
        // a day on either side, since the date of a presence is that of the shop's zone
        String first = "A" + LocalDate.ofInstant(from, ZoneOffset.UTC).minusDays(1);
        String beyond = "A" + LocalDate.ofInstant(to, ZoneOffset.UTC).plusDays(2);
        read(sql.select(ENTRY, REPLACING_PRESENCES, first, beyond))
                .forEach(entry -> entries.putIfAbsent(entry.id(), entry));
        return List.copyOf(entries.values());
    }

    /** Entries are never taken away and finished visits seldom, so that counting tells; the newest finish tells the rest. */
    static List<Long> stateOfFinishedWork(Sql sql, Instant since) {
        return STATE_OF_FINISHED_WORK.stream()
                .map(query -> sql.findNumber(query, since).orElse(0L))
                .toList();
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
                row.findInstant("to_at"),
                row.findInstant("corrected_at").map(at -> toCorrection(row, at)));
    }

    private static Correction toCorrection(Cells row, Instant at) {
        return new Correction(
                row.findText("replaces_id"), row.flag("struck"), row.text("corrected_by"), at, row.text("why"));
    }

    private static Activity toActivity(Cells row) {
        if (row.findText("other_kind").isEmpty()) {
            OnStay on = toStay(row, "visit_id", "step", "task_id");
            return row.findText("lent_visit_id").isEmpty()
                    ? on
                    : new Lent(on, toStay(row, "lent_visit_id", "lent_step", "lent_task_id"));
        }
        String kind = row.text("other_kind");
        if (kind.equals(AT_WORK)) {
            return new AtWork();
        }
        boolean isBreak =
                Arrays.stream(Break.Kind.values()).anyMatch(each -> each.name().equals(kind));
        return isBreak
                ? new Break(row.one(Break.Kind.class, "other_kind"))
                : new OtherWork(row.one(OtherWork.Kind.class, "other_kind"));
    }

    private static OnStay toStay(Cells row, String visit, String step, String task) {
        return new OnStay(row.text(visit), row.one(Step.class, step), row.findText(task));
    }

    static Share share(Collection<ClockEntry> entries) {
        return Share.of(
                ENTRY,
                entries.stream().map(ClockEntry::id).toList(),
                entries.stream().map(EntryRows::cells).toList());
    }

    private static Cells cells(ClockEntry entry) {
        Optional<OnStay> onStay = stayOf(entry.activity());
        Optional<OnStay> lentFrom = entry.activity() instanceof Lent lent ? Optional.of(lent.from()) : Optional.empty();
        Optional<Correction> correction = entry.correction();
        return Cells.in(ENTRY)
                .set("id", entry.id())
                .set("person_id", entry.personId())
                .set("visit_id", onStay.map(OnStay::visitId))
                .set("step", onStay.map(OnStay::step))
                .set("task_id", onStay.flatMap(OnStay::taskId))
                .set("other_kind", otherKind(entry.activity()))
                .set("lent_visit_id", lentFrom.map(OnStay::visitId))
                .set("lent_step", lentFrom.map(OnStay::step))
                .set("lent_task_id", lentFrom.flatMap(OnStay::taskId))
                .set("from_at", entry.from())
                .set("to_at", entry.to())
                .set("replaces_id", correction.flatMap(Correction::replaces))
                .set("struck", correction.map(Correction::isStruck))
                .set("corrected_by", correction.map(Correction::by))
                .set("corrected_at", correction.map(Correction::at))
                .set("why", correction.map(Correction::why));
    }

    private static Optional<OnStay> stayOf(Activity activity) {
        if (activity instanceof Lent lent) {
            return Optional.of(lent.to());
        }
        return activity instanceof OnStay on ? Optional.of(on) : Optional.empty();
    }

    private static Optional<String> otherKind(Activity activity) {
        if (activity instanceof OtherWork work) {
            return Optional.of(work.kind().name());
        }
        if (activity instanceof Break pause) {
            return Optional.of(pause.kind().name());
        }
        return activity instanceof AtWork ? Optional.of(AT_WORK) : Optional.empty();
    }
}
