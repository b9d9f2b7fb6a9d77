package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Act;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Machines and owners: finding them, a machine's page, and putting the register right. */
final class RegisterCommands {
    private RegisterCommands() {}

    @Command(name = "find")
    static final class Find implements Wish.OnTheDay {
        @Parameters(arity = "1..*", paramLabel = "TEXT", descriptionKey = "option.find")
        private List<String> texts;

        @Override
        public Reply reply(Seen seen) {
            return new Reply.Tell(FoundAnswer.of(seen.day(), String.join(" ", texts)));
        }
    }

    @Command(name = "machine")
    static final class Page implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TEXT", descriptionKey = "option.in.machine")
        private String text;

        @Override
        public Reply reply(Seen seen) {
            Machine machine = new Asked(seen).machine(text);
            return new Reply.Tell(MachineAnswer.of(seen.day(), seen.now(), machine, seen.history(machine.id())));
        }
    }

    @Command(name = "correct-machine")
    static final class CorrectMachine implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TEXT", descriptionKey = "option.in.machine")
        private String text;

        @Option(names = "--label", paramLabel = "TEXT", descriptionKey = "option.in.label")
        private Optional<String> label;

        @Option(names = "--year", paramLabel = "YEAR", descriptionKey = "option.in.year")
        private Optional<Integer> year;

        @Option(names = "--year-unknown")
        private boolean yearUnknown;

        @Option(names = "--number", paramLabel = "TEXT", descriptionKey = "option.in.number")
        private Optional<String> number;

        @Option(names = "--mass", paramLabel = "KG")
        private Optional<Integer> mass;

        @Override
        public Reply reply(Seen seen) {
            Machine machine = new Asked(seen).machine(text);
            return Reply.Carry.of(new Act.CorrectMachine(
                    machine.id(),
                    label.orElse(machine.label()),
                    yearUnknown
                            ? OptionalInt.empty()
                            : year.map(OptionalInt::of).orElse(machine.modelYear()),
                    number.orElse(machine.number()),
                    mass.orElse(machine.massKg())));
        }
    }

    @Command(name = "correct-owner")
    static final class CorrectOwner implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "OWNER", descriptionKey = "option.owner")
        private String text;

        @Option(names = "--name", paramLabel = "NAME")
        private Optional<String> name;

        @Option(names = "--phone", paramLabel = "NUMBER", descriptionKey = "option.in.phone")
        private Optional<String> phone;

        @Override
        public Reply reply(Seen seen) {
            Owner owner = new Asked(seen).owner(text);
            return Reply.Carry.of(
                    new Act.CorrectOwner(owner.id(), name.orElse(owner.name()), phone.orElse(owner.phone())));
        }
    }

    @Command(name = "merge")
    static final class Merge implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "KEEP", descriptionKey = "option.keep")
        private String keep;

        @Parameters(index = "1", paramLabel = "OTHER", descriptionKey = "option.other")
        private String other;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.signs")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            Act merge = new Act.MergeMachines(
                    asked.machine(keep).id(), asked.machine(other).id());
            return new Reply.Carry(merge, asked.idOf(by));
        }
    }

    /** Without a word to say that it is meant, it is only told what would be erased. */
    @Command(name = "forget")
    static final class Forget implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "OWNER", descriptionKey = "option.owner")
        private String text;

        @Option(names = "--yes")
        private boolean yes;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.signs")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            Owner owner = new Asked(seen).owner(text);
            if (!yes) {
                throw new CannotDo("command.forget_unsure", owner.name());
            }
            return new Reply.Carry(new Act.ForgetOwner(owner.id()), new Asked(seen).idOf(by));
        }
    }
}
