package org.shedboard.app.command;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Day;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "tally")
final class TallyCommand implements Wish.OnTheDay {
    @Option(names = "--date", paramLabel = "DATE")
    private Optional<LocalDate> date;

    @Override
    public Optional<LocalDate> date() {
        return date;
    }

    /** A day that is over is seen from its end: nobody's hours go on. */
    @Override
    public Reply reply(Seen seen) {
        Day day = seen.day();
        Instant end = day.date().plusDays(1).atStartOfDay(day.zone()).toInstant();
        Instant at = seen.now().isAfter(end) ? end : seen.now();
        return new Reply.Tell(TallyAnswer.of(seen.from(at)));
    }
}
