package org.shedboard.app.command;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import org.shedboard.words.When;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Which days a command is about, in one of several ways. */
final class WhichDays {
    @Option(names = "--date", paramLabel = "DATE")
    private Optional<LocalDate> date = Optional.empty();

    @Option(names = "--week", paramLabel = "DATE")
    private Optional<LocalDate> week = Optional.empty();

    @Option(names = "--month", paramLabel = "YYYY-MM")
    private Optional<String> month = Optional.empty();

    @ArgGroup(exclusive = false)
    private Between between;

    /** From one date to another, both included. */
    static final class Between {
        @Option(names = "--from", paramLabel = "DATE", required = true)
        private LocalDate from;

        @Option(names = "--to", paramLabel = "DATE", required = true)
        private LocalDate to;
    }

    /**
     * The first day, and the day after the last.
     *
     * @param said null where nothing was, which means today
     */
    static List<LocalDate> of(WhichDays said, LocalDate today) {
        return said == null ? List.of(today, today.plusDays(1)) : said.days(today);
    }

    private List<LocalDate> days(LocalDate today) {
        if (between != null) {
            if (between.to.isBefore(between.from)) {
                throw new WrongUse("command.tally.backwards", between.from, between.to);
            }
            return List.of(between.from, between.to.plusDays(1));
        }
        if (week.isPresent()) {
            LocalDate first = week.get().with(TemporalAdjusters.previousOrSame(When.firstOfWeek()));
            return List.of(first, first.plusWeeks(1));
        }
        if (month.isPresent()) {
            LocalDate first = TallyCommand.month(month.get()).atDay(1);
            return List.of(first, first.plusMonths(1));
        }
        LocalDate day = date.orElse(today);
        return List.of(day, day.plusDays(1));
    }
}
