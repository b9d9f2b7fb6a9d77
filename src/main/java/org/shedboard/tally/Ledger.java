package org.shedboard.tally;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.day.Books;
import org.shedboard.day.Day;
import org.shedboard.day.Presences;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.TimeBook;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Visit;
import org.shedboard.shop.Window;

/**
 * What the records hold of the days from one date until another.
 *
 * @param until the day after the last
 * @param openings how these days were opened, in order
 * @param visits those that were with us then, and those promised for then
 * @param before earlier visits of machines that came back on our own account
 * @param entries clock entries with the corrections to them: all that touch these days, and for visits finished in them all there are
 * @param now the moment it is seen from
 */
public record Ledger(
        Books books,
        LocalDate from,
        LocalDate until,
        List<Opening> openings,
        List<Visit> visits,
        List<Visit> before,
        List<ClockEntry> entries,
        Instant now) {
    public Ledger {
        openings = List.copyOf(openings);
        visits = List.copyOf(visits);
        before = List.copyOf(before);
        entries = List.copyOf(entries);
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("the span from %s until %s has no day".formatted(from, until));
        }
    }

    /** What a day knows of itself: nothing of the days before it. */
    public static Ledger of(Day day, Instant now) {
        return new Ledger(
                day.books(),
                day.date(),
                day.date().plusDays(1),
                day.opening().stream().toList(),
                day.visits(),
                List.of(),
                day.entries(),
                now);
    }

    /** The same seen from another moment. */
    public Ledger at(Instant moment) {
        return new Ledger(books, from, until, openings, visits, before, entries, moment);
    }

    /** The presences and the clock entries, corrections among them. */
    public List<ClockEntry> rows() {
        List<ClockEntry> rows = new ArrayList<>();
        openings.forEach(opening -> rows.addAll(Presences.of(opening)));
        rows.addAll(entries);
        return rows;
    }

    /** The rows to tally hours from, and by what rules. */
    TimeBook book() {
        Map<String, List<Window>> breaks = new LinkedHashMap<>();
        books.shop().people().forEach(person -> breaks.put(person.id(), person.breaks()));
        return new TimeBook(books.shop().zone(), books.hoursRules(), breaks, rows());
    }

    /** Whether one of its days was opened and never closed. */
    public boolean hasUnclosed() {
        return openings.stream().anyMatch(opening -> opening.closed().isEmpty());
    }

    /** The first date of which there is an entry; that of the span where there is none before it. */
    LocalDate firstDate() {
        return rows().stream()
                .map(row -> dateOf(row.from()))
                .filter(from::isAfter)
                .min(Comparator.naturalOrder())
                .orElse(from);
    }

    boolean isWithin(Instant at) {
        LocalDate date = dateOf(at);
        return !date.isBefore(from) && date.isBefore(until);
    }

    LocalDate dateOf(Instant at) {
        return LocalDate.ofInstant(at, books.shop().zone());
    }
}
