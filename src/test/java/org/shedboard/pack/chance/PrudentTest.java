package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Search;
import org.shedboard.pack.Span;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.fault.ProblemCheck;

/** All numbers are invented. */
class PrudentTest {
    private static final int DRAWS = 4000;
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), Span.of(0, 3000));
    private static final Problem.Job WILD = job("Wild", 60, 0.5).withWeight(3);
    private static final Problem.Job SURE = job("Sure", 30, 0).withPromise(95);
    private static final Problem DAY = Problem.of(0, 3000, List.of(), List.of(PAT), List.of(WILD, SURE));

    private static Problem.Job job(String id, int minutes, double spread) {
        return Problem.Job.of(
                id,
                Problem.Stay.nowhere(Problem.Task.of("do", "service", minutes).withSpread(spread)));
    }

    /** The mean of a log-normal draw with the median 60 and the spread 0.5 is 60 e^(0.125) = 67.989. */
    private static final double MEAN_OF_WILD = 67.989;

    @Test
    void the_mean_cost_is_that_of_the_mean_minutes_where_no_promise_is_at_stake() {
        Plan sureFirst = PackedPrudently.pack(DAY, Search.of(1, 600));
        MeanCost mean = MeanCost.of(DAY, sureFirst, DRAWS, 3);
        assertEquals(30 + 3 * (30 + MEAN_OF_WILD), mean.points(), 4 * mean.error());
        // the deviation of that draw is 67.989 (e^0.25 - 1)^0.5 = 36.234, and it counts three times
        assertEquals(3 * 36.234 / Math.sqrt(DRAWS), mean.error(), 0.1);
    }

    @Test
    void a_promise_that_is_only_kept_when_nothing_takes_longer_is_put_first() {
        Plan plain = PackedPlans.pack(DAY, 1, 600);
        Plan prudent = PackedPlans.checked(DAY, PackedPrudently.pack(DAY, Search.of(1, 600)));
        assertEquals(60, plain.findTask("Sure", 0, "do").orElseThrow().start(), "270 points against 300");
        assertEquals(0, prudent.findTask("Sure", 0, "do").orElseThrow().start());
        MeanCost less = MeanCost.difference(DAY, prudent, plain, DRAWS, 3);
        assertTrue(less.points() < -10 * less.error(), less::toString);
    }

    @Test
    void where_nothing_varies_it_is_the_plan_that_costs_least() {
        for (int seed = 0; seed < 30; seed++) {
            Problem problem = RandomProblems.of(seed);
            Plan best =
                    Prudent.pick(problem, List.of(PackedPlans.first(problem), PackedPlans.pack(problem, 1, 200)), 3, 1);
            PackedPlans.checked(problem, best);
            assertFalse(PackedPlans.pack(problem, 1, 200).isBetterThan(best), "seed " + seed);
        }
    }

    @Test
    void prudent_plans_obey_every_rule_and_cost_less_on_days_they_have_not_seen_seeds_from_0() {
        double prudentSum = 0;
        double plainSum = 0;
        for (int seed = 0; seed < 60; seed++) {
            Problem problem = Unsure.of(RandomProblems.of(seed).withCosts(Costs.STANDARD));
            Plan plain = PackedPlans.pack(problem, seed, 400);
            Plan prudent = PackedPlans.checked(problem, PackedPrudently.pack(problem, Search.of(seed, 400)));
            if (prudent.unplaced().size() == plain.unplaced().size()) {
                prudentSum += MeanCost.of(problem, prudent, 300, seed + 1000).points();
                plainSum += MeanCost.of(problem, plain, 300, seed + 1000).points();
            }
        }
        assertTrue(prudentSum < 0.98 * plainSum, prudentSum + " is not clearly less than " + plainSum);
    }

    @Test
    void begun_days_are_packed_prudently_by_the_rules_too_seeds_from_0() {
        int begun = 0;
        for (int seed = 0; seed < 60; seed++) {
            Problem before = Unsure.of(RandomProblems.of(seed));
            Problem problem = RandomProblems.later(before, PackedPlans.pack(before, seed, 50), 30 + seed, seed);
            if (ProblemCheck.faults(problem).isEmpty()) {
                PackedPlans.checked(problem, PackedPrudently.pack(problem, Search.of(seed, 200)));
                begun++;
            }
        }
        assertTrue(begun > 30, "only " + begun + " days have begun work");
    }

    @Test
    void longer_work_is_longer_by_the_spreads_of_task_and_machine_together() {
        Problem longer = Prudent.longer(
                Problem.of(
                        0,
                        1000,
                        List.of(),
                        List.of(PAT),
                        List.of(job("J", 100, 0.3).withSharedSpread(0.4))),
                1);
        // e^0.5 = 1.6487
        assertEquals(165, longer.jobs().get(0).stays().get(0).tasks().get(0).handsOn());
    }

    @Test
    void promises_kept_are_counted_on_the_same_days_for_both_plans() {
        Plan plain = PackedPlans.pack(DAY, 1, 600);
        Plan prudent = PackedPrudently.pack(DAY, Search.of(1, 600));
        KeptPromises kept = Prudent.judged(DAY, plain, prudent, 1);
        // after Wild, of 60 minutes with a spread of 0.5, Sure is over by 95 when Wild takes at most 65 minutes:
        // ln(65.5 / 60) / 0.5
        // = 0.17540, and the normal distribution has 0.56962 below it; first, it is over by 30 for sure
        double error = Math.sqrt(0.56962 * (1 - 0.56962) / Prudent.JUDGING_DRAWS);
        assertEquals(0.56962, kept.one(), 4 * error);
        assertEquals(1, kept.other(), 1e-9);
        assertEquals(error, kept.error(), 0.1 * error);
        assertTrue(kept.isMore());
    }

    @Test
    void a_plan_keeps_no_more_than_itself() {
        Plan plan = PackedPlans.first(DAY);
        KeptPromises kept = Prudent.judged(DAY, plan, plan, 1);
        assertEquals(0, kept.more());
        assertFalse(kept.isMore());
        assertFalse(new KeptPromises(4, 0.1, 0.06).isMore());
    }

    @Test
    void promises_on_no_days_are_refused() {
        Plan plan = PackedPlans.first(DAY);
        assertThrows(IllegalArgumentException.class, () -> KeptPromises.of(DAY, plan, plan, 0, 1));
    }

    @Test
    void a_mean_of_no_days_is_refused() {
        Plan plan = PackedPlans.first(DAY);
        assertThrows(IllegalArgumentException.class, () -> MeanCost.of(DAY, plan, 0, 1));
    }
}
