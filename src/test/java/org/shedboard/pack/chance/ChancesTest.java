package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;

/** All numbers are invented, the probabilities are those of the log-normal distribution. */
class ChancesTest {
    private static final int DRAWS = 4000;
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), Span.of(0, 5000));
    private static final Problem.Job QUAD = job("Quad", 100, 0.5);

    private static Problem.Job job(String id, int minutes, double spread) {
        Problem.Task task = Problem.Task.of("do", "service", minutes).withSpread(spread);
        return Problem.Job.of(id, Problem.Stay.nowhere(task));
    }

    private static Problem day(Problem.Job... jobs) {
        return Problem.of(0, 5000, List.of(), List.of(PAT), List.of(jobs));
    }

    private static Chances chances(Problem problem, Plan plan) {
        return Chances.of(problem, plan, DRAWS, 1);
    }

    @Test
    void half_the_replays_end_by_the_median_and_five_in_six_by_one_deviation_more() {
        Problem problem = day(QUAD);
        Chances chances = chances(problem, PackedPlans.first(problem));
        assertEquals(0.5, chances.chance("Quad", 100), 4 * chances.error("Quad", 100));
        // 100 e^0.5 = 164.87; the normal distribution has 84.13 % below one deviation
        assertEquals(0.8413, chances.chance("Quad", 165), 4 * chances.error("Quad", 165) + 0.003);
    }

    @Test
    void the_error_is_that_of_a_share_of_so_many_draws() {
        Problem problem = day(QUAD);
        Chances chances = chances(problem, PackedPlans.first(problem));
        double share = chances.chance("Quad", 100);
        assertEquals(Math.sqrt(share * (1 - share) / DRAWS), chances.error("Quad", 100), 1e-12);
        assertEquals(0, chances.error("Quad", 5000), "everything is finished by then");
    }

    @Test
    void the_minute_with_a_chance_is_the_smallest_one_that_has_it() {
        Problem problem = day(QUAD);
        Chances chances = chances(problem, PackedPlans.first(problem));
        int minute = chances.minuteWith("Quad", 0.8).orElseThrow();
        assertTrue(chances.chance("Quad", minute) >= 0.8);
        assertTrue(chances.chance("Quad", minute - 1) < 0.8);
        assertEquals(OptionalInt.empty(), chances.minuteWith("nobody's", 0.8));
    }

    @Test
    void without_any_spread_every_replay_is_the_plan_or_earlier() {
        for (int seed = 0; seed < 100; seed++) {
            Problem problem = RandomProblems.of(seed);
            Plan plan = PackedPlans.pack(problem, 1, 100);
            Chances chances = Chances.of(problem, plan, 2, 1);
            for (Problem.Job job : problem.jobs()) {
                int[] finishes = chances.finishes(job.id());
                OptionalInt planned = plan.finishOf(job);
                assertEquals(planned.isPresent(), finishes.length > 0);
                assertTrue(planned.isEmpty() || finishes[1] <= planned.getAsInt(), "seed " + seed + " " + job.id());
            }
        }
    }

    @Test
    void one_more_job_does_not_change_the_draws_of_the_others() {
        Problem alone = day(QUAD);
        Problem both = day(QUAD, job("Zebra", 30, 0.7).withArrives(4000));
        assertArrayEquals(
                chances(alone, PackedPlans.first(alone)).finishes("Quad"),
                chances(both, PackedPlans.first(both)).finishes("Quad"));
    }

    @Test
    void shared_spreads_move_all_tasks_of_a_job_or_person_together() {
        Problem.Job two = Problem.Job.of(
                        "Two",
                        Problem.Stay.nowhere(
                                Problem.Task.of("a", "service", 100), Problem.Task.of("b", "service", 100)))
                .withSharedSpread(0.5);
        Problem problem = day(two);
        Chances chances = chances(problem, PackedPlans.first(problem));
        assertEquals(0.8413, chances.chance("Two", 330), 0.03, "one deviation moves both: 200 e^0.5 = 329.7");
        Problem slow = day(two.withSharedSpread(0)).withPeople(List.of(PAT.withSharedSpread(0.5)));
        assertEquals(0.8413, chances(slow, PackedPlans.first(slow)).chance("Two", 330), 0.03);
    }

    @Test
    void what_follows_waits_for_what_takes_longer() {
        Problem problem = day(QUAD, job("Next", 10, 0));
        Plan plan = PackedPlans.pack(problem.withJobs(List.of(QUAD.withWeight(50), job("Next", 10, 0))), 1, 100);
        int[] quad = chances(problem, plan).finishes("Quad");
        int[] next = chances(problem, plan).finishes("Next");
        for (int draw = 0; draw < DRAWS; draw++) {
            assertEquals(quad[draw] + 10, next[draw]);
        }
    }
}
