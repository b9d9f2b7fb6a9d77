package org.shedboard.tally;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import org.shedboard.words.When;

/** How a moment is written where several days are looked at. */
public final class Stamps {
    private Stamps() {}

    /** The time, with its date where that is not the day looked at. */
    public static String of(Ledger ledger, Instant at) {
        boolean oneDay = ledger.from().plusDays(1).equals(ledger.until());
        boolean isOfIt = oneDay && ledger.dateOf(at).equals(ledger.from());
        return (isOfIt ? When.CLOCK : When.DATE_CLOCK)
                .say(at.atZone(ledger.books().shop().zone()));
    }

    /** The time alone. */
    public static String time(Ledger ledger, Instant at) {
        return When.CLOCK.say(at.atZone(ledger.books().shop().zone()));
    }

    /** The ISO 8601 week a day is of: {@code 2026-W20}. */
    public static String week(LocalDate date) {
        return DateTimeFormatter.ISO_WEEK_DATE.format(date).substring(0, 8);
    }

    /** The time with its date. */
    public static String full(Ledger ledger, Instant at) {
        return date(ledger.dateOf(at)) + " " + time(ledger, at);
    }

    /** The date as short as a week needs it. */
    public static String weekday(LocalDate date) {
        return When.WEEKDAY_NUMBER.say(date);
    }

    public static String date(LocalDate date) {
        return When.WEEKDAY_FULL_DATE.say(date);
    }
}
