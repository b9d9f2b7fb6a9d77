package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import org.shedboard.words.When;

/** How a moment is said in the shed: the time for today, with the weekday for any other day. */
public final class Clocks {
    private Clocks() {}

    /** A date with its year: what is due or was read may lie far off. */
    public static String sayFullDate(LocalDate date) {
        return When.FULL_DATE.say(date);
    }

    /** A date within the year. */
    public static String sayDate(LocalDate date) {
        return When.WEEKDAY_DATE.say(date);
    }

    /** The date of something long ago, with the year where it is not this one. */
    public static String sayDate(Day day, Instant at) {
        LocalDate date = LocalDate.ofInstant(at, day.zone());
        return (date.getYear() == day.date().getYear() ? When.DATE : When.FULL_DATE).say(date);
    }

    public static String sayTime(Day day, Instant at) {
        boolean today = LocalDate.ofInstant(at, day.zone()).equals(day.date());
        return (today ? When.CLOCK : When.WEEKDAY_CLOCK).say(at.atZone(day.zone()));
    }
}
