package org.shedboard.screen;

import java.time.LocalDateTime;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.When;

/** How many columns dates and times need, in whatever form and language the shop says them. */
final class TimeRoom {
    /** A year that begins on a Monday, at an hour that needs two digits on a clock of twelve hours too. */
    private static final LocalDateTime FIRST = LocalDateTime.of(2029, 1, 22, 22, 58);

    private TimeRoom() {}

    /** The columns of the longest that this form says on any weekday or in any month. */
    static int of(When form) {
        int weekdays = widest(form, IntStream.range(0, 7).mapToObj(FIRST::plusDays));
        int months = widest(form, IntStream.range(0, 12).mapToObj(FIRST::plusMonths));
        return Math.max(weekdays, months);
    }

    private static int widest(When form, Stream<LocalDateTime> times) {
        return times.map(form::say).mapToInt(TextWidth::of).max().orElseThrow();
    }
}
