package org.shedboard.app.command;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the foreman insists on for one task. */
final class InsistCommands {
    private InsistCommands() {}

    @Command(name = "insist")
    static final class Insist implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
        private String tag;

        @Parameters(index = "1", paramLabel = "TASK", descriptionKey = "option.task")
        private String task;

        @Option(names = "--place", paramLabel = "PLACE")
        private Optional<String> place;

        @Option(names = "--start", paramLabel = "TIME")
        private Optional<String> start;

        @Option(names = "--person", paramLabel = "NAME")
        private Optional<String> person;

        @Override
        public Reply reply(Seen seen) {
            if (place.isEmpty() && start.isEmpty() && person.isEmpty()) {
                throw new WrongUse("command.insist_on_what");
            }
            Asked asked = new Asked(seen);
            Optional<String> placeId = place.map(asked::place).map(Place::id);
            Optional<Instant> at = start.map(asked::time);
            Optional<String> personId = person.map(asked::person).map(Person::id);
            Visit visit = asked.visit(tag);
            TaskPin pin = new TaskPin(placeId, at, personId);
            return Reply.Carry.of(
                    new Act.PinTask(visit.id(), asked.task(visit, task).id(), pin));
        }
    }

    @Command(name = "lift")
    static final class Lift implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
        private String tag;

        @Parameters(index = "1", paramLabel = "TASK", descriptionKey = "option.task")
        private String task;

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            Visit visit = asked.visit(tag);
            return Reply.Carry.of(
                    new Act.LiftPin(visit.id(), asked.task(visit, task).id()));
        }
    }
}
