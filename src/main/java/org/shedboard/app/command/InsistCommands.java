package org.shedboard.app.command;

import java.time.Instant;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.TaskPin;
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

        @Option(names = "--at", paramLabel = "TIME")
        private Optional<String> at;

        @Option(names = "--person", paramLabel = "NAME")
        private Optional<String> person;

        @Override
        public Reply reply(Seen seen) {
            if (place.isEmpty() && at.isEmpty() && person.isEmpty()) {
                throw new WrongUse("command.insist_on_what");
            }
            Asked asked = new Asked(seen);
            Optional<String> placeId = place.map(asked::place).map(Place::id);
            Optional<Instant> start = at.map(asked::time);
            Optional<String> personId = person.map(asked::person).map(Person::id);
            return Reply.Carry.of(new Act.PinTask(asked.visit(tag).id(), task, new TaskPin(placeId, start, personId)));
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
            return Reply.Carry.of(new Act.LiftPin(new Asked(seen).visit(tag).id(), task));
        }
    }
}
