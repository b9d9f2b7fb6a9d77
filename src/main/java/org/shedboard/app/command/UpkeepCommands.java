package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.board.RingDate;
import org.shedboard.day.Act;
import org.shedboard.day.RingList;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Meters, and services that come due. */
final class UpkeepCommands {
    private UpkeepCommands() {}

    /** A meter read between two visits. */
    @Command(name = "reading")
    static final class ReadMeter implements Wish.OnTheDay {
        private static final double MOST = 10_000_000;

        @Parameters(index = "0", paramLabel = "MACHINE", descriptionKey = "option.machine")
        private String machine;

        @Parameters(index = "1", paramLabel = "VALUE", descriptionKey = "option.reading")
        private double value;

        @Option(names = "--km")
        private boolean kilometres;

        @Mixin
        private MeterOptions told;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            if (!(value >= 0 && value <= MOST)) {
                throw new WrongUse("command.reading_range", value);
            }
            Asked asked = new Asked(seen);
            String who = asked.personIdOr(by);
            Reading.Unit unit = kilometres ? Reading.Unit.KILOMETRES : Reading.Unit.HOURS;
            return new Reply.Carry(
                    new Act.ReadMeter(asked.machine(machine).id(), unit, value, told.told(), who), Optional.of(who));
        }
    }

    /** Whom to ring. */
    @Command(name = "ring")
    static final class Ring implements Wish.OnTheDay {
        private static final int MOST_WEEKS = 26;

        @Option(names = "--weeks", paramLabel = "N", defaultValue = "1")
        private int weeks;

        @Override
        public Reply reply(Seen seen) {
            if (weeks < 1 || weeks > MOST_WEEKS) {
                throw new WrongUse("command.ring_weeks", weeks, MOST_WEEKS);
            }
            return new Reply.Tell(RingAnswer.of(seen.day(), RingList.of(seen.day(), seen.now(), weeks), weeks));
        }
    }

    /** An owner was rung. */
    @Command(name = "rung")
    static final class NoteCall implements Wish.OnTheDay {
        @Parameters(index = "0", paramLabel = "MACHINE", descriptionKey = "option.machine")
        private String machine;

        @Parameters(index = "1", paramLabel = "SAID", descriptionKey = "option.said")
        private Rung.Said said;

        @Option(names = "--on", paramLabel = "DATE")
        private Optional<String> on;

        @Option(names = "--note", paramLabel = "TEXT")
        private Optional<String> note;

        @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
        private Optional<String> by;

        @Override
        public Reply reply(Seen seen) {
            Asked asked = new Asked(seen);
            String who = asked.personIdOr(by);
            Optional<LocalDate> again = on.map(text -> date(text, seen.day().date()));
            return new Reply.Carry(
                    new Act.NoteRung(asked.machine(machine).id(), said, again, note.orElse(""), who), Optional.of(who));
        }

        private static LocalDate date(String typed, LocalDate today) {
            return RingDate.parse(typed, today).orElseThrow(() -> new WrongUse("form.date_unread", typed));
        }
    }
}
