package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Act;
import org.shedboard.day.Riding;
import org.shedboard.estimate.Point;
import org.shedboard.report.FindingWords;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What becomes of a machine while it is here or expected. */
final class MachineCommands {
    private MachineCommands() {}

    /** A command about one machine. */
    private abstract static class OfVisit implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
        private String tag;

        @Override
        public final Reply reply(Seen seen) {
            return Reply.Carry.of(act(seen, new Asked(seen).visit(tag)));
        }

        abstract Act act(Seen seen, Visit visit);
    }

    @Command(name = "hold")
    static final class HoldVisit extends OfVisit {
        @Option(names = "--for", paramLabel = "REASON", required = true)
        private Hold.Reason reason;

        @Option(names = "--note", paramLabel = "TEXT")
        private Optional<String> note;

        @Option(names = "--until", paramLabel = "TIME")
        private Optional<String> until;

        @Override
        Act act(Seen seen, Visit visit) {
            return new Act.HoldVisit(visit.id(), reason, note.orElse(""), until.map(new Asked(seen)::time));
        }
    }

    @Command(name = "release")
    static final class Release extends OfVisit {
        @Override
        Act act(Seen seen, Visit visit) {
            return new Act.Release(visit.id());
        }
    }

    @Command(name = "hand-over")
    static final class HandOver extends OfVisit {
        @Parameters(index = "1", paramLabel = "NAME", descriptionKey = "option.who")
        private String name;

        @Override
        Act act(Seen seen, Visit visit) {
            Person to = new Asked(seen).person(name);
            return new Act.HandOver(visit.id(), new Asked(seen).running(visit).id(), to.id());
        }
    }

    @Command(name = "add-work")
    static final class AddWork extends OfVisit {
        @Parameters(index = "1..*", arity = "1..*", paramLabel = "WORK", descriptionKey = "option.work")
        private List<String> works;

        @Override
        Act act(Seen seen, Visit visit) {
            String classId = seen.day().machineOf(visit).classId();
            return new Act.AddWork(visit.id(), MachineOptions.wanted(new Asked(seen), classId, works));
        }
    }

    @Command(name = "arrive")
    static final class Arrive extends OfVisit {
        @Option(names = "--mud", paramLabel = "GRADE")
        private Optional<Mud> mud;

        @Option(names = "--tag", paramLabel = "NUMBER", descriptionKey = "option.newTag")
        private Optional<Integer> number;

        @Override
        Act act(Seen seen, Visit visit) {
            return new Act.Arrive(visit.id(), mud, number.map(OptionalInt::of).orElse(OptionalInt.empty()));
        }
    }

    @Command(name = "collect")
    static final class Collect extends OfVisit {
        @Option(names = "--handed-to", paramLabel = "WHO")
        private Optional<String> to;

        @Option(names = "--by", paramLabel = "NAME")
        private Optional<String> by;

        @Option(names = "--told", paramLabel = "TEXT")
        private Optional<String> told;

        @Override
        Act act(Seen seen, Visit visit) {
            return new Act.Collect(visit.id(), to.map(who -> handed(seen, visit, who)));
        }

        private Act.Collect.Handed handed(Seen seen, Visit visit, String who) {
            List<Point> stopped = Riding.stoppedBy(seen.day(), visit);
            String usual = stopped.isEmpty() ? "" : Words.say("ask.told_not_to_ride", FindingWords.names(stopped));
            return new Act.Collect.Handed(new Asked(seen).personIdOr(by), who, told.orElse(usual));
        }
    }

    @Command(name = "call-off")
    static final class CallOff extends OfVisit {
        @Option(names = "--no-show")
        private boolean noShow;

        @Override
        Act act(Seen seen, Visit visit) {
            return new Act.CallOff(visit.id(), noShow);
        }
    }
}
