package org.shedboard.app;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.day.Act;
import org.shedboard.day.Books;
import org.shedboard.shop.Visit;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.Noted;

/** Reads from the records what the hours of some days are tallied from. */
final class Ledgers {
    /** What the journal calls the acts that are looked back for. */
    private static final Map<String, Noted.Kind> KINDS = Map.of(
            Act.AddWork.class.getSimpleName(), Noted.Kind.WORK_ADDED,
            Act.HoldVisit.class.getSimpleName(), Noted.Kind.HELD,
            Act.Release.class.getSimpleName(), Noted.Kind.RELEASED,
            Act.Arrive.class.getSimpleName(), Noted.Kind.MUD_CHANGED);

    private final Reader reader;
    private final Books books;
    private final ZoneId zone;

    Ledgers(Reader reader, Books books) {
        this.reader = reader;
        this.books = books;
        this.zone = books.shop().zone();
    }

    Ledger read(LocalDate from, LocalDate until, Instant now) {
        Instant begin = from.atStartOfDay(zone).toInstant();
        Instant end = until.atStartOfDay(zone).toInstant();
        List<Visit> visits = reader.visitsDuring(begin, end);
        return new Ledger(
                books,
                from,
                until,
                reader.openings(from, until),
                visits,
                before(visits),
                reader.entries(firstWork(visits, begin, end), end),
                now);
    }

    /** What the journal tells of visits between the arrival of the first of them and a date. */
    List<Noted> noted(Ledger ledger) {
        Instant end = ledger.until().atStartOfDay(zone).toInstant();
        Instant begin = ledger.visits().stream()
                .map(visit -> visit.intake().arrives())
                .min(Comparator.naturalOrder())
                .orElse(end);
        return reader.journal(List.copyOf(KINDS.keySet()), begin, end).stream()
                .flatMap(Ledgers::noted)
                .toList();
    }

    private static Stream<Noted> noted(JournalRow row) {
        Noted.Kind kind = KINDS.get(row.what());
        if (kind == Noted.Kind.WORK_ADDED) {
            return row.touched("visit_line").stream()
                    .map(touched -> new Noted(
                            kind, row.at(), touched.key().get(0), touched.key().get(1)));
        }
        return row.touched("visit").stream()
                .filter(touched ->
                        kind != Noted.Kind.MUD_CHANGED || touched.columns().contains("mud"))
                .map(touched -> new Noted(kind, row.at(), touched.key().get(0), ""));
    }

    /** A line is charged for all that was worked on it, so that of a visit finished in these days everything is needed. */
    private Instant firstWork(List<Visit> visits, Instant begin, Instant end) {
        Optional<Instant> first = visits.stream()
                .filter(visit -> visit.finished()
                        .filter(done -> !done.isBefore(begin) && done.isBefore(end))
                        .isPresent())
                .flatMap(visit -> visit.tasks().stream())
                .flatMap(task -> task.progress().began().stream())
                .min(Comparator.naturalOrder());
        return first.filter(begin::isAfter)
                .map(at -> LocalDate.ofInstant(at, zone).atStartOfDay(zone).toInstant())
                .orElse(begin);
    }

    private List<Visit> before(List<Visit> visits) {
        return visits.stream()
                .filter(visit ->
                        visit.lines().stream().anyMatch(line -> !line.payer().isOutside()))
                .map(Visit::machineId)
                .distinct()
                .flatMap(machine -> reader.visitsOf(machine).stream())
                .toList();
    }
}
