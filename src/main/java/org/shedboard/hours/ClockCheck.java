package org.shedboard.hours;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Looks through clock entries for what cannot have been. */
public final class ClockCheck {
    private ClockCheck() {}

    /** What is wrong with an entry. */
    public enum Kind {
        /** Its person is on something else in the same minute. */
        OVERLAP,
        /** Its day is closed, and it has no end. */
        OPEN_ON_CLOSED_DAY
    }

    /** @param entryId of the entry; of two that overlap, the later one */
    public record Fault(Kind kind, String entryId) {}

    /**
     * What is wrong with those that count. Being in the shop is no work, and shares its time with all of it.
     *
     * @param closed the dates that are closed
     */
    public static List<Fault> of(List<ClockEntry> rows, Set<LocalDate> closed, ZoneId zone) {
        List<ClockEntry> standing = ClockEntry.standing(rows).stream()
                .filter(entry -> !entry.isAtWork())
                .toList();
        List<Fault> faults = new ArrayList<>();
        Map<String, List<ClockEntry>> byPerson = standing.stream().collect(Collectors.groupingBy(ClockEntry::personId));
        byPerson.keySet().stream().sorted().forEach(person -> overlaps(byPerson.get(person), faults));
        standing.stream()
                .filter(ClockEntry::isOpen)
                .filter(entry -> closed.contains(LocalDate.ofInstant(entry.from(), zone)))
                .forEach(entry -> faults.add(new Fault(Kind.OPEN_ON_CLOSED_DAY, entry.id())));
        return faults;
    }

    /** Those that touch share nothing, and neither does one that took no time. */
    private static void overlaps(List<ClockEntry> ofOne, List<Fault> faults) {
        List<ClockEntry> sorted =
                ofOne.stream().sorted(Comparator.comparing(ClockEntry::from)).toList();
        Instant until = Instant.MIN;
        for (ClockEntry entry : sorted) {
            Instant to = entry.to().orElse(Instant.MAX);
            if (entry.from().isBefore(until) && to.isAfter(entry.from())) {
                faults.add(new Fault(Kind.OVERLAP, entry.id()));
            }
            until = to.isAfter(until) ? to : until;
        }
    }
}
