package org.shedboard.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A number and its unit stay on one line. */
class QuantitiesTest {
    @Test
    void a_line_never_ends_between_a_number_and_its_unit() {
        assertEquals(List.of("likely", "217 min"), TextWidth.wrap("likely 217 min", 11));
        assertEquals(List.of("rated", "2500 kg,"), TextWidth.wrap("rated 2500 kg,", 11));
    }

    @Test
    void hours_and_minutes_stay_together() {
        assertEquals(List.of("it takes", "1 h 25 or", "so"), TextWidth.wrap("it takes 1 h 25 or so", 10));
    }

    @Test
    void a_number_before_any_other_word_may_end_a_line() {
        assertEquals(List.of("Tuesday 12", "May"), TextWidth.wrap("Tuesday 12 May", 12));
        assertEquals(List.of("lines of 3", "words"), TextWidth.wrap("lines of 3 words", 11));
    }

    @Test
    void a_quantity_longer_than_the_line_is_cut_as_any_long_word() {
        assertEquals(List.of("12345", "min"), TextWidth.wrap("12345 min", 5));
    }
}
