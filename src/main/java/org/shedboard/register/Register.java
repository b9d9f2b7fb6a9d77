package org.shedboard.register;

import java.util.ArrayList;
import java.util.List;

/**
 * What the shop remembers of its machines from one visit to the next.
 *
 * @param carried findings to be looked at again
 * @param notices what makers ask for
 * @param taken which of that became work
 * @param loans machines of ours that were lent
 * @param merged records of machines that were merged into others
 * @param logbook what was read, done and said of machines over time
 */
public record Register(
        List<Carried> carried,
        List<Notice> notices,
        List<NoticeTaken> taken,
        List<Loan> loans,
        List<Merged> merged,
        Logbook logbook) {
    public static final Register EMPTY =
            new Register(List.of(), List.of(), List.of(), List.of(), List.of(), Logbook.EMPTY);

    public Register {
        carried = List.copyOf(carried);
        notices = List.copyOf(notices);
        taken = List.copyOf(taken);
        loans = List.copyOf(loans);
        merged = List.copyOf(merged);
    }

    /** The records that were merged into this machine. */
    public List<Merged> mergedInto(String machineId) {
        return merged.stream().filter(each -> each.into().equals(machineId)).toList();
    }

    public Register withMerged(List<Merged> next) {
        return new Register(carried, notices, taken, loans, next, logbook);
    }

    /** With this record merged; what was merged into it before goes along. */
    public Register plus(Merged latest) {
        List<Merged> next = new ArrayList<>();
        merged.forEach(each -> next.add(each.into().equals(latest.machine().id()) ? each.into(latest.into()) : each));
        next.add(latest);
        return withMerged(next).with(logbook.moved(latest.machine().id(), latest.into()));
    }

    public Register with(Logbook next) {
        return new Register(carried, notices, taken, loans, merged, next);
    }
}
