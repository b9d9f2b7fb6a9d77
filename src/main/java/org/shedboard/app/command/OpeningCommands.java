package org.shedboard.app.command;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.board.Times;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.shop.Person;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opening and closing the day, and the hoists' checks in between. */
final class OpeningCommands {
    private OpeningCommands() {}

    /** A name, and what follows it after an equals sign. */
    private record Pair(String name, Optional<String> value) {
        static Pair of(String text) {
            int at = text.indexOf('=');
            return at < 0
                    ? new Pair(text, Optional.empty())
                    : new Pair(
                            text.substring(0, at).strip(),
                            Optional.of(text.substring(at + 1).strip()));
        }
    }

    @Command(name = "open")
    static final class Open implements Wish.OnTheDay {
        @Option(names = "--by", paramLabel = "NAME", required = true)
        private String by;

        @Option(names = "--here", paramLabel = "NAME[=FROM-UNTIL]")
        private List<String> here = List.of();

        @Option(names = "--away", paramLabel = "NAME")
        private List<String> away = List.of();

        @Option(names = "--checked", paramLabel = "HOIST[=NAME]")
        private List<String> checked = List.of();

        @Option(names = "--locked-out", paramLabel = "HOIST=WHY")
        private List<String> lockedOut = List.of();

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            Person opener = asked.person(by);
            Act.OpenDay act = new Act.OpenDay(opener.id(), people(seen.day(), asked), checks(asked, opener));
            return new Reply.Carry(act, Optional.of(opener.id()));
        }

        /** Whoever is named, else everybody; without those who are away. */
        private List<Act.OpenDay.Here> people(Day day, Asked asked) {
            Set<String> absent =
                    away.stream().map(asked::person).map(Person::id).collect(Collectors.toSet());
            List<Act.OpenDay.Here> all = here.isEmpty()
                    ? day.shop().people().stream()
                            .map(person -> usual(day, person))
                            .toList()
                    : here.stream()
                            .map(text -> named(day, asked, Pair.of(text)))
                            .toList();
            return all.stream()
                    .filter(each -> !absent.contains(each.personId()))
                    .toList();
        }

        private static Act.OpenDay.Here usual(Day day, Person person) {
            return new Act.OpenDay.Here(person.id(), at(day, person.startsAt()), at(day, person.knockOff()));
        }

        private static Act.OpenDay.Here named(Day day, Asked asked, Pair pair) {
            Person person = asked.person(pair.name());
            if (pair.value().isEmpty()) {
                return usual(day, person);
            }
            String hours = pair.value().get();
            String[] ends = hours.split("-", -1);
            if (ends.length != 2) {
                throw new WrongUse("command.hours_unread", hours);
            }
            return new Act.OpenDay.Here(person.id(), at(day, time(ends[0])), at(day, time(ends[1])));
        }

        private static LocalTime time(String typed) {
            return Times.time(typed).orElseThrow(() -> new WrongUse("form.time_unread", typed));
        }

        private static Instant at(Day day, LocalTime time) {
            return day.date().atTime(time).atZone(day.zone()).toInstant();
        }

        private List<Act.OpenDay.Checked> checks(Asked asked, Person opener) {
            List<Act.OpenDay.Checked> checks = new ArrayList<>();
            for (String text : checked) {
                Pair pair = Pair.of(text);
                Person looked = pair.value().map(asked::person).orElse(opener);
                checks.add(new Act.OpenDay.Checked(asked.hoist(pair.name()).id(), looked.id(), Optional.empty()));
            }
            for (String text : lockedOut) {
                checks.add(lockedOut(asked, opener, Pair.of(text)));
            }
            Set<String> hoists =
                    checks.stream().map(Act.OpenDay.Checked::placeId).collect(Collectors.toSet());
            if (hoists.size() < checks.size()) {
                throw new WrongUse("command.hoist_twice");
            }
            return checks;
        }

        private static Act.OpenDay.Checked lockedOut(Asked asked, Person opener, Pair pair) {
            String why = pair.value()
                    .filter(text -> !text.isEmpty())
                    .orElseThrow(() -> new WrongUse("command.locked_out_why", pair.name()));
            return new Act.OpenDay.Checked(asked.hoist(pair.name()).id(), opener.id(), Optional.of(why));
        }
    }

    @Command(name = "check")
    static final class Check implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "HOIST", descriptionKey = "option.hoist")
        private String hoist;

        @Option(names = "--by", paramLabel = "NAME", required = true)
        private String by;

        @Option(names = "--locked-out", paramLabel = "WHY")
        private Optional<String> lockedOut;

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            Person looked = asked.person(by);
            Act act = new Act.CheckHoist(
                    new Act.OpenDay.Checked(asked.hoist(hoist).id(), looked.id(), lockedOut));
            return new Reply.Carry(act, Optional.of(looked.id()));
        }
    }

    @Command(name = "close")
    static final class Close implements Wish.OnTheDay {
        @Option(names = "--by", paramLabel = "NAME", required = true)
        private String by;

        @Option(names = "--date", paramLabel = "DATE")
        private Optional<LocalDate> date;

        @Override
        public Optional<LocalDate> date() {
            return date;
        }

        @Override
        public Reply reply(Seen seen) {
            return Reply.Carry.of(new Act.CloseDay(new Asked(seen).person(by).id()));
        }
    }
}
