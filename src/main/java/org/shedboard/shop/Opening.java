package org.shedboard.shop;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How one day was opened and closed: who was here, and what was found of its hoists.
 *
 * @param by id of the person who confirmed it
 * @param attendances who was here; somebody who left and came back more than once
 * @param checks what was found of hoists, in the order in which they were looked at
 * @param closed when the day was closed and by whom; empty while it runs
 */
public record Opening(
        LocalDate date,
        Instant at,
        String by,
        List<Attendance> attendances,
        List<HoistCheck> checks,
        Optional<Closed> closed) {
    /** A day that is closed: nothing of it changes but by correction. */
    public record Closed(Instant at, String by) {}

    public Opening {
        attendances = List.copyOf(attendances);
        checks = List.copyOf(checks);
    }

    /** A person's presence; the last one of who left and came back. */
    public Optional<Attendance> attendanceOf(String personId) {
        return attendances.stream()
                .filter(attendance -> attendance.personId().equals(personId))
                .reduce((earlier, later) -> later);
    }

    /** Those who have not left. */
    public List<Attendance> here() {
        return attendances.stream()
                .filter(attendance -> attendance.left().isEmpty())
                .toList();
    }

    /** What was found of a hoist last. */
    public Optional<HoistCheck> checkOf(String placeId) {
        return checks.stream().filter(check -> check.placeId().equals(placeId)).reduce((earlier, later) -> later);
    }

    /** Whether this hoist was found sound today, and not locked out since. */
    public boolean isChecked(String placeId) {
        return checkOf(placeId).filter(HoistCheck::isSound).isPresent();
    }

    /** With this in the place of the person's presence that goes on, or after all others where none does. */
    public Opening with(Attendance next) {
        List<Attendance> all = new ArrayList<>(attendances);
        boolean goesOn = false;
        for (int i = 0; i < all.size(); i++) {
            Attendance one = all.get(i);
            if (one.personId().equals(next.personId()) && one.left().isEmpty()) {
                all.set(i, next);
                goesOn = true;
            }
        }
        if (!goesOn) {
            all.add(next);
        }
        return new Opening(date, at, by, all, checks, closed);
    }

    public Opening plus(HoistCheck check) {
        List<HoistCheck> all = new ArrayList<>(checks);
        all.add(check);
        return new Opening(date, at, by, attendances, all, closed);
    }

    public Opening closed(Closed end) {
        return new Opening(date, at, by, attendances, checks, Optional.of(end));
    }
}
