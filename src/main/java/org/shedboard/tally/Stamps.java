package org.shedboard.tally;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How a moment is written where several days are looked at. */
public final class Stamps {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter OTHER_DAY = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private Stamps() {}

    /** The time, with its date where that is not the day looked at. */
    public static String of(Ledger ledger, Instant at) {
        boolean oneDay = ledger.from().plusDays(1).equals(ledger.until());
        boolean isOfIt = oneDay && ledger.dateOf(at).equals(ledger.from());
        return (isOfIt ? TIME : OTHER_DAY)
                .format(at.atZone(ledger.books().shop().zone()));
    }

    /** The time alone. */
    public static String time(Ledger ledger, Instant at) {
        return TIME.format(at.atZone(ledger.books().shop().zone()));
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
        return WEEKDAY.format(date);
    }

    public static String date(LocalDate date) {
        return DATE.format(date);
    }
}
