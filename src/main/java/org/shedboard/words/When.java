package org.shedboard.words;

import java.time.DayOfWeek;
import java.time.temporal.TemporalAccessor;

/**
 * How a date or a time of day is said. The forms stand in the bundle, as {@link java.time.format.DateTimeFormatter} patterns, with the language that
 * weekdays and months are named in, so that a translation or a shop's own custom changes them like any other text.
 */
public enum When {
    /** A time of day. */
    CLOCK,
    /** A time on another day of this week. */
    WEEKDAY_CLOCK,
    /** A time on another day. */
    DATE_CLOCK,
    /** A full hour on the time axis. */
    HOUR,
    /** A time on the axis between the hours. */
    PART,
    WEEKDAY,
    WEEKDAY_NUMBER,
    /** A day within the year. */
    WEEKDAY_DATE,
    WEEKDAY_FULL_DATE,
    /** A day of this year, where the weekday says nothing. */
    DATE,
    FULL_DATE;

    /** Says it in this form. */
    public String say(TemporalAccessor at) {
        return Words.form(this).format(at);
    }

    /** The day a week is said to begin with. */
    public static DayOfWeek firstOfWeek() {
        return DayOfWeek.valueOf(Words.say("week.first"));
    }
}
