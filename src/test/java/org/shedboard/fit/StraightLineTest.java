package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.fit.StraightLine.At;

/** Values measured at hours, in the words of wear. */
class StraightLineTest {
    private static final double SURE = 0.9;
    /** Brake linings in millimetres; least squares by hand: mean hours 300, mean 7.02, slope -1.01 in 100 hours. */
    private static final List<At> LININGS =
            List.of(at(100, 9.0), at(200, 8.1), at(300, 7.0), at(400, 6.0), at(500, 5.0));

    @Test
    void the_wear_in_a_hundred_hours_is_the_slope() {
        assertEquals(-1.01, StraightLine.through(LININGS).perHundredHours(), 1e-12);
        assertEquals(7.02, StraightLine.through(LININGS).at(300), 1e-12);
    }

    /** Residuals -0.04 0.07 -0.02 -0.01 0: squares 0.007, over three 0.00233333; slope's deviation is its root over 316.2278 hours. */
    @Test
    void the_wear_has_the_deviation_worked_out_by_hand() {
        StraightLine line = StraightLine.through(LININGS);
        assertEquals(Math.sqrt(0.007 / 3), line.residualSd(), 1e-12);
        assertEquals(100 * Math.sqrt(0.007 / 3 / 100_000), line.sdPerHundredHours(), 1e-12);
        assertEquals(3, line.degreesOfFreedom());
    }

    @Test
    void the_limit_is_reached_where_the_line_meets_it() {
        StraightLine.Crossing crossing = reached(LININGS, 2);
        assertEquals(300 + 5.02 / 0.0101, crossing.likely(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.5, 3, 2, 0.5})
    void early_and_late_are_where_the_interval_of_the_next_value_meets_the_limit(double limit) {
        StraightLine line = StraightLine.through(LININGS);
        StraightLine.Crossing crossing = reached(LININGS, limit);
        double early = crossing.early().orElseThrow();
        double late = crossing.late().orElseThrow();
        assertTrue(early < crossing.likely() && crossing.likely() < late, crossing.toString());
        assertEquals(limit, line.nextAt(early, SURE).low(), 1e-9);
        assertEquals(limit, line.nextAt(late, SURE).high(), 1e-9);
    }

    @Test
    void a_value_that_grows_reaches_an_upper_limit_the_same_way() {
        List<At> play = LININGS.stream()
                .map(each -> at(each.hours(), 10 - each.value()))
                .toList();
        StraightLine.Crossing falling = reached(LININGS, 2);
        StraightLine.Crossing growing = reached(play, 8);
        assertEquals(falling.likely(), growing.likely(), 1e-9);
        assertEquals(falling.early().orElseThrow(), growing.early().orElseThrow(), 1e-9);
    }

    @Test
    void two_values_give_a_likely_time_and_no_interval() {
        StraightLine.Crossing crossing = reached(List.of(at(100, 9), at(200, 8)), 7);
        assertEquals(300, crossing.likely(), 1e-9);
        assertEquals(OptionalDouble.empty(), crossing.early());
        assertEquals(OptionalDouble.empty(), crossing.late());
    }

    @Test
    void values_that_scatter_more_than_they_wear_may_never_reach_it() {
        StraightLine.Crossing crossing = reached(List.of(at(100, 9), at(200, 7), at(300, 9), at(400, 7.2)), 3);
        assertEquals(OptionalDouble.empty(), crossing.late());
        assertTrue(crossing.early().orElseThrow() < crossing.likely());
    }

    @Test
    void nothing_is_reached_before_the_last_measurement() {
        StraightLine.Crossing crossing = reached(LININGS, 5.1);
        assertEquals(500, crossing.likely());
        assertEquals(500, crossing.early().orElseThrow());
    }

    @Test
    void a_line_that_runs_away_from_a_limit_never_reaches_it() {
        assertEquals(Optional.empty(), StraightLine.through(LININGS).reaches(12, SURE));
    }

    @Test
    void a_level_line_never_reaches_a_limit() {
        List<At> level = List.of(at(100, 4), at(200, 4), at(300, 4));
        assertEquals(Optional.empty(), StraightLine.through(level).reaches(3, SURE));
    }

    @Test
    void no_line_goes_through_values_at_one_and_the_same_hour() {
        List<At> same = List.of(at(100, 4), at(100, 5));
        assertFalse(StraightLine.canBeDrawn(same));
        assertThrows(IllegalArgumentException.class, () -> StraightLine.through(same));
    }

    private static StraightLine.Crossing reached(List<At> points, double limit) {
        return StraightLine.through(points).reaches(limit, SURE).orElseThrow();
    }

    private static At at(double hours, double value) {
        return new At(hours, value);
    }
}
