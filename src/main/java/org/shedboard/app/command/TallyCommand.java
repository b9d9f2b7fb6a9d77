package org.shedboard.app.command;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.files.TallySheet;
import org.shedboard.files.TallyTable;
import org.shedboard.tally.SpanTally;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** The hours of a day, a week, a month or any other span. */
@Command(name = "tally")
final class TallyCommand implements Wish.OnTheDay {
    /**
     * What some spreadsheets, on Windows above all, want before a text to read it as UTF-8 (common practice, no source). RFC 4180 and
     * 7111 know nothing of it, and to most other readers it is a part of the first column's name, so that it is there only when
     * asked for.
     */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    @ArgGroup
    private WhichDays span;

    @Option(names = "--rows")
    private boolean rows;

    @Option(names = "--csv", paramLabel = "TABLE", arity = "0..1", fallbackValue = "people")
    private Optional<TallyTable> csv = Optional.empty();

    @Option(names = "--html")
    private boolean html;

    @Option(names = "--bom")
    private boolean bom;

    @ParentCommand
    private Root root;

    @Override
    public Reply reply(Seen seen) {
        List<LocalDate> days = WhichDays.of(span, seen.day().date());
        expectOneWayOut();
        SpanTally tally = seen.tally(days.get(0), days.get(1));
        if (csv.isPresent()) {
            return new Reply.Print(
                    (bom ? BYTE_ORDER_MARK : "") + csv.get().of(tally).text());
        }
        if (html) {
            return new Reply.Print(new TallySheet(tally).text());
        }
        return new Reply.Tell(rows ? RowsAnswer.of(tally) : TallyAnswer.of(tally));
    }

    /** The rows can be told as JSON, and that is one way; no other two go together. */
    private void expectOneWayOut() {
        boolean rowsOrJson = rows || root.globals().json();
        if (Stream.of(rowsOrJson, html, csv.isPresent()).filter(way -> way).count() > 1) {
            throw new WrongUse("command.tally.ways");
        }
        if (bom && csv.isEmpty()) {
            throw new WrongUse("command.tally.bom");
        }
    }

    static YearMonth month(String typed) {
        try {
            return YearMonth.parse(typed);
        } catch (DateTimeParseException unread) {
            throw new WrongUse("command.month_unread", typed);
        }
    }
}
