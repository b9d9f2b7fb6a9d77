package org.shedboard.board;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Function;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.day.Act;
import org.shedboard.day.Books;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.words.Words;

/** What keys, and what is typed in answer to them, do on the page of a machine. */
final class MachineKeys {
    private final Board board;
    private final Screen.MachinePage page;

    MachineKeys(Board board, Screen.MachinePage page) {
        this.board = board;
        this.page = page;
    }

    Turn perform(Deed deed) {
        Books books = board.expectDay().books();
        Machine machine = books.expectMachine(page.machineId());
        Owner owner = books.expectOwner(machine.ownerId());
        RegisterAsks asks = new RegisterAsks(board.expectDay());
        return Turn.to(board.asking(
                switch (deed) {
                    case CORRECT_MACHINE -> asks.whatIsWrong(machine);
                    case CORRECT_OWNER -> asks.whatIsWrong(owner);
                    case MERGE -> asks.whichOther(machine);
                    case FORGET_OWNER -> asks.forget(owner, page);
                    default -> throw new IllegalStateException(deed + " is no key of this screen");
                }));
    }

    /** What was typed for a machine or an owner. */
    static Turn typed(Board board, Purpose.OfRegister purpose, String text) {
        if (purpose instanceof Purpose.OwnersField field) {
            return owner(board, field, text);
        }
        if (purpose instanceof Purpose.OtherRecord other) {
            return other(board, other, text);
        }
        Purpose.MachinesField field = (Purpose.MachinesField) purpose;
        Machine machine = board.expectDay().books().expectMachine(field.machineId());
        return switch (field.what()) {
            case LABEL -> carry(board, correction(machine.withLabel(text)));
            case NUMBER -> carry(board, correction(machine.withNumber(text)));
            case YEAR -> whole(board, text, year -> correction(machine.withModelYear(year)));
            case MASS -> whole(board, text, mass -> correction(machine.withMassKg(mass.orElse(0))));
        };
    }

    private static Turn owner(Board board, Purpose.OwnersField field, String text) {
        Owner owner = board.expectDay().books().expectOwner(field.ownerId());
        return carry(
                board,
                field.isPhone()
                        ? new Act.CorrectOwner(owner.id(), owner.name(), text)
                        : new Act.CorrectOwner(owner.id(), text, owner.phone()));
    }

    private static Turn other(Board board, Purpose.OtherRecord other, String text) {
        Machine machine = board.expectDay().books().expectMachine(other.machineId());
        List<Machine> found = Found.machines(board.finder(), board.expectDay(), text).stream()
                .filter(each -> !each.equals(machine))
                .toList();
        return found.isEmpty()
                ? Turn.to(board.noting(Note.refused(Words.say("machine_unknown", text))))
                : Turn.to(board.withoutNote().asking(new RegisterAsks(board.expectDay()).whichOfThese(machine, found)));
    }

    /** The act by which a machine becomes this one. */
    static Act correction(Machine machine) {
        return new Act.CorrectMachine(
                machine.id(), machine.label(), machine.modelYear(), machine.number(), machine.massKg());
    }

    /** Nothing typed is no number; of a mass that means none that can be. */
    private static Turn whole(Board board, String text, Function<OptionalInt, Act> act) {
        String digits = text.toLowerCase(Locale.ROOT).replace("kg", "").strip();
        if (!digits.matches("\\d{0,7}")) {
            return Turn.to(board.noting(Note.refused(Words.say("form.number_unread", text))));
        }
        return carry(
                board, act.apply(digits.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(digits))));
    }

    private static Turn carry(Board board, Act act) {
        return Turn.to(board.without().withoutNote().saving(1), new Effect.CarryOut(act));
    }
}
