package org.shedboard.shop;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How one day was opened: who is here and which hoists were checked.
 *
 * @param by id of the person who confirmed it
 * @param closed when the day was closed; empty while it runs
 */
public record Opening(
        LocalDate date,
        Instant at,
        String by,
        List<Attendance> attendances,
        List<HoistCheck> checks,
        Optional<Instant> closed) {
    public Opening {
        attendances = List.copyOf(attendances);
        checks = List.copyOf(checks);
    }

    public Optional<Attendance> attendanceOf(String personId) {
        return attendances.stream()
                .filter(attendance -> attendance.personId().equals(personId))
                .findFirst();
    }

    /** Whether this hoist was found sound today. */
    public boolean isChecked(String placeId) {
        return checks.stream().anyMatch(check -> check.placeId().equals(placeId) && check.isSound());
    }

    public Opening withAttendances(List<Attendance> next) {
        return new Opening(date, at, by, next, checks, closed);
    }

    public Opening withChecks(List<HoistCheck> next) {
        return new Opening(date, at, by, attendances, next, closed);
    }

    public Opening closedAt(Instant when) {
        return new Opening(date, at, by, attendances, checks, Optional.of(when));
    }
}
