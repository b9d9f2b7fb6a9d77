package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.fault.ProblemCheck;

/** The checker, which shares no code with it, says the same cost. */
class ReplayCostTest {
    @Test
    void a_replay_costs_what_the_checker_says_of_its_plan() {
        int posted = 0;
        for (int seed = 0; seed < 200; seed++) {
            Problem fresh = RandomProblems.of(seed).withCosts(new Costs(100, 5, 1, 10, 3, 2, 20));
            Plan plan = PackedPlans.pack(fresh, seed, 50);
            check(fresh, plan, seed);
            Problem later = RandomProblems.later(fresh, plan, 30 + seed % 200, seed);
            if (ProblemCheck.faults(later).isEmpty()) {
                check(later, PackedPlans.pack(later, seed, 100), seed);
                posted++;
            }
        }
        assertTrue(posted > 100, "only " + posted + " later days");
    }

    private static void check(Problem problem, Plan plan, long seed) {
        PlayedDay played = PlayedDay.of(problem, plan);
        played.replay().run(0);
        ReplayCost cost = new ReplayCost(played.flat(), played.reading(), played.replay());
        Plan replayed = played.plan(plan.unplaced());
        assertEquals(PlanCheck.of(problem, replayed).cost(), cost.count(), () -> "seed " + seed);
        assertEquals(
                List.of(),
                plan.unplaced().stream()
                        .filter(left -> replayed.findTask(left.job(), 0, "t0").isPresent())
                        .toList());
    }
}
