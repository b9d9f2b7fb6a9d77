package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.register.IdNumber;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.words.Words;

/** The questions asked before the register is changed. */
final class RegisterAsks {
    private final Day day;

    RegisterAsks(Day day) {
        this.day = day;
    }

    Overlay whatIsWrong(Machine machine) {
        ChoiceList choices = new ChoiceList();
        choices.ask(
                Words.say("ask.machine_label", machine.label()),
                field(machine, Purpose.MachinesField.What.LABEL, machine.label()));
        choices.ask(Words.say("ask.machine_year", yearOf(machine)), whichYear(machine));
        choices.ask(
                Words.say("ask.machine_number", machine.number()),
                field(machine, Purpose.MachinesField.What.NUMBER, machine.number()));
        choices.ask(
                Words.say("ask.machine_mass", machine.massKg()),
                field(machine, Purpose.MachinesField.What.MASS, String.valueOf(machine.massKg())));
        return choices.titled(Words.say("ask.what_is_wrong", nameOf(machine)));
    }

    private static String yearOf(Machine machine) {
        return machine.modelYear().isPresent()
                ? String.valueOf(machine.modelYear().getAsInt())
                : Words.say("machine.not_known");
    }

    /** The years that its number allows, each by a digit; another one, and that it is not known. */
    private Overlay whichYear(Machine machine) {
        ChoiceList choices = new ChoiceList();
        for (int year : IdNumber.of(machine.number()).years(day.date().getYear())) {
            choices.carry(String.valueOf(year), MachineKeys.correction(machine.withModelYear(OptionalInt.of(year))));
        }
        choices.ask(Words.say("ask.another_year"), field(machine, Purpose.MachinesField.What.YEAR, ""));
        choices.carry(
                Words.say("machine.not_known"), MachineKeys.correction(machine.withModelYear(OptionalInt.empty())));
        return choices.titled(Words.say("ask.which_year", nameOf(machine)));
    }

    private Overlay field(Machine machine, Purpose.MachinesField.What what, String now) {
        return new Overlay.TypeIn(
                Words.say("ask.machine." + what, nameOf(machine)),
                Typing.of(now),
                new Purpose.MachinesField(machine.id(), what));
    }

    Overlay whatIsWrong(Owner owner) {
        return nameAndPhone(owner).titled(Words.say("ask.what_is_wrong", owner.name()));
    }

    /** Of an owner who has no machine, and so no page. */
    Overlay whatOf(Owner owner) {
        ChoiceList choices = nameAndPhone(owner);
        Optional<String> off = owner.isForgotten() ? Optional.of(Words.say("off.forgotten")) : Optional.empty();
        choices.add(Words.say("ask.forget_owner"), off, new Overlay.Reply.Ask(forget(owner, Screen.Register.START)));
        return choices.titled(Words.say("ask.what_of_owner", owner.name()));
    }

    private static ChoiceList nameAndPhone(Owner owner) {
        return new ChoiceList()
                .ask(Words.say("ask.owner_name", owner.name()), field(owner, false, owner.name()))
                .ask(Words.say("ask.owner_phone", owner.phone()), field(owner, true, owner.phone()));
    }

    private static Overlay field(Owner owner, boolean isPhone, String now) {
        return new Overlay.TypeIn(
                Words.say(isPhone ? "ask.new_phone" : "ask.new_name", owner.name()),
                Typing.of(now),
                new Purpose.OwnersField(owner.id(), isPhone));
    }

    Overlay whichOther(Machine machine) {
        return new Overlay.TypeIn(
                Words.say("ask.which_other", nameOf(machine)), Typing.EMPTY, new Purpose.OtherRecord(machine.id()));
    }

    Overlay whichOfThese(Machine machine, List<Machine> found) {
        ChoiceList choices = new ChoiceList();
        found.forEach(other -> choices.ask(recordOf(other), whichStands(machine, other)));
        return choices.titled(Words.say("ask.which_of_these"));
    }

    private Overlay whichStands(Machine machine, Machine other) {
        return new ChoiceList()
                .carry(recordOf(machine), new Act.MergeMachines(machine.id(), other.id()))
                .carry(recordOf(other), new Act.MergeMachines(other.id(), machine.id()))
                .titled(Words.say("ask.which_stands"));
    }

    /** What tells two records of one machine apart. */
    private String recordOf(Machine machine) {
        return Words.say("ask.record", nameOf(machine), yearOf(machine), machine.number());
    }

    /** The answer that Enter gives leaves the owner where they are. */
    Overlay forget(Owner owner, Screen from) {
        return new ChoiceList()
                .add(Words.say("ask.forget_no"), Optional.empty(), new Overlay.Reply.Show(from))
                .carry(Words.say("ask.forget_yes"), new Act.ForgetOwner(owner.id()))
                .titled(Words.say("ask.forget", owner.name()));
    }

    private String nameOf(Machine machine) {
        return Words.say(
                "next.other_machine", day.books().expectOwner(machine.ownerId()).name(), machine.label());
    }
}
