package org.shedboard.app.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.tally.HoursRow;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.Stamps;
import org.shedboard.tally.TallyWords;
import org.shedboard.words.Words;

/** The rows that hours are counted from, with what was put right and by whom. */
final class RowsAnswer {
    private final SpanTally tally;
    private final Ledger ledger;
    private final List<HoursRow> rows;

    private RowsAnswer(SpanTally tally) {
        this.tally = tally;
        this.ledger = tally.ledger();
        this.rows = HoursRow.of(tally);
    }

    static Answer of(SpanTally tally) {
        RowsAnswer answer = new RowsAnswer(tally);
        return new Answer(answer.lines(), answer.tree());
    }

    private List<String> lines() {
        Table table = new Table("lllll");
        table.row(
                Words.say("rows.row"),
                Words.say("tally.people"),
                Words.say("rows.from"),
                Words.say("rows.to"),
                Words.say("rows.what"));
        for (HoursRow row : rows) {
            ClockEntry entry = row.entry();
            table.row(
                    entry.id(),
                    ledger.books().nameOf(entry.personId()),
                    Stamps.of(ledger, entry.from()),
                    entry.to().map(to -> Stamps.of(ledger, to)).orElse(Words.say("rows.goes_on")),
                    TallyWords.row(tally, row));
        }
        List<String> lines = new ArrayList<>(table.lines());
        rows.forEach(row -> TallyWords.correction(tally, row)
                .ifPresent(note -> lines.add(row.entry().id() + "  " + note)));
        return lines;
    }

    private Map<String, Object> tree() {
        return new Tree()
                .put("date", ledger.from().toString())
                .put("to", ledger.until().minusDays(1).toString())
                .put("rows", rows.stream().map(this::row).toList())
                .fields();
    }

    private Map<String, Object> row(HoursRow row) {
        ClockEntry entry = row.entry();
        return new Tree()
                .put("row", entry.id())
                .put("person", entry.personId())
                .put("name", ledger.books().nameOf(entry.personId()))
                .put("from", time(entry.from()))
                .put("to", entry.to().map(this::time))
                .put("what", TallyWords.on(tally, entry))
                .put("counts", row.counts())
                .put("replaces", entry.correction().flatMap(Correction::replaces))
                .put("correctedBy", entry.correction().map(Correction::by))
                .put("correctedAt", entry.correction().map(Correction::at).map(this::time))
                .put("why", entry.correction().map(Correction::why))
                .fields();
    }

    private String time(Instant at) {
        return Tree.time(ledger.books().shop().zone(), at);
    }
}
