package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
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
}
