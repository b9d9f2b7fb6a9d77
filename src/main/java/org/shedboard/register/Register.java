package org.shedboard.register;

import java.util.List;

/**
 * What the shop remembers of its machines from one visit to the next.
 *
 * @param carried findings to be looked at again
 * @param notices what makers ask for
 * @param taken which of that became work
 * @param loans machines of ours that were lent
 * @param logbook what was read, done and said of machines over time
 */
public record Register(
        List<Carried> carried, List<Notice> notices, List<NoticeTaken> taken, List<Loan> loans, Logbook logbook) {
    public static final Register EMPTY = new Register(List.of(), List.of(), List.of(), List.of(), Logbook.EMPTY);

    public Register {
        carried = List.copyOf(carried);
        notices = List.copyOf(notices);
        taken = List.copyOf(taken);
        loans = List.copyOf(loans);
    }

    public Register with(Logbook next) {
        return new Register(carried, notices, taken, loans, next);
    }
}
