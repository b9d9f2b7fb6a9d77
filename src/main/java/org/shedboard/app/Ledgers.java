package org.shedboard.app;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Books;
import org.shedboard.shop.Visit;
import org.shedboard.store.Reader;
import org.shedboard.tally.Ledger;

/** Reads from the records what the hours of some days are tallied from. */
final class Ledgers {
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
