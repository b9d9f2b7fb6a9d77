package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.search.Packing;
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

    @Test
    void the_bound_of_small_days_is_near_their_proven_optimum_and_never_above() throws IOException {
        List<Double> shares = new ArrayList<>();
        for (Map.Entry<String, Long> day : Days.optima().entrySet()) {
            Problem problem = Days.read(day.getKey());
            long bound = Packing.of(problem, 1).proven().plan().bound();
            assertTrue(bound <= day.getValue(), day.getKey() + " has a bound above the optimum: " + bound);
            shares.add(bound / (double) day.getValue());
        }
        double median = shares.stream().sorted().toList().get(shares.size() / 2);
        assertTrue(median >= 0.94, "the bounds are in the median at " + median + " of the optimum: " + shares);
    }
}
