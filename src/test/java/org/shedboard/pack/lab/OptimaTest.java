package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.TinyProblems;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.lab.EveryMinute.Least;

/** What the engine finds, held against what is proven to be best; seeds count from 0. */
class OptimaTest {
    private static final int SCALE = Integer.getInteger("proof.scale", 1);
    private static final int TINY = 24 * SCALE;
    private static final int SMALL = 12 * SCALE;
    private static final int TRIES = 3000;
    private static final double EFFORT = 10;
    /** How many in a hundred the engine must meet; to be raised as it gets better, never lowered. */
    private static final int MET_IN_A_HUNDRED = 70;

    private static final Map<Problem, Least> LEAST = new HashMap<>();

    @Test
    void no_plan_of_a_tiny_problem_is_better_than_trying_every_minute_and_nearly_all_are_as_good() {
        int compared = 0;
        int met = 0;
        for (int seed = 0; seed < TINY; seed++) {
            Problem problem = TinyProblems.of(seed);
            if (ProblemCheck.faults(problem).isEmpty()) {
                Least least = least(problem);
                Plan plan = PackedPlans.pack(problem, seed, TRIES);
                assertFalse(isBetter(plan, least), "seed " + seed + ": " + least + " is beaten by " + plan);
                compared++;
                met += least.equals(leastOf(plan)) ? 1 : 0;
            }
        }
        assertTrue(compared > TINY * 3 / 4, "only " + compared + " problems compared");
        assertTrue(met * 100 >= compared * MET_IN_A_HUNDRED, met + " of " + compared + " met");
    }

    @Test
    void the_constraint_solver_and_trying_every_minute_agree() {
        NativeSolver.expect();
        int compared = 0;
        for (int seed = 0; seed < TINY; seed++) {
            Problem problem = TinyProblems.of(seed);
            if (ProblemCheck.faults(problem).isEmpty()) {
                ExactAnswer answer = ExactPacker.pack(problem, ExactLimit.ofEffort(EFFORT, 1));
                assertTrue(answer.isProven(), "seed " + seed);
                assertEquals(least(problem), leastOf(answer.expectPlan()), "seed " + seed);
                compared++;
            }
        }
        assertTrue(compared > TINY * 3 / 4, "only " + compared + " problems compared");
    }

    @Test
    void no_plan_of_a_small_problem_is_better_than_the_proven_one_and_nearly_all_are_as_good() {
        NativeSolver.expect();
        Score score = new Score();
        for (int seed = 0; seed < SMALL; seed++) {
            score.compare(RandomProblems.of(seed), seed);
        }
        score.expect(SMALL);
    }

    @Test
    void no_plan_of_a_begun_day_is_better_than_the_proven_one_and_nearly_all_are_as_good() {
        NativeSolver.expect();
        Score score = new Score();
        for (int seed = 0; seed < SMALL; seed++) {
            Problem before = RandomProblems.of(seed);
            Problem later = RandomProblems.later(before, PackedPlans.pack(before, seed, 50), 30 + seed % 200, seed);
            if (ProblemCheck.faults(later).isEmpty()) {
                score.compare(later, seed);
            }
        }
        score.expect(SMALL);
    }

    /** How often the solver came to an end, and how often the engine had found as good a plan. */
    private static final class Score {
        private int proven;
        private int met;

        /** The engine's plan is the solver's hint: were it better than any legal one, the solver would find nothing at all. */
        void compare(Problem problem, long seed) {
            Plan plan = PackedPlans.pack(problem, seed, TRIES);
            ExactAnswer answer =
                    ExactPacker.pack(problem, ExactLimit.ofEffort(EFFORT, 2).withHint(plan));
            if (answer.isProven()) {
                Least least = leastOf(answer.expectPlan());
                assertFalse(isBetter(plan, least), "seed " + seed + ": " + least + " is beaten by " + plan);
                assertTrue(plan.bound() <= least.cost() || plan.unplaced().size() > least.unplaced(), "seed " + seed);
                proven++;
                met += least.equals(leastOf(plan)) ? 1 : 0;
            }
        }

        void expect(int problems) {
            assertTrue(proven > problems * 2 / 3, "only " + proven + " proven");
            assertTrue(met * 100 >= proven * MET_IN_A_HUNDRED, met + " of " + proven + " met");
        }
    }

    /** Tried once for all tests: it takes up to seconds. */
    private static Least least(Problem problem) {
        return LEAST.computeIfAbsent(problem, EveryMinute::of);
    }

    private static Least leastOf(Plan plan) {
        return new Least(plan.unplaced().size(), plan.cost());
    }

    private static boolean isBetter(Plan plan, Least least) {
        int more = plan.unplaced().size() - least.unplaced();
        return more < 0 || (more == 0 && plan.cost() < least.cost());
    }
}
