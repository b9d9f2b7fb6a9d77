package org.shedboard.files;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shedboard.day.Books;
import org.shedboard.files.CsvTable.Cell;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.Visit;
import org.shedboard.tally.HoursRow;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.TallyWords;
import org.shedboard.tally.VisitTally;

/**
 * A tally as tables for a spreadsheet or a payroll. The names of the columns say their unit; programs know them, so that they stay as
 * they are. Hours have two places, each made once of a sum of whole minutes.
 */
public enum TallyTable {
    /** A row for each person and day. */
    PEOPLE(TallyTable::people),
    /** A row for each line of a visit. */
    LINES(TallyTable::lines),
    /** The rows that hours are counted from. */
    ROWS(TallyTable::rows);

    private static final Cell NOTHING = Cell.of("");

    private final Function<SpanTally, CsvTable> make;

    TallyTable(Function<SpanTally, CsvTable> make) {
        this.make = make;
    }

    public CsvTable of(SpanTally tally) {
        return make.apply(tally);
    }

    private static CsvTable people(SpanTally tally) {
        List<String> columns =
                new ArrayList<>(List.of("date", "person", "name", "attended_hours", "on_machines_hours"));
        for (OtherWork.Kind kind : OtherWork.Kind.values()) {
            columns.add(Fields.nameOf(kind).replace('-', '_') + "_hours");
        }
        columns.addAll(List.of("rests_hours", "unaccounted_hours", "free_hours", "rounding_hours", "paid_hours"));
        Books books = tally.ledger().books();
        return new CsvTable(
                columns,
                tally.hours().days().stream().map(day -> person(books, day)).toList());
    }

    private static List<Cell> person(Books books, PersonDay day) {
        PersonHours hours = PersonHours.of(day);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.of(day.date().toString()),
                Cell.of(day.personId()),
                Cell.of(books.nameOf(day.personId())),
                hours(hours.attended()),
                hours(hours.onMachines())));
        for (OtherWork.Kind kind : OtherWork.Kind.values()) {
            cells.add(hours(hours.other().getOrDefault(kind, 0)));
        }
        cells.addAll(List.of(
                hours(hours.rests()),
                hours(hours.unaccounted()),
                hours(hours.free()),
                hours(hours.rounding()),
                hours(hours.paid())));
        return cells;
    }

    private static CsvTable lines(SpanTally tally) {
        List<List<Cell>> rows = new ArrayList<>();
        for (VisitTally visit : tally.visits()) {
            visit.lines().forEach(line -> rows.add(line(tally.ledger(), visit, line)));
        }
        return new CsvTable(
                List.of(
                        "visit",
                        "tag",
                        "owner",
                        "machine",
                        "line",
                        "work",
                        "payer",
                        "estimated_minutes",
                        "worked_minutes",
                        "cleaning_minutes",
                        "chargeable_hours",
                        "finished",
                        "comes_back_from"),
                rows);
    }

    private static List<Cell> line(Ledger ledger, VisitTally tally, LineTally line) {
        Visit visit = tally.visit();
        Books books = ledger.books();
        return List.of(
                Cell.of(visit.id()),
                visit.tag().isPresent() ? Cell.of(visit.tag().getAsInt()) : NOTHING,
                Cell.of(books.ownerOf(visit).name()),
                Cell.of(books.machineOf(visit).label()),
                Cell.of(line.line().id()),
                Cell.of(line.line().name()),
                Cell.of(Fields.nameOf(line.line().payer())),
                Cell.of(line.estimated()),
                Cell.of(line.worked()),
                Cell.of(line.cleaning()),
                line.chargeable().isPresent() ? hours(line.chargeable().getAsInt()) : NOTHING,
                time(ledger, visit.finished()),
                text(tally.earlier().map(Visit::id)));
    }

    private static CsvTable rows(SpanTally tally) {
        return new CsvTable(
                List.of(
                        "row",
                        "person",
                        "name",
                        "from",
                        "to",
                        "what",
                        "counts",
                        "replaces",
                        "corrected_by",
                        "corrected_at",
                        "why"),
                HoursRow.of(tally).stream().map(row -> row(tally, row)).toList());
    }

    private static List<Cell> row(SpanTally tally, HoursRow row) {
        ClockEntry entry = row.entry();
        Ledger ledger = tally.ledger();
        return List.of(
                Cell.of(entry.id()),
                Cell.of(entry.personId()),
                Cell.of(ledger.books().nameOf(entry.personId())),
                time(ledger, Optional.of(entry.from())),
                time(ledger, entry.to()),
                Cell.of(TallyWords.on(tally, entry)),
                Cell.of(String.valueOf(row.counts())),
                text(entry.correction().flatMap(Correction::replaces)),
                text(entry.correction().map(Correction::by)),
                time(ledger, entry.correction().map(Correction::at)),
                text(entry.correction().map(Correction::why)));
    }

    private static Cell hours(int minutes) {
        return Cell.of(DecimalHours.of(minutes));
    }

    private static Cell text(Optional<String> text) {
        return text.map(Cell::of).orElse(NOTHING);
    }

    private static Cell time(Ledger ledger, Optional<Instant> at) {
        return text(at.map(moment -> WrittenTime.of(ledger.books().shop().zone(), moment)));
    }
}
