package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.LoanWords;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.register.Loan;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Machines of ours that owners have meanwhile. */
final class LoanCommands {
    private LoanCommands() {}

    @Command(name = "loan")
    static final class Lend implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
        private String tag;

        @Parameters(index = "1", paramLabel = "MACHINE", descriptionKey = "option.lent")
        private String machine;

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            Optional<Machine> known = asked.findMachine(machine);
            return Reply.Carry.of(new Act.LendMachine(
                    asked.visit(tag).id(), known.map(Machine::id), known.isPresent() ? "" : machine));
        }
    }

    @Command(name = "loan-back")
    static final class Back implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "LOAN", descriptionKey = "option.loan")
        private String loan;

        @Override
        public Reply reply(Seen seen) {
            return Reply.Carry.of(new Act.GetBack(find(seen).map(Loan::id).orElse(loan)));
        }

        /** By its id, or by the tag of the visit it was lent for. */
        private Optional<Loan> find(Seen seen) {
            return seen.day().books().register().loansOut().stream()
                    .filter(each -> each.id().equalsIgnoreCase(loan) || isTagOf(seen.day(), each))
                    .findFirst();
        }

        private boolean isTagOf(Day day, Loan each) {
            return loan.matches("[0-9]{1,3}")
                    && day.findByTag(Integer.parseInt(loan))
                            .filter(visit -> visit.id().equals(each.visitId()))
                            .isPresent();
        }
    }

    /** What is out; with {@code --all} also what came back. */
    @Command(name = "loans")
    static final class All implements Wish.OnTheDay {
        @Option(names = "--all")
        private boolean all;

        @Override
        public Reply reply(Seen seen) {
            Day day = seen.day();
            List<Loan> loans = all
                    ? day.books().register().loans()
                    : day.books().register().loansOut();
            List<String> lines = loans.isEmpty()
                    ? List.of(Words.say("command.loans.none"))
                    : loans.stream()
                            .map(loan -> loan.id() + "  " + LoanWords.of(day, loan))
                            .toList();
            Tree tree = new Tree()
                    .put("loans", loans.stream().map(loan -> tree(day, loan)).toList());
            return new Reply.Tell(new Answer(lines, tree.fields()));
        }

        static Object tree(Day day, Loan loan) {
            return new Tree()
                    .put("loan", loan.id())
                    .put("machine", loan.machineId())
                    .put("label", loan.label())
                    .put("visit", loan.visitId())
                    .put("owner", day.books().expectOwner(loan.ownerId()).name())
                    .put("out", Tree.time(day, loan.out()))
                    .put("back", loan.back().map(at -> Tree.time(day, at)))
                    .fields();
        }
    }
}
