package org.shedboard.hours;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A person on a stay, on other work, on a break or in the shop, from one moment to another.
 *
 * @param to when they went off it; empty while they are on it
 * @param correction why it was written after the fact; empty for what was clocked
 */
public record ClockEntry(
        String id,
        String personId,
        Activity activity,
        Instant from,
        Optional<Instant> to,
        Optional<Correction> correction) {
    public ClockEntry {
        if (to.isPresent() && to.get().isBefore(from)) {
            throw new IllegalArgumentException(
                    "clock entry %s cannot end (%s) before it starts (%s)".formatted(id, to.get(), from));
        }
    }

    /** An entry as it was clocked. */
    public ClockEntry(String id, String personId, Activity activity, Instant from, Optional<Instant> to) {
        this(id, personId, activity, from, to, Optional.empty());
    }

    /** The entries that count: none that a correction took the place of, and no correction that only takes one away. */
    public static List<ClockEntry> standing(List<ClockEntry> rows) {
        Set<String> replaced = rows.stream()
                .flatMap(row -> row.correction().stream())
                .flatMap(correction -> correction.replaces().stream())
                .collect(Collectors.toSet());
        return rows.stream()
                .filter(row -> !replaced.contains(row.id()))
                .filter(row -> row.correction().filter(Correction::isStruck).isEmpty())
                .toList();
    }

    public boolean isOpen() {
        return to.isEmpty();
    }

    public boolean isAtWork() {
        return activity instanceof Activity.AtWork;
    }

    /** Ended at that moment; at its start where a clock that was put back says that this is later. */
    public ClockEntry endedAt(Instant at) {
        return new ClockEntry(id, personId, activity, from, Optional.of(at.isBefore(from) ? from : at), correction);
    }

    /** Whether it shares a moment with the time from one moment to another; an open one goes on for ever. */
    public boolean overlaps(Instant begin, Instant end) {
        return from.isBefore(end) && to.map(begin::isBefore).orElse(true);
    }
}
