package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.TinyProblems;
import org.shedboard.pack.WorkshopDays;
import org.shedboard.pack.fault.ProblemCheck;

class ExactPackerTest {
    private static final double EFFORT = 10;
    private static final int SEEDS = 8;

    @BeforeEach
    void needs_the_solver() {
        NativeSolver.expect();
    }

    @Test
    void from_a_plan_the_same_optimum_is_proven_as_from_none() {
        int better = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Problem day = TinyProblems.of(seed);
            if (ProblemCheck.faults(day).isEmpty()) {
                Plan first = PackedPlans.first(day);
                ExactLimit limit = ExactLimit.ofEffort(EFFORT, 1);
                ExactAnswer alone = ExactPacker.pack(day, limit);
                ExactAnswer hinted = ExactPacker.pack(day, limit.withHint(first));
                assertTrue(alone.isProven() && hinted.isProven(), "seed " + seed);
                assertEquals(Score.of(alone.expectPlan()), Score.of(hinted.expectPlan()), "seed " + seed);
                better += hinted.expectPlan().isBetterThan(first) ? 1 : 0;
            }
        }
        assertTrue(better > 0, "every first plan was the best one, so that the hint proves nothing");
    }

    /** The day is large enough that nothing is found in no time without it. */
    @Test
    void with_no_time_to_search_the_plan_it_starts_from_comes_back() {
        Problem day = WorkshopDays.of(12, WorkshopDays.FAIR, 1);
        Plan first = PackedPlans.first(day);
        assertEquals(
                Optional.empty(), ExactPacker.pack(day, ExactLimit.of(0, 1)).plan());
        ExactAnswer hinted = ExactPacker.pack(day, ExactLimit.of(0, 1).withHint(first));
        assertFalse(hinted.isProven());
        assertEquals(Score.of(first), Score.of(hinted.expectPlan()));
    }

    @Test
    void so_it_does_when_that_plan_leaves_a_machine_out() {
        Problem day = WorkshopDays.of(12, WorkshopDays.FAIR, 1);
        Plan first =
                PackedPlans.first(day.withJobs(day.jobs().subList(1, day.jobs().size())));
        Plan without = new Plan(
                first.cost(),
                0,
                List.of(new Plan.Unplaced(day.jobs().get(0).id(), "left out")),
                first.stays(),
                first.tasks(),
                0,
                0,
                0);
        PackedPlans.checked(day, without);
        ExactAnswer hinted = ExactPacker.pack(day, ExactLimit.of(0, 1).withHint(without));
        assertEquals(Score.of(without), Score.of(hinted.expectPlan()));
    }
}
