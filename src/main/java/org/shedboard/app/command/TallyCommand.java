package org.shedboard.app.command;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.files.TallySheet;
import org.shedboard.files.TallyTable;
import org.shedboard.tally.SpanTally;
import org.shedboard.words.When;
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

    /** Which days. */
    static final class Span {
        @Option(names = "--date", paramLabel = "DATE")
        private Optional<LocalDate> date = Optional.empty();

        @Option(names = "--week", paramLabel = "DATE")
        private Optional<LocalDate> week = Optional.empty();

        @Option(names = "--month", paramLabel = "YYYY-MM")
        private Optional<String> month = Optional.empty();

        @ArgGroup(exclusive = false)
        private Between between;
    }

    /** From one date to another, both included. */
    static final class Between {
        @Option(names = "--from", paramLabel = "DATE", required = true)
        private LocalDate from;

        @Option(names = "--to", paramLabel = "DATE", required = true)
        private LocalDate to;
    }

    @ArgGroup
    private Span span;

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
        List<LocalDate> days = days(seen.day().date());
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

    /** The first day, and the day after the last. */
    private List<LocalDate> days(LocalDate today) {
        if (span == null) {
            return List.of(today, today.plusDays(1));
        }
        if (span.between != null) {
            if (span.between.to.isBefore(span.between.from)) {
                throw new WrongUse("command.tally.backwards", span.between.from, span.between.to);
            }
            return List.of(span.between.from, span.between.to.plusDays(1));
        }
        if (span.week.isPresent()) {
            LocalDate first = span.week.get().with(TemporalAdjusters.previousOrSame(When.firstOfWeek()));
            return List.of(first, first.plusWeeks(1));
        }
        if (span.month.isPresent()) {
            LocalDate first = month(span.month.get()).atDay(1);
            return List.of(first, first.plusMonths(1));
        }
        LocalDate date = span.date.orElse(today);
        return List.of(date, date.plusDays(1));
    }

    static YearMonth month(String typed) {
        try {
            return YearMonth.parse(typed);
        } catch (DateTimeParseException unread) {
            throw new WrongUse("command.month_unread", typed);
        }
    }
}
