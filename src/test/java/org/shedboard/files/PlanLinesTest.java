package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Plan;
import org.shedboard.pack.WorkshopDays;
import org.shedboard.pack.search.Packer;

class PlanLinesTest {
    @Test
    void a_plan_of_short_lines_is_the_same_plan_with_a_line_a_task_and_stay() {
        Plan plan = Packer.first(WorkshopDays.of(8, WorkshopDays.FAIR, 1));
        String text = PlanLines.write(plan);
        assertEquals(plan, PlanFile.read(text).expectValue());
        assertTrue(text.lines().count() <= plan.tasks().size() + plan.stays().size() + 12, text);
    }

    @Test
    void what_must_be_quoted_is() {
        Plan plan = new Plan(
                7,
                3,
                List.of(new Plan.Unplaced("J\"9\"", "no hoist\nat all")),
                List.of(),
                List.of(new Plan.TaskTime("J1", 0, "é, \\", Optional.empty(), List.of("P2"), 5, 5)),
                1,
                2,
                3);
        assertEquals(plan, PlanFile.read(PlanLines.write(plan)).expectValue());
    }
}
