package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

class RandomProblemsTest {
    private static final int PROBLEMS = 300 * Integer.getInteger("proof.scale", 1);

    @Test
    void plans_of_random_problems_obey_every_rule_seeds_from_0() {
        int placed = 0;
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem problem = RandomProblems.of(seed);
            assertEquals(List.of(), ProblemCheck.faults(problem), "seed " + seed);
            Plan first = PackedPlans.first(problem);
            Plan packed = PackedPlans.pack(problem, seed, 300);
            assertFalse(first.isBetterThan(packed), "seed " + seed);
            placed += packed.tasks().isEmpty() ? 0 : 1;
        }
        assertTrue(placed > PROBLEMS * 9 / 10, "only " + placed + " plans have anything in them");
    }

    @Test
    void following_a_whole_plan_at_the_same_minute_changes_nothing_seeds_from_0() {
        int busy = 0;
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem problem = RandomProblems.of(seed).withCosts(Costs.STANDARD.withStability(1, 20));
            Plan posted = PackedPlans.pack(problem, seed, 100);
            if (posted.unplaced().isEmpty()) {
                Plan followed = PackedPlans.follow(problem.withPosted(posted));
                assertEquals(posted.stays(), followed.stays(), "seed " + seed);
                assertEquals(posted.tasks(), followed.tasks(), "seed " + seed);
                busy += posted.tasks().size() > 5 ? 1 : 0;
            }
        }
        assertTrue(busy > PROBLEMS / 4, "only " + busy + " plans are worth following");
    }

    @Test
    void plans_of_begun_days_obey_every_rule_seeds_from_0() {
        int begun = 0;
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem before = RandomProblems.of(seed);
            Plan posted = PackedPlans.pack(before, seed, 50);
            Problem problem = RandomProblems.later(before, posted, 30 + seed % 200, seed);
            if (!ProblemCheck.faults(problem).isEmpty()) {
                continue;
            }
            Plan follow = PackedPlans.follow(problem);
            Plan packed = PackedPlans.pack(problem, seed, 200);
            PackedPlans.first(problem);
            assertFalse(follow.isBetterThan(packed), "seed " + seed);
            begun += problem.jobs().stream().anyMatch(Problem.Job::hasBegun) ? 1 : 0;
        }
        assertTrue(begun > PROBLEMS / 2, "only " + begun + " days have begun work");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_running_cost_is_the_checkers_after_every_move_seed(long seed) {
        Problem before = RandomProblems.of(seed);
        Plan posted = PackedPlans.pack(before, seed, 50);
        Problem later = RandomProblems.later(before, posted, 60, seed);
        Problem problem = ProblemCheck.faults(later).isEmpty() ? later : before;
        FlatProblem flat = new FlatProblem(problem);
        boolean[] left = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            left[job] = flat.hopeless[job] != null;
        }
        Decoder decoder = new Decoder(flat);
        decoder.leaveOut(left);
        Tally tally = new Tally(decoder);
        Moves moves = new Moves(flat, decoder.outlook, new Chance(seed), left);
        Solution solution = Solution.plain(flat);
        Timetable table = new Timetable(flat);
        Trail trail = new Trail(decoder, table);
        decoder.decode(solution);
        table.take(decoder);
        trail.follow(table.order);
        int counted = 0;
        for (int move = 0; move < 500 && !moves.isEmpty(); move++) {
            System.arraycopy(table.order, 0, solution.list, 0, flat.tasks);
            Solution changed = solution.copy();
            int kept = moves.change(changed, table);
            decoder.decode(changed, trail, kept);
            tally.count();
            if (tally.stranded == 0) {
                solution.become(changed);
                table.take(decoder);
                trail.follow(table.order);
                table.judge(tally);
                PlanCheck check = PlanCheck.of(problem, new PlanWriter(flat, decoder.outlook, table).write());
                assertEquals(List.of(), check.breaches(), "move " + move);
                assertEquals(check.cost(), tally.cost, "move " + move);
                counted++;
            }
            long energy = tally.energy;
            tally.countAll();
            assertEquals(energy, tally.energy, "move " + move);
        }
        assertTrue(counted > 100 || moves.isEmpty(), "only " + counted + " moves made a plan");
    }

    /** Closed times let the decoder begin again, after which nothing of the plan before is as it was. */
    @ParameterizedTest
    @ValueSource(longs = {79, 549, 1576, 3607})
    void a_list_decoded_from_the_beginning_again_takes_nothing_over_seed(long seed) {
        for (int search = 1; search <= 3; search++) {
            PackedPlans.pack(RandomProblems.of(seed), search, 100);
        }
    }

    @Test
    void the_same_seed_and_tries_give_the_same_plan() {
        List<Plan> once = new ArrayList<>();
        List<Plan> again = new ArrayList<>();
        for (int seed = 0; seed < 20; seed++) {
            once.add(PackedPlans.pack(RandomProblems.of(seed), 7, 400));
            again.add(PackedPlans.pack(RandomProblems.of(seed), 7, 400));
        }
        assertEquals(once, again);
    }
}
