package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.testing.Days;

class DaysTest {
    @Test
    void small_days_are_packed_at_or_near_their_proven_optimum_and_never_below() throws IOException {
        Map<String, Long> optima = Days.optima();
        int met = 0;
        for (Map.Entry<String, Long> day : optima.entrySet()) {
            Plan plan = PackedPlans.pack(Days.read(day.getKey()), 1, 20_000);
            assertEquals(0, plan.unplaced().size(), day.getKey());
            assertTrue(plan.cost() >= day.getValue(), day.getKey() + " is below the optimum: a rule is broken");
            assertTrue(plan.bound() <= day.getValue(), day.getKey() + " has a bound above the optimum");
            met += plan.cost() == day.getValue() ? 1 : 0;
        }
        assertTrue(met >= optima.size() * 3 / 4, "only " + met + " of " + optima.size() + " at the optimum");
    }
}
