package org.shedboard.hours;

import java.time.Instant;
import java.util.Optional;

/**
 * A person on a stay, or on other work, from one moment to another.
 *
 * @param to when they went off it; empty while they are on it
 */
public record ClockEntry(String id, String personId, Activity activity, Instant from, Optional<Instant> to) {
    public ClockEntry {
        if (to.isPresent() && to.get().isBefore(from)) {
            throw new IllegalArgumentException(
                    "clock entry %s cannot end (%s) before it starts (%s)".formatted(id, to.get(), from));
        }
    }

    public boolean isOpen() {
        return to.isEmpty();
    }

    public ClockEntry endedAt(Instant at) {
        return new ClockEntry(id, personId, activity, from, Optional.of(at.isBefore(from) ? from : at));
    }

    /** Its end, or that moment while it is still open. */
    public Instant toOr(Instant now) {
        return to.orElse(now.isBefore(from) ? from : now);
    }
}
