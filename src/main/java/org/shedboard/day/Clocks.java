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
    private static final DateTimeFormatter THIS_YEAR = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter OTHER_YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private Clocks() {}

    /** A date with its year: what is due or was read may lie far off. */
    public static String sayFullDate(LocalDate date) {
        return OTHER_YEAR.format(date);
    }

    /** A date within the year. */
    public static String sayDate(LocalDate date) {
        return DATE.format(date);
    }

    /** The date of something long ago, with the year where it is not this one. */
    public static String sayDate(Day day, Instant at) {
        LocalDate date = LocalDate.ofInstant(at, day.zone());
        return (date.getYear() == day.date().getYear() ? THIS_YEAR : OTHER_YEAR).format(date);
    }

    public static String sayTime(Day day, Instant at) {
        boolean today = LocalDate.ofInstant(at, day.zone()).equals(day.date());
        return (today ? TODAY : OTHER_DAY).format(at.atZone(day.zone()));
    }
}
