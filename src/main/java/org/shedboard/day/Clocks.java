package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How a moment is said in the shed: the time for today, with the weekday for any other day. */
public final class Clocks {
    private static final DateTimeFormatter TODAY = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter OTHER_DAY = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter FULL_DATE = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private Clocks() {}

    /** A date with its year: what is due or was read may lie far off. */
    public static String sayFullDate(LocalDate date) {
        return FULL_DATE.format(date);
    }

    /** A date within the year. */
    public static String sayDate(LocalDate date) {
        return DATE.format(date);
    }

    public static String sayTime(Day day, Instant at) {
        boolean today = LocalDate.ofInstant(at, day.zone()).equals(day.date());
        return (today ? TODAY : OTHER_DAY).format(at.atZone(day.zone()));
    }
}
