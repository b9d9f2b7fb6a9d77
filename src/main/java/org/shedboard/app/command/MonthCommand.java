package org.shedboard.app.command;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A month, or several up to it, looked back upon. */
@Command(name = "month")
final class MonthCommand implements Wish.OnTheDay {
    private static final int MOST_MONTHS = 24;

    @Parameters(index = "0", arity = "0..1", paramLabel = "YYYY-MM", descriptionKey = "option.month")
    private Optional<String> month;

    @Option(names = "--months", paramLabel = "N", defaultValue = "1")
    private int months;

    @Override
    public Reply reply(Seen seen) {
        if (months < 1 || months > MOST_MONTHS) {
            throw new WrongUse("command.months", months, MOST_MONTHS);
        }
        YearMonth last = month.map(TallyCommand::month)
                .orElseGet(() -> YearMonth.from(seen.day().date()));
        LocalDate from = last.minusMonths(months - 1L).atDay(1);
        return new Reply.Tell(
                MonthAnswer.of(seen.lookBack(from, last.plusMonths(1).atDay(1))));
    }
}
