package org.shedboard.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.files.DayFile;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** A day with a break from 40 to 50 and a night from 100 to 1000; all numbers are invented. */
class PlanChartTest {
    private static final String DAY = """
            {"now": 0, "horizon": 2000, "places": [{"id": "H1", "kind": "hoist"}],
             "people": [{"id": "Wren", "skills": ["s"], "shifts": [[0, 40], [50, 100], [1000, 1100]]}],
             "jobs": [{"id": "J1", "promise": 40, "stays": [{"places": ["hoist"], "tasks": [
                         {"id": "a", "skill": "s", "handsOn": 30, "at": 0}]}]},
                      {"id": "J2", "stays": [{"places": ["hoist"], "tasks": [
                         {"id": "b", "skill": "s", "handsOn": 50, "at": 30},
                         {"id": "c", "skill": "s", "handsOn": 20, "at": 1000}]}]}]}
            """;

    private static List<String> drawn(String day, int width) {
        Problem problem = DayFile.read(day).expectValue();
        Plan plan = PackedPlans.first(problem);
        assertEquals(List.of(), plan.unplaced());
        return PlanChart.of(problem, plan, width);
    }

    @Test
    void people_and_places_are_drawn_without_breaks_and_nights() {
        assertEquals(
                List.of("     0           70", "Wren J1▓▓▓▓J2▓▓▓▓▓▓▓▓  J2▓▓", "H1   J1░░░░J2░░░░░░░░░░░░░░"),
                drawn(DAY, 30));
    }

    @Test
    void more_room_shows_more() {
        assertEquals(
                List.of(
                        "     0           24          58          82          1006",
                        "Wren J1▓▓▓▓▓▓▓▓▓▓▓▓▓J2▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓     J2▓▓▓▓▓▓▓▓",
                        "H1   J1░░░░░░░░░░░░░J2░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░░"),
                drawn(DAY, 65));
    }

    @Test
    void tasks_of_one_job_that_touch_are_one_bar_and_a_short_one_has_no_name() {
        String day = DAY.replace("\"handsOn\": 30", "\"handsOn\": 5")
                .replace("\"handsOn\": 20, \"at\": 1000", "\"handsOn\": 15, \"at\": 90");
        assertEquals(
                List.of("     0           70", "Wren ▓     J2▓▓▓▓▓▓▓▓▓▓▓", "H1   ░     J2░░░░░░░░░░░"), drawn(day, 30));
    }

    @Test
    void where_the_file_says_what_minute_0_is_the_clock_stands_above() {
        List<String> lines = drawn(
                DAY.replace("\"now\": 0,", "\"now\": 0, \"origin\": \"2026-03-02T07:00+10:00[Australia/Brisbane]\","),
                30);
        assertEquals("     Mon 07:00   Mon 08:10", lines.get(0));
    }

    @Test
    void no_line_is_wider_than_it_may_be() {
        String day = DAY.replace("Wren", "Wrenetta of the Long Name");
        for (int width = 15; width < 140; width++) {
            int most = width;
            assertTrue(drawn(day, width).stream().allMatch(line -> line.length() <= most), "at " + width);
        }
    }
}
