package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.board.ClockTyping.FromTo;
import org.shedboard.day.Refusal;

/** Dates and epoch seconds of summer time in New York are from the IANA time zone database, computed. */
class ClockTypingTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final LocalDate PLAIN = LocalDate.of(2025, 5, 12);
    private static final LocalDate SPRING = LocalDate.of(2025, 3, 9);
    private static final LocalDate AUTUMN = LocalDate.of(2025, 11, 2);

    private static Optional<Refusal> fault(String name, String value) {
        return Optional.of(new Refusal(name, List.of(value)));
    }

    @Test
    void from_and_to_are_read_on_the_clock_of_the_shop() {
        FromTo read = ClockTyping.fromTo("8:15 - 9", PLAIN, NEW_YORK).value().orElseThrow();
        assertEquals(PLAIN.atTime(8, 15).atZone(NEW_YORK).toInstant(), read.from());
        assertEquals(PLAIN.atTime(9, 0).atZone(NEW_YORK).toInstant(), read.to());
    }

    /** Twelve o'clock at noon and at night, on a clock of twelve hours. */
    @ParameterizedTest
    @CsvSource({"12:00a,00:00", "12:30am,00:30", "12p,12:00", "12:59pm,12:59", "1:00p,13:00", "0930,09:30"})
    void a_clock_of_twelve_hours_is_understood(String typed, String time) {
        Instant at = ClockTyping.at(typed, PLAIN, NEW_YORK).value().orElseThrow();
        assertEquals(time, at.atZone(NEW_YORK).toLocalTime().toString());
    }

    @Test
    void an_end_that_is_not_later_is_of_the_next_day() {
        FromTo read = ClockTyping.fromTo("22:00-6:00", PLAIN, NEW_YORK).value().orElseThrow();
        assertEquals(Duration.ofHours(8), Duration.between(read.from(), read.to()));
    }

    /** b4.2 and b4.3: the nights on which summer time begins and ends have seven and nine hours from ten to six. */
    @ParameterizedTest
    @CsvSource({"2025-03-08,7", "2025-11-01,9"})
    void a_night_of_summer_time_is_as_long_as_it_is(LocalDate date, int hours) {
        FromTo read = ClockTyping.fromTo("22-6", date, NEW_YORK).value().orElseThrow();
        assertEquals(Duration.ofHours(hours), Duration.between(read.from(), read.to()));
    }

    @Test
    void a_time_that_summer_time_skips_is_refused() {
        assertEquals(
                fault("form.time_skipped", "02:30"),
                ClockTyping.fromTo("1:00-2:30", SPRING, NEW_YORK).fault());
    }

    @Test
    void a_time_that_it_repeats_is_asked_for() {
        assertEquals(
                fault("form.time_twice", "01:30"),
                ClockTyping.at("1:30", AUTUMN, NEW_YORK).fault());
        assertEquals(
                Optional.of(Instant.ofEpochSecond(1762061400)),
                ClockTyping.at("1:30 first", AUTUMN, NEW_YORK).value());
        assertEquals(
                Optional.of(Instant.ofEpochSecond(1762065000)),
                ClockTyping.at("1:30 second", AUTUMN, NEW_YORK).value());
    }

    @Test
    void what_is_filled_in_can_be_read_back_in_the_hour_that_comes_twice() {
        Instant first = Instant.ofEpochSecond(1762061400);
        Instant second = Instant.ofEpochSecond(1762065000);
        String typed = ClockTyping.typed(first, second, NEW_YORK);
        assertEquals("01:30 first-01:30 second", typed);
        assertEquals(
                Optional.of(new FromTo(first, second)),
                ClockTyping.fromTo(typed, AUTUMN, NEW_YORK).value());
    }

    @ParameterizedTest
    @CsvSource({"8:00,form.span_unread", "8-9-10,form.span_unread", "eight-9,form.time_unread", "8-25,form.time_unread"
    })
    void what_cannot_be_read_says_so(String typed, String name) {
        assertEquals(
                name,
                ClockTyping.fromTo(typed, PLAIN, NEW_YORK).fault().orElseThrow().name());
    }

    @Test
    void an_end_is_of_the_day_on_which_it_began_or_of_the_next() {
        Instant began = PLAIN.atTime(15, 0).atZone(NEW_YORK).toInstant();
        assertEquals(
                Optional.of(PLAIN.atTime(16, 30).atZone(NEW_YORK).toInstant()),
                ClockTyping.ended("16:30", began, NEW_YORK).value());
        assertEquals(
                Optional.of(PLAIN.plusDays(1).atTime(1, 0).atZone(NEW_YORK).toInstant()),
                ClockTyping.ended("1:00", began, NEW_YORK).value());
    }
}
