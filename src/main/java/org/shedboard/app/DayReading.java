package org.shedboard.app;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Books;
import org.shedboard.day.Day;
import org.shedboard.day.Posted;
import org.shedboard.estimate.Catalogue;
import org.shedboard.forecast.Foresight;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;

/** Reads days from the records, and keeps in hand what has not changed since. */
final class DayReading {
    private final Clock clock;

    /**
     * Nothing of the day is read again while the journal has not grown.
     *
     * @param last the newest change that is in it
     */
    private record Known(JournalRow last, LocalDate date, Day day) {}

    private final Learning learning = new Learning();
    private final BooksInHand inHand = new BooksInHand();
    private Optional<Known> known = Optional.empty();

    /** @param clock in the zone of the shop */
    DayReading(Clock clock) {
        this.clock = clock;
    }

    /** The date it is. */
    LocalDate date() {
        return LocalDate.now(clock);
    }

    /** The day it is. */
    synchronized Day today(Reader reader) {
        LocalDate date = date();
        Optional<JournalRow> last = reader.lastChange();
        Optional<Known> fresh = known.filter(
                seen -> last.equals(Optional.of(seen.last())) && seen.date().equals(date));
        if (fresh.isPresent()) {
            return fresh.get().day();
        }
        Day day = readToday(reader, date);
        known = last.map(change -> new Known(change, date, day));
        return day;
    }

    private Day readToday(Reader reader, LocalDate date) {
        Optional<Posted> posted = reader.posted().map(plan -> new Posted(plan.plan(), plan.origin()));
        return read(reader, date, posted, visitsAsTheyWere(reader));
    }

    /** Those of the day that was read last in which nothing has changed since, by id. */
    private Map<String, Visit> visitsAsTheyWere(Reader reader) {
        Map<String, Visit> visits = new HashMap<>();
        known.ifPresent(last -> News.since(last.last(), reader).ifPresent(news -> {
            last.day().visits().forEach(visit -> visits.put(visit.id(), visit));
            visits.keySet().removeAll(news.visits());
        }));
        return visits;
    }

    /** Another day: its opening, its hours and the visits that were not over by then; it has no plan. */
    Day another(Reader reader, LocalDate date) {
        return read(reader, date, Optional.empty(), Map.of());
    }

    private Day read(Reader reader, LocalDate date, Optional<Posted> posted, Map<String, Visit> asTheyWere) {
        Books books = books(reader);
        ZoneId zone = books.shop().zone();
        Instant from = date.atStartOfDay(zone).toInstant();
        Instant to = date.plusDays(1).atStartOfDay(zone).toInstant();
        List<ClockEntry> entries = new ArrayList<>(reader.entries(from, to));
        reader.openEntries().stream()
                .filter(entry -> entry.from().isBefore(to) && !entries.contains(entry))
                .forEach(entries::add);
        Optional<Opening> opening = reader.opening(date);
        List<Visit> visits = reader.visitsOpenOrEndedSince(from, asTheyWere);
        return new Day(
                knowing(reader, books, visits),
                date,
                opening,
                visits,
                entries,
                reader.openErrands(),
                reader.unclosedBefore(date),
                posted,
                reader.nextNumber());
    }

    /** With what was read off at the machines of these visits alone, for it grows without end. */
    private static Books knowing(Reader reader, Books books, List<Visit> visits) {
        List<String> machines = visits.stream().map(Visit::machineId).distinct().toList();
        return books.with(books.register().with(reader.measured(machines)));
    }

    /** What is in the books, with what was learned by now. */
    Books books(Reader reader) {
        BooksInHand.Contents contents = inHand.of(reader);
        BooksInHand.Standing standing = contents.standing();
        Books books = new Books(
                standing.shop(),
                standing.catalogue(),
                contents.owners(),
                contents.machines(),
                standing.hoursRules(),
                reader.signers(),
                contents.register(),
                standing.shelf(),
                foresight(reader, standing.catalogue(), standing.shop()));
        return learning.taught(reader, books, clock.instant());
    }

    private static Foresight foresight(Reader reader, Catalogue catalogue, Shop shop) {
        int percent =
                reader.setting(Saving.PACKED_PERCENT).map(Integer::parseInt).orElse(Foresight.USUAL_PERCENT);
        return Foresight.none(catalogue, shop.people()).withPacked(percent);
    }
}
