package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Mornings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What to fetch from the shelf for a day's work. */
@Command(name = "pick")
final class PickCommand implements Wish.OnTheDay {
    @Option(names = "--date", paramLabel = "DATE")
    private Optional<LocalDate> date;

    @Override
    public Reply reply(Seen seen) {
        LocalDate tomorrow = Mornings.dateAfter(seen.day().shop(), seen.day().date(), 1);
        return new Reply.Tell(PickAnswer.of(seen, date.orElse(tomorrow)));
    }
}
