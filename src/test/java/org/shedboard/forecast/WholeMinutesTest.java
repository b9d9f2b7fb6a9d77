package org.shedboard.forecast;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

class WholeMinutesTest {
    @Test
    void the_largest_fractions_are_rounded_up_until_all_add_up() {
        assertArrayEquals(new int[] {11, 2, 0, 4}, WholeMinutes.of(new double[] {10.7, 2.1, 0, 3.6}, 17));
        assertArrayEquals(new int[] {10, 2, 0, 4}, WholeMinutes.of(new double[] {10.4, 2.1, 0, 3.6}, 16));
    }

    @Test
    void minutes_that_are_taken_away_stay_taken_away() {
        assertArrayEquals(new int[] {10, -3, 0}, WholeMinutes.of(new double[] {10.2, -3.4, 0}, 7));
    }
}
