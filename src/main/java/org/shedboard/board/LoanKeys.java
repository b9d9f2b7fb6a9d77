package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.register.Loan;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What keys do about machines of ours that owners have meanwhile. */
final class LoanKeys {
    private LoanKeys() {}

    /** What is out for the visit that the keys are about. */
    static Optional<Loan> outFor(Subject subject) {
        return subject.outlook()
                .day()
                .books()
                .register()
                .loanOutFor(subject.visit().id());
    }

    static Overlay whichOfOurs(Day day, Visit visit) {
        return new Overlay.TypeIn(
                Words.say("ask.which_of_ours", Names.of(day, visit)),
                Typing.EMPTY,
                new Overlay.Purpose.LendOurs(visit.id()));
    }

    /** A machine on the books where the text is its whole label or id, else just what is typed. */
    static Act.LendMachine lend(Day day, String visitId, String text) {
        List<Machine> named = day.books().machines().stream()
                .filter(machine ->
                        machine.label().equalsIgnoreCase(text) || machine.id().equalsIgnoreCase(text))
                .toList();
        return named.size() == 1
                ? new Act.LendMachine(visitId, Optional.of(named.get(0).id()), "")
                : new Act.LendMachine(visitId, Optional.empty(), text);
    }
}
