package org.shedboard.app.command;

import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.hours.Activity;
import org.shedboard.hours.BreakRule;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Other work that is planned, what is agreed to be charged, and the rules hours are counted by. */
final class HoursCommands {
    private HoursCommands() {}

    @Command(name = "errand")
    static final class PlanErrand implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "NAME", descriptionKey = "option.who")
        private String name;

        @Parameters(index = "1", paramLabel = "KIND", descriptionKey = "option.kind")
        private Activity.OtherWork.Kind kind;

        @Option(names = "--from", paramLabel = "TIME", required = true)
        private String from;

        @Option(names = "--minutes", paramLabel = "N", required = true)
        private int minutes;

        @Option(names = "--note", paramLabel = "TEXT")
        private Optional<String> note;

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            return Reply.Carry.of(
                    new Act.PlanErrand(asked.person(name).id(), kind, asked.time(from), minutes, note.orElse("")));
        }
    }

    @Command(name = "run-errand")
    static final class RunErrand implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "ERRAND", descriptionKey = "option.errand")
        private String errand;

        @Override
        public Reply reply(Seen seen) {
            return Reply.Carry.of(new Act.RunErrand(errand));
        }
    }

    @Command(name = "drop-errand")
    static final class DropErrand implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "ERRAND", descriptionKey = "option.errand")
        private String errand;

        @Override
        public Reply reply(Seen seen) {
            return Reply.Carry.of(new Act.DropErrand(errand));
        }
    }

    @Command(name = "agree")
    static final class Agree implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
        private String tag;

        @Parameters(index = "1", paramLabel = "LINE", descriptionKey = "option.line")
        private String line;

        @Option(names = "--minutes", paramLabel = "N", required = true)
        private int minutes;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.signs")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            Visit visit = new Asked(seen).visit(tag);
            Act agree = new Act.AgreeHours(visit.id(), lineOf(visit), minutes);
            return new Reply.Carry(agree, new Asked(seen).idOf(by));
        }

        /** The line of this id, or this place in the order of the visit's lines. */
        private String lineOf(Visit visit) {
            boolean isNumber = line.matches("[1-9][0-9]?");
            return isNumber && Integer.parseInt(line) <= visit.lines().size()
                    ? visit.lines().get(Integer.parseInt(line) - 1).id()
                    : line;
        }
    }

    /** Says the rules, or changes those that are named. */
    @Command(name = "rules")
    static final class Rules implements Wish.OnTheDay {
        @Option(names = "--by", paramLabel = "NAME")
        private Optional<String> by;

        @Option(names = "--attendance", paramLabel = "UNIT")
        private Optional<Rounding.Unit> attendance;

        @Option(names = "--attendance-goes", paramLabel = "WAY", descriptionKey = "option.way")
        private Optional<Rounding.Direction> attendanceGoes;

        @Option(names = "--charge", paramLabel = "UNIT")
        private Optional<Rounding.Unit> charge;

        @Option(names = "--charge-goes", paramLabel = "WAY", descriptionKey = "option.way")
        private Optional<Rounding.Direction> chargeGoes;

        @Option(names = "--basis", paramLabel = "BASIS")
        private Optional<HoursRules.Basis> basis;

        @Option(names = "--rest", paramLabel = "N")
        private Optional<Integer> rest;

        @Option(names = "--meal", paramLabel = "N")
        private Optional<Integer> meal;

        @Option(names = "--planned-breaks", paramLabel = "true|false")
        private Optional<Boolean> planned;

        @Option(names = "--lent", paramLabel = "N")
        private Optional<Integer> lent;

        @Override
        public Reply reply(Seen seen) {
            HoursRules now = seen.day().books().hoursRules();
            HoursRules next = changed(now);
            if (next.equals(now)) {
                return new Reply.Tell(RulesAnswer.of(now));
            }
            String signer = new Asked(seen)
                    .person(by.orElseThrow(() -> new WrongUse("command.rules_by")))
                    .id();
            return new Reply.Carry(new Act.SetHoursRules(signer, next), Optional.of(signer));
        }

        private HoursRules changed(HoursRules now) {
            try {
                return new HoursRules(
                        rounding(now.attendance(), attendance, attendanceGoes),
                        rounding(now.charge(), charge, chargeGoes),
                        basis.orElse(now.basis()),
                        new BreakRule(
                                rest.orElse(now.breaks().restMinutes()),
                                meal.orElse(now.breaks().mealMinutes()),
                                planned.orElse(now.breaks().isPlannedTaken())),
                        lent.orElse(now.lentMinutes()));
            } catch (IllegalArgumentException impossible) {
                throw new WrongUse("command.rules_impossible", impossible.getMessage());
            }
        }

        private static Rounding rounding(
                Rounding now, Optional<Rounding.Unit> unit, Optional<Rounding.Direction> direction) {
            return new Rounding(unit.orElse(now.unit()), direction.orElse(now.direction()));
        }
    }
}
