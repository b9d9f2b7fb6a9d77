package org.shedboard.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the shop remembers of its machines from one visit to the next.
 *
 * @param carried findings to be looked at again
 * @param notices what makers ask for
 * @param taken which of that became work
 * @param loans machines of ours that were lent
 * @param measured values read off in earlier visits and this one of the machines of the day, the oldest first
 */
public record Register(
        List<Carried> carried,
        List<Notice> notices,
        List<NoticeTaken> taken,
        List<Loan> loans,
        List<Measured> measured) {
    public static final Register EMPTY = new Register(List.of(), List.of(), List.of(), List.of(), List.of());

    public Register {
        carried = List.copyOf(carried);
        notices = List.copyOf(notices);
        taken = List.copyOf(taken);
        loans = List.copyOf(loans);
        measured = List.copyOf(measured);
    }

    /** What a machine took home. */
    public List<Carried> carriedBy(String machineId) {
        return carried.stream()
                .filter(each -> each.machineId().equals(machineId))
                .toList();
    }

    /** What was found at a point of a machine and taken home. */
    public Optional<Carried> carriedAt(String machineId, String pointId) {
        return carriedBy(machineId).stream()
                .filter(each -> each.finding().pointId().equals(pointId))
                .findFirst();
    }

    /** With all that a machine takes home now in the place of what it took home before. */
    public Register carrying(String machineId, List<Carried> now) {
        List<Carried> all = new ArrayList<>(carried);
        all.removeIf(each -> each.machineId().equals(machineId));
        all.addAll(now);
        return new Register(all, notices, taken, loans, measured);
    }

    /** With these values read off. */
    public Register with(List<Measured> next) {
        return new Register(carried, notices, taken, loans, next);
    }

    /** The values read off at a point of a machine, the oldest first. */
    public List<Measured> measuredAt(String machineId, String pointId) {
        return measured.stream()
                .filter(each -> each.machineId().equals(machineId) && each.isAt(pointId))
                .toList();
    }
}
