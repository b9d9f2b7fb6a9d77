package org.shedboard.files;

import java.time.Instant;
import java.time.LocalTime;
import java.util.function.Function;

/**
 * A time of a day that is so many working days away: {@code "15:10"}, {@code "-1 15:10"}, {@code "+2 09:00"}.
 *
 * @param workdays working days after the day it is counted from; negative before it
 */
record DayTime(int workdays, LocalTime time) {
    static final String WANTED = "a time such as 15:10 or -1 15:10";
    static final DayTime NONE = new DayTime(0, LocalTime.MIN);

    /** Says which moment that is. */
    interface Moments extends Function<DayTime, Instant> {}

    static DayTime parse(String text) {
        int space = text.indexOf(' ');
        String days = space < 0 ? "+0" : text.substring(0, space);
        if (!days.matches("[+-][0-9]{1,2}")) {
            throw new IllegalArgumentException(text);
        }
        return new DayTime(Integer.parseInt(days), LocalTime.parse(text.substring(space + 1)));
    }
}
