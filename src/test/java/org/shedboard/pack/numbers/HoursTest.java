package org.shedboard.pack.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

class HoursTest {
    /** Two shifts with a break, overtime touching the second one, horizon 1000. */
    private static final Hours HOURS = Hours.of(
            Problem.Person.of("Pat", Set.of(), Span.of(10, 100), Span.of(120, 200))
                    .withOvertime(Span.of(200, 230)),
            1000);

    @ParameterizedTest
    @CsvSource({
        "0,0",
        "10,0",
        "11,1",
        "100,90",
        "110,90",
        "120,90",
        "121,91",
        "200,170",
        "230,200",
        "999,200",
        "1001,201"
    })
    void wall_minutes_become_working_minutes(int wall, int worked) {
        assertEquals(worked, HOURS.worked(wall));
    }

    @ParameterizedTest
    @CsvSource({"0,10", "89,99", "90,120", "169,199", "170,200", "199,229", "200,1000", "205,1005"})
    void a_working_minute_begins_inside_a_window(int work, int wall) {
        assertEquals(wall, HOURS.wall(work));
        assertTrue(HOURS.wall(HOURS.worked(wall)) == wall);
    }

    @ParameterizedTest
    @CsvSource({"1,11", "90,100", "91,121", "200,230", "201,1001"})
    void work_ends_where_its_last_minute_does(int work, int end) {
        assertEquals(end, HOURS.end(work));
    }

    @ParameterizedTest
    @CsvSource({"0,0", "170,0", "171,1", "200,30", "250,30"})
    void overtime_is_counted_up_to_a_working_minute(int work, int overtime) {
        assertEquals(overtime, HOURS.overtimeBefore(work));
    }

    @ParameterizedTest
    @CsvSource({"0,170,0", "0,171,200", "169,1,169", "169,2,200", "180,1,200", "200,50,200"})
    void work_that_would_touch_overtime_is_put_after_it(int work, int minutes, int start) {
        assertEquals(start, HOURS.pastOvertime(work, minutes));
    }

    @Test
    void a_window_that_runs_out_of_the_tables_is_counted_on() {
        int six = 6 * 7 * 24 * 60;
        Hours far = Hours.of(
                Problem.Person.of("Pat", Set.of(), Span.of(100, six + 50)).withOvertime(Span.of(six + 50, six + 60)),
                2 * six);
        for (int wall = six - 2; wall < six + 60; wall++) {
            assertEquals(wall - 100, far.worked(wall));
            assertEquals(wall, far.wall(wall - 100));
        }
        assertEquals(4, far.overtimeBefore(six - 46));
        assertEquals(six - 40, far.pastOvertime(six - 52, 5));
    }

    @Test
    void a_long_horizon_keeps_small_tables_exact() {
        Hours far =
                Hours.of(Problem.Person.of("Pat", Set.of(), Span.of(7, 8), Span.of(9_999_990, 9_999_999)), 10_000_000);
        assertEquals(1, far.worked(8));
        assertEquals(9_999_990, far.wall(1));
        assertEquals(10_000_000, far.wall(10));
    }
}
