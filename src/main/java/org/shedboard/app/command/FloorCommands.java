package org.shedboard.app.command;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.NextTask;
import org.shedboard.hours.Activity;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What people in the shed do. */
final class FloorCommands {
    private FloorCommands() {}

    /** A command of one person. */
    private abstract static class OfPerson implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "NAME", descriptionKey = "option.who")
        private String name;

        @Override
        public final Reply reply(Seen seen) {
            Person person = new Asked(seen).person(name);
            return new Reply.Carry(act(seen, person), Optional.of(person.id()));
        }

        abstract Act act(Seen seen, Person person);
    }

    @Command(name = "start")
    static final class Start extends OfPerson {
        @Parameters(index = "1", paramLabel = "TAG", arity = "0..1", descriptionKey = "option.tag")
        private Optional<String> tag;

        @Option(names = "--task", paramLabel = "ID")
        private Optional<String> task;

        @Option(names = "--place", paramLabel = "PLACE")
        private Optional<String> place;

        @Override
        Act act(Seen seen, Person person) {
            Optional<String> placeId =
                    place.map(asked -> new Asked(seen).place(asked)).map(Place::id);
            if (tag.isPresent()) {
                Visit visit = new Asked(seen).visit(tag.get());
                return new Act.Start(person.id(), visit.id(), taskOf(seen, visit), placeId);
            }
            if (task.isPresent()) {
                throw new WrongUse("command.task_of_what");
            }
            NextTask next = next(seen, person);
            return new Act.Start(person.id(), next.visit().id(), next.task().id(), placeId.or(next::placeId));
        }

        private static NextTask next(Seen seen, Person person) {
            NextTask next =
                    NextTask.of(seen.outlook(), person).orElseThrow(() -> new CannotDo("next.nothing", person.name()));
            if (next.isRunning()) {
                throw new CannotDo("task_running", next.task().name(), person.name());
            }
            return next;
        }

        private String taskOf(Seen seen, Visit visit) {
            return task.orElseGet(() -> seen.outlook()
                    .nextTaskOf(visit)
                    .map(Task::id)
                    .orElseThrow(() -> new CannotDo("command.nothing_to_start", Names.of(seen.day(), visit))));
        }
    }

    @Command(name = "finish")
    static final class Finish extends OfPerson {
        @Option(names = "--rest", paramLabel = "MARK")
        private Optional<Mark> rest;

        @Option(names = "--why", paramLabel = "TEXT")
        private Optional<String> why;

        @Override
        Act act(Seen seen, Person person) {
            Day.Running on = new Asked(seen).running(person);
            return new Act.Finish(person.id(), on.visit().id(), on.task().id(), rest, why.orElse(""));
        }
    }

    @Command(name = "pause")
    static final class Pause extends OfPerson {
        @Override
        Act act(Seen seen, Person person) {
            Day.Running on = new Asked(seen).running(person);
            return new Act.Pause(on.visit().id(), on.task().id());
        }
    }

    @Command(name = "tick")
    static final class Tick extends OfPerson {
        @Parameters(index = "1", paramLabel = "POINT", descriptionKey = "option.point")
        private String point;

        @Parameters(index = "2", paramLabel = "MARK", descriptionKey = "option.mark")
        private Mark mark;

        @Option(names = "--measured", paramLabel = "VALUE")
        private Optional<Double> measured;

        @Option(names = "--note", paramLabel = "TEXT")
        private Optional<String> note;

        @Override
        Act act(Seen seen, Person person) {
            Visit visit = new Asked(seen).running(person).visit();
            if (measured.filter(value -> !Double.isFinite(value)).isPresent()) {
                throw new WrongUse("form.number_unread", measured.get());
            }
            OptionalDouble value = measured.map(OptionalDouble::of).orElse(OptionalDouble.empty());
            return new Act.Tick(person.id(), visit.id(), point, mark, value, note.orElse(""));
        }
    }

    @Command(name = "other")
    static final class Other extends OfPerson {
        @Parameters(index = "1", paramLabel = "KIND", descriptionKey = "option.kind")
        private Activity.OtherWork.Kind kind;

        @Override
        Act act(Seen seen, Person person) {
            return new Act.DoOther(person.id(), kind);
        }
    }

    @Command(name = "break")
    static final class TakeBreak extends OfPerson {
        @Parameters(index = "1", paramLabel = "KIND", descriptionKey = "option.break_kind")
        private Activity.Break.Kind kind;

        @Override
        Act act(Seen seen, Person person) {
            return new Act.TakeBreak(person.id(), kind);
        }
    }

    @Command(name = "lend")
    static final class Lend extends OfPerson {
        @Parameters(index = "1", paramLabel = "TAG", descriptionKey = "option.tag")
        private String tag;

        @Override
        Act act(Seen seen, Person person) {
            return new Act.Lend(person.id(), new Asked(seen).visit(tag).id());
        }
    }

    @Command(name = "back")
    static final class Back extends OfPerson {
        @Override
        Act act(Seen seen, Person person) {
            return new Act.BringBack(person.id());
        }
    }

    @Command(name = "stop")
    static final class Stop extends OfPerson {
        @Option(names = "--when", paramLabel = "TIME", descriptionKey = "option.when_ended")
        private Optional<String> ended;

        @Override
        Act act(Seen seen, Person person) {
            return new Act.Stop(person.id(), false, ended.map(typed -> new Asked(seen).ended(person, typed)));
        }
    }

    @Command(name = "leave")
    static final class Leave extends OfPerson {
        @Option(names = "--when", paramLabel = "TIME", descriptionKey = "option.when_ended")
        private Optional<String> ended;

        @Override
        Act act(Seen seen, Person person) {
            return new Act.Stop(person.id(), true, ended.map(typed -> new Asked(seen).ended(person, typed)));
        }
    }

    @Command(name = "stay")
    static final class StayUntil extends OfPerson {
        @Option(names = "--until", paramLabel = "TIME", required = true)
        private String until;

        @Override
        Act act(Seen seen, Person person) {
            return new Act.BeHere(person.id(), new Asked(seen).time(until));
        }
    }
}
