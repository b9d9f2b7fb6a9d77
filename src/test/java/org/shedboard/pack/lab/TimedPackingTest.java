package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.WorkshopDays;

class TimedPackingTest {
    @Test
    void a_plan_packed_by_time_is_legal_and_no_worse_than_the_first() throws InterruptedException {
        Problem day = WorkshopDays.of(8, WorkshopDays.FAIR, 1);
        try (TimedPacking packing = new TimedPacking(2)) {
            Plan plan = PackedPlans.checked(day, packing.pack(day, 1, 0.2));
            assertFalse(PackedPlans.first(day).isBetterThan(plan));
        }
    }

    /** Were it not to end by itself, it would go on for hours. */
    @Test
    @Timeout(60)
    void packing_ends_when_nothing_better_can_be_or_there_is_nothing_to_choose() throws InterruptedException {
        Problem.Job wash = Problem.Job.of("J1", Problem.Stay.nowhere(Problem.Task.of("wash", "wash", 20)));
        Problem.Person ada = Problem.Person.of("ada", Set.of("wash"), Span.of(0, 500));
        Problem day = Problem.of(0, 500, List.of(), List.of(ada), List.of(wash));
        try (TimedPacking packing = new TimedPacking(2)) {
            assertEquals(20, packing.pack(day, 1, 10_000).cost());
            assertEquals(0, packing.pack(day.withJobs(List.of()), 1, 10_000).cost());
        }
    }
}
