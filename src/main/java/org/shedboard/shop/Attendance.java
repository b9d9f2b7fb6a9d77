package org.shedboard.shop;

import java.time.Instant;
import java.util.Optional;

/**
 * One person's presence on one day.
 *
 * @param until when they are expected to leave
 * @param left when they left
 */
public record Attendance(String personId, Instant from, Instant until, Optional<Instant> left) {
    /** Gone at that moment; as soon as they came where it lies before that. */
    public Attendance leftAt(Instant at) {
        return new Attendance(personId, from, until, Optional.of(at.isBefore(from) ? from : at));
    }
}
