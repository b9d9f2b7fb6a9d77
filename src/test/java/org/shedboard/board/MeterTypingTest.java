package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed of meters, and of dates to ring again. */
class MeterTypingTest {
    @ParameterizedTest
    @CsvSource({
        "'', , ",
        "1512, 1512, ",
        "1512 h, 1512, ",
        "14200 km, , 14200",
        "14200km, , 14200",
        "1512 14200 km, 1512, 14200",
        "'1512h, 14200KM', 1512, 14200",
        "0, 0, "
    })
    void hours_and_kilometres_are_told_apart_by_their_unit(String typed, Integer hours, Integer kilometres) {
        assertEquals(Optional.of(new MeterTyping(some(hours), some(kilometres))), MeterTyping.parse(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"km", "h", "1512 14200", "km 14200", "12345678", "1512,", "14200 km 1512"})
    void anything_else_cannot_be_read(String typed) {
        assertEquals(Optional.empty(), MeterTyping.parse(typed));
    }

    /** On 12 May 2026. */
    @ParameterizedTest
    @CsvSource({
        "+7, 2026-05-19",
        "26 5, 2026-05-26",
        "26.5., 2026-05-26",
        "12 5, 2027-05-12",
        "1/1, 2027-01-01",
        "2026-06-01, 2026-06-01",
        "2026-05-12, ",
        "2026-02-30, ",
        "+0, ",
        "31 6, ",
        "tomorrow, ",
        "29 2, "
    })
    void a_date_to_ring_again_lies_ahead(String typed, LocalDate date) {
        assertEquals(Optional.ofNullable(date), RingDate.parse(typed, LocalDate.of(2026, 5, 12)));
    }

    private static OptionalInt some(Integer number) {
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }
}
