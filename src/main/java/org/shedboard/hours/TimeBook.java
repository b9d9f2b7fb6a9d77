package org.shedboard.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.shop.Window;

/**
 * The rows from which hours are tallied, and by what rules.
 *
 * @param zone where the shop is: it decides which minutes are of which day
 * @param breaks the gaps between each person's usual shifts, by their id, in the order in which the shop names its people
 * @param rows clock entries with the corrections to them, of whatever days
 */
public record TimeBook(ZoneId zone, HoursRules rules, Map<String, List<Window>> breaks, List<ClockEntry> rows) {
    public TimeBook {
        breaks = new LinkedHashMap<>(breaks);
        rows = List.copyOf(rows);
    }

    /**
     * Whether an entry was open at a midnight and still is: somebody forgot to clock off, and how long they were on it is to be
     * asked.
     */
    public static boolean isUnsettled(ClockEntry entry, ZoneId zone, Instant now) {
        return entry.isOpen() && LocalDate.ofInstant(entry.from(), zone).isBefore(LocalDate.ofInstant(now, zone));
    }

    /**
     * The tally of the days from one date until another.
     *
     * @param until the day after the last
     * @param now the end of entries that are open
     */
    public Tally tally(LocalDate from, LocalDate until, Instant now) {
        List<ClockEntry> standing = ClockEntry.standing(rows);
        Map<String, Map<LocalDate, List<ClockEntry>>> byPerson = new LinkedHashMap<>();
        breaks.keySet().forEach(person -> byPerson.put(person, new HashMap<>()));
        for (ClockEntry entry : standing) {
            Map<LocalDate, List<ClockEntry>> days = byPerson.computeIfAbsent(entry.personId(), id -> new HashMap<>());
            for (LocalDate date = later(from, dateOf(entry.from())); date.isBefore(until); date = date.plusDays(1)) {
                if (date.isAfter(lastDateOf(entry, now))) {
                    break;
                }
                days.computeIfAbsent(date, day -> new ArrayList<>()).add(entry);
            }
        }
        List<PersonDay> days = new ArrayList<>();
        List<ClockEntry> overlapped = new ArrayList<>();
        byPerson.forEach((person, dates) -> dates.keySet().stream().sorted().forEach(date -> {
            DayCount count = new DayCount(date, dates.get(date), rules, zone, now);
            days.add(count.count(person, breaks.getOrDefault(person, List.of())));
            overlapped.addAll(count.overlapped());
        }));
        List<ClockEntry> unsettled = standing.stream()
                .filter(entry ->
                        isUnsettled(entry, zone, now) && dateOf(entry.from()).isBefore(until))
                .toList();
        return new Tally(days, unsettled, overlapped.stream().distinct().toList());
    }

    private LocalDate dateOf(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }

    /** The date of its last moment; an entry that ends at midnight is not of the day that begins then. */
    private LocalDate lastDateOf(ClockEntry entry, Instant now) {
        Instant end = entry.to().orElse(isUnsettled(entry, zone, now) ? entry.from() : now);
        return end.isAfter(entry.from()) ? dateOf(end.minus(1, ChronoUnit.NANOS)) : dateOf(entry.from());
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
