package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.bound.Bound;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/** What {@link Bound} says, held against the plans that the search finds and those it passes through. */
class PlansAboveBoundTest {
    private static final int PROBLEMS = 150 * Integer.getInteger("proof.scale", 1);

    private int compared;
    private int tight;
    private int leftOut;

    @Test
    void no_plan_of_a_random_problem_is_below_it_seeds_from_0() {
        for (int seed = 0; seed < PROBLEMS; seed++) {
            compare(RandomProblems.of(seed), seed);
        }
        assertTrue(compared > PROBLEMS * 20, "only " + compared + " plans");
        assertTrue(leftOut > PROBLEMS, "only " + leftOut + " plans leave jobs out");
        assertTrue(tight > PROBLEMS / 2, "only " + tight + " bounds are within a fifth of the cost");
    }

    @Test
    void no_plan_is_below_it_whatever_the_costs_seeds_from_0() {
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Chance chance = new Chance(seed);
            Costs costs = new Costs(
                    chance.below(3) * 10,
                    chance.below(3) * 30,
                    chance.below(3),
                    chance.below(3) * 100,
                    chance.below(3) * 5,
                    chance.below(2),
                    chance.below(3) * 50);
            Problem problem = RandomProblems.of(seed).withCosts(costs);
            compare(problem, seed);
            compare(problem.withPosted(Packer.first(problem)), seed);
        }
        assertTrue(compared > PROBLEMS * 20, "only " + compared + " plans");
    }

    @Test
    void no_plan_of_a_begun_day_is_below_it_seeds_from_0() {
        int begun = 0;
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem before = RandomProblems.of(seed);
            Problem later = RandomProblems.later(before, PackedPlans.pack(before, seed, 50), 30 + seed % 300, seed);
            if (ProblemCheck.faults(later).isEmpty()) {
                compare(later, seed);
                begun += later.jobs().stream().anyMatch(Problem.Job::hasBegun) ? 1 : 0;
            }
        }
        assertTrue(begun > PROBLEMS / 2, "only " + begun + " days have begun work");
        assertTrue(compared > PROBLEMS * 20, "only " + compared + " plans");
    }

    /** The best plan found and those of a random walk from the plain one. */
    private void compare(Problem problem, long seed) {
        FlatProblem flat = new FlatProblem(problem);
        Bound bound = new Bound(flat);
        assertFallsWithMoreLeftOut(bound, flat.jobs, seed);
        Plan packed = PackedPlans.pack(problem, seed, 300);
        long least = bound.costAtLeast(packed.unplaced().size());
        assertTrue(least <= packed.cost(), () -> "seed " + seed + ": " + least + " is above " + packed.cost());
        tight += least >= packed.cost() * 4 / 5 ? 1 : 0;
        walk(flat, bound, seed);
    }

    private void walk(FlatProblem flat, Bound bound, long seed) {
        Chance chance = new Chance(seed);
        boolean[] left = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            left[job] = flat.hopeless[job] != null || (!flat.jobHasBegun[job] && chance.below(5) == 0);
        }
        Decoder decoder = new Decoder(flat);
        decoder.leaveOut(left);
        Tally tally = new Tally(decoder);
        Moves moves = new Moves(flat, decoder.outlook, chance, left);
        Solution solution = Solution.plain(flat);
        Timetable table = new Timetable(flat);
        decoder.decode(solution);
        table.take(decoder);
        for (int move = 0; move < 60 && !moves.isEmpty(); move++) {
            System.arraycopy(table.order, 0, solution.list, 0, flat.tasks);
            moves.change(solution, table);
            decoder.decode(solution);
            table.take(decoder);
            tally.count();
            if (tally.stranded == 0) {
                long least = bound.costAtLeast(tally.unplaced);
                assertTrue(least <= tally.cost, () -> "seed " + seed + ": " + least + " is above " + tally.cost);
                compared++;
                leftOut += tally.unplaced > 0 ? 1 : 0;
            }
        }
    }

    private static void assertFallsWithMoreLeftOut(Bound bound, int jobs, long seed) {
        for (int unplaced = 0; unplaced < jobs; unplaced++) {
            assertTrue(
                    bound.costAtLeast(unplaced) >= bound.costAtLeast(unplaced + 1),
                    "seed " + seed + " rises at " + unplaced);
        }
        assertTrue(bound.costAtLeast(jobs) >= 0, "seed " + seed);
    }
}
