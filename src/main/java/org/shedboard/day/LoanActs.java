package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.register.Loan;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;

/** Machines of ours that owners have meanwhile. */
final class LoanActs {
    private final Draft draft;
    private final Instant now;

    LoanActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome lend(Act.LendMachine act) {
        return draft.onVisit(act.visitId(), visit -> lend(act, visit));
    }

    private Outcome lend(Act.LendMachine act, Visit visit) {
        Optional<Machine> machine = act.machineId().flatMap(draft.day().books()::findMachine);
        String label = act.label().isBlank() ? machine.map(Machine::label).orElse("") : act.label();
        Optional<Refusal> no = refusal(act, visit, label);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        String ownerId = draft.day().ownerOf(visit).id();
        draft.put(new Loan(
                draft.newId("B"), machine.map(Machine::id), label, visit.id(), ownerId, now, Optional.empty()));
        return draft.doneWith(visit);
    }

    private Optional<Refusal> refusal(Act.LendMachine act, Visit visit, String label) {
        Day day = draft.day();
        if (act.machineId().isPresent()
                && day.books().findMachine(act.machineId().get()).isEmpty()) {
            return Optional.of(Refusal.of("machine_unknown", act.machineId().get()));
        }
        if (label.isBlank()) {
            return Optional.of(Refusal.of("nothing_lent"));
        }
        if (!visit.state().isOpen() && !visit.state().isHere()) {
            return Optional.of(Refusal.of("not_here_any_more", Names.of(day, visit)));
        }
        return day.books().register().loansOut().stream()
                .filter(loan -> act.machineId().isPresent() && loan.machineId().equals(act.machineId()))
                .findFirst()
                .map(loan -> Refusal.of(
                        "lent_already",
                        loan.label(),
                        day.books().expectOwner(loan.ownerId()).name()));
    }

    Outcome getBack(Act.GetBack act) {
        Optional<Loan> loan = draft.day().books().register().findLoan(act.loanId());
        if (loan.filter(Loan::isOut).isEmpty()) {
            return new Outcome.Refused(Refusal.of("loan_unknown", act.loanId()));
        }
        draft.put(loan.get().backAt(now));
        return draft.done();
    }
}
