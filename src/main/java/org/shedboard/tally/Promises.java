package org.shedboard.tally;

import java.time.Instant;
import java.util.List;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/**
 * Promises that fell due.
 *
 * @param due those that were due by now, or whose machine was done before; on a day that is closed all of it
 * @param kept those of them done by the time first promised, or first after the owner asked for a change
 */
public record Promises(int due, int kept) {
    static Promises of(Ledger ledger) {
        List<Visit> due =
                ledger.visits().stream().filter(visit -> isDue(ledger, visit)).toList();
        return new Promises(
                due.size(), (int) due.stream().filter(Promises::isKept).count());
    }

    private static boolean isDue(Ledger ledger, Visit visit) {
        if (visit.state() == VisitState.CANCELLED || visit.state() == VisitState.NO_SHOW) {
            return false;
        }
        return visit.firstPromise()
                .map(Promise::at)
                .filter(ledger::isWithin)
                .filter(at -> visit.finished().isPresent() || !at.isAfter(ledger.now()) || isClosed(ledger, at))
                .isPresent();
    }

    private static boolean isClosed(Ledger ledger, Instant at) {
        return ledger.openings().stream()
                .anyMatch(opening -> opening.date().equals(ledger.dateOf(at))
                        && opening.closed().isPresent());
    }

    /** Whether a visit that has a promise was done by the time that counts. */
    public static boolean isKept(Visit visit) {
        Instant promised = visit.firstPromise().map(Promise::at).orElseThrow();
        return visit.finished().filter(done -> !done.isAfter(promised)).isPresent();
    }
}
