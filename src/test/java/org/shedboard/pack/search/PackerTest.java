package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Search;
import org.shedboard.pack.Span;

/** One hoist, two people, a few machines. All numbers are invented. */
class PackerTest {
    private static final Problem.Place HOIST = Problem.Place.of("H1", "hoist").withRatedKg(1000);
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), Span.of(0, 480));
    private static final Problem.Person SAM = Problem.Person.of("Sam", Set.of("service"), Span.of(0, 480));

    private static final Problem.Job QUAD = machine("Quad", 60);
    private static final Problem.Job MOWER = machine("Mower", 30);
    private static final Problem DAY = day(QUAD, MOWER);

    private static Problem day(Problem.Job... jobs) {
        return Problem.of(0, 480, List.of(HOIST), List.of(PAT, SAM), List.of(jobs));
    }

    private static Problem.Job machine(String id, int minutes) {
        return Problem.Job.of(id, Problem.Stay.of("hoist", Problem.Task.of("service", "service", minutes)));
    }

    @Test
    void the_shorter_machine_goes_first_when_nobody_was_promised_anything() {
        Plan plan = PackedPlans.pack(DAY, 1, 200);
        assertEquals(OptionalInt.of(30), plan.finishOf(MOWER));
        assertEquals(OptionalInt.of(90), plan.finishOf(QUAD));
    }

    @Test
    void a_promise_goes_before_the_shorter_machine() {
        Plan plan = PackedPlans.pack(day(QUAD.withPromise(60), MOWER), 1, 200);
        assertEquals(OptionalInt.of(60), plan.finishOf(QUAD));
    }

    @Test
    void an_empty_day_has_an_empty_plan() {
        Plan plan = PackedPlans.pack(day(), 1, 100);
        assertEquals(0, plan.cost());
        assertEquals(List.of(), plan.tasks());
    }

    @Test
    void a_machine_too_heavy_for_every_hoist_is_left_out_with_the_reason() {
        Plan plan = PackedPlans.pack(day(QUAD.withMassKg(1400), MOWER), 1, 100);
        assertEquals(List.of(new Plan.Unplaced("Quad", "no hoist rated for 1400 kg")), plan.unplaced());
    }

    @Test
    void one_more_machine_placed_beats_any_cost() {
        Problem.Job heavy = machine("Heavy", 400).withWeight(1000).withPromise(400);
        Problem full = day(heavy, machine("A", 40), machine("B", 40));
        Plan plan = PackedPlans.pack(full, 1, 2000);
        assertEquals(List.of(), plan.unplaced());
        Plan over = PackedPlans.pack(day(heavy, machine("A", 40), machine("B", 41)), 1, 2000);
        assertEquals(1, over.unplaced().size());
    }

    @Test
    void nobody_is_left_alone_with_the_sign_off_of_their_own_work() {
        Problem.Task fit = Problem.Task.of("fit", "service", 10);
        Problem.Task sign = Problem.Task.of("sign", "sign-off", 5).withNotBy("fit");
        Problem.Person boss = Problem.Person.of("Boss", Set.of("service", "sign-off"), Span.of(0, 480));
        Problem.Person late = Problem.Person.of("Late", Set.of("service", "welding"), Span.of(100, 480));
        Problem problem = Problem.of(
                0, 480, List.of(), List.of(boss, late), List.of(Problem.Job.of("J", Problem.Stay.nowhere(fit, sign))));
        assertEquals(
                "Late",
                PackedPlans.first(problem)
                        .findTask("J", 0, "fit")
                        .orElseThrow()
                        .people()
                        .get(0));
    }

    @Test
    void following_a_plan_that_can_be_kept_changes_nothing() {
        Plan posted = PackedPlans.pack(day(QUAD.withArrives(20), MOWER), 1, 500);
        Problem same = day(QUAD.withArrives(20), MOWER).withPosted(posted);
        assertEquals(posted.tasks(), PackedPlans.follow(same).tasks());
    }

    @Test
    void following_leaves_gaps_as_they_are_posted() {
        Plan posted = PackedPlans.pack(day(QUAD.withArrives(200)), 1, 100);
        Problem earlier = day(QUAD).withPosted(posted);
        assertEquals(OptionalInt.of(260), PackedPlans.follow(earlier).finishOf(QUAD));
    }

    @Test
    void work_that_takes_longer_pushes_what_follows() {
        Plan posted = PackedPlans.pack(DAY, 1, 200);
        Problem.Task going =
                MOWER.stays().get(0).tasks().get(0).withStarted(new Problem.Started(Optional.of("Pat"), 0, 25));
        Problem.Job slow = MOWER.withStays(
                List.of(MOWER.stays().get(0).withTasks(List.of(going)).withPlace("H1")));
        Problem later = day(QUAD, slow).withNow(20).withPosted(posted);
        Plan plan = PackedPlans.follow(later);
        assertEquals(OptionalInt.of(45), plan.finishOf(slow));
        assertEquals(OptionalInt.of(105), plan.finishOf(QUAD));
    }

    @Test
    void what_is_held_until_later_does_not_hold_up_what_was_to_come_after_it() {
        Plan posted = PackedPlans.pack(DAY, 1, 200);
        Problem.Task waits = MOWER.stays().get(0).tasks().get(0).withNotBefore(300);
        Problem.Job held = MOWER.withStays(List.of(MOWER.stays().get(0).withTasks(List.of(waits))));
        Plan plan = PackedPlans.follow(day(QUAD, held).withPosted(posted));
        assertEquals(OptionalInt.of(330), plan.finishOf(held));
        assertEquals(OptionalInt.of(90), plan.finishOf(QUAD));
    }

    @Test
    void a_walk_in_is_added_to_the_posted_plan_where_it_disturbs_least() {
        Plan posted = PackedPlans.pack(day(QUAD.withPromise(60)), 1, 100);
        Problem.Job walkIn = machine("Walk-in", 10);
        Problem problem = day(QUAD.withPromise(60), walkIn).withPosted(posted);
        Plan plan = PackedPlans.follow(problem);
        assertEquals(OptionalInt.of(60), plan.finishOf(QUAD));
        assertEquals(OptionalInt.of(70), plan.finishOf(walkIn));
    }

    @Test
    void when_the_posted_person_is_gone_another_does_the_work() {
        Plan posted = PackedPlans.pack(DAY, 1, 200);
        Problem.Person gone = Problem.Person.of("Sam", Set.of("service"));
        Problem sick = DAY.withPeople(List.of(PAT, gone)).withPosted(posted);
        Problem sick2 = DAY.withPeople(List.of(Problem.Person.of("Pat", Set.of("service")), SAM))
                .withPosted(posted);
        assertEquals(List.of(), PackedPlans.follow(sick).unplaced());
        assertEquals(List.of(), PackedPlans.follow(sick2).unplaced());
    }

    @Test
    void a_stable_plan_is_kept_when_moving_costs_more_than_it_gains() {
        Plan posted = PackedPlans.pack(day(QUAD.withArrives(200), MOWER), 1, 500);
        Problem problem = day(QUAD, MOWER).withPosted(posted).withCosts(Costs.STANDARD.withStability(5, 50));
        assertEquals(posted.tasks(), PackedPlans.pack(problem, 1, 3000).tasks());
    }

    @Test
    void better_plans_are_told_as_they_come_and_the_last_one_is_the_result() {
        List<Plan> told = new ArrayList<>();
        Problem problem = RandomProblems.of(3);
        Plan last = Packer.pack(problem, Search.of(1, 3000), () -> false, told::add);
        for (int index = 1; index < told.size(); index++) {
            assertFalse(told.get(index - 1).isBetterThan(told.get(index)));
        }
        told.forEach(plan -> PackedPlans.checked(problem, plan));
        assertEquals(last, told.get(told.size() - 1));
    }

    @Test
    void a_stopped_search_still_gives_a_plan() {
        Problem problem = RandomProblems.of(5);
        int[] asked = {0};
        Plan plan = Packer.pack(problem, Search.of(1, 1_000_000), () -> ++asked[0] > 100, told -> {});
        PackedPlans.checked(problem, plan);
        assertTrue(asked[0] < 300, "went on for " + asked[0] + " tries");
    }

    @Test
    void a_begun_job_that_cannot_be_finished_is_refused() {
        Problem.Task going =
                MOWER.stays().get(0).tasks().get(0).withStarted(new Problem.Started(Optional.of("Pat"), 0, 481));
        Problem.Job endless = MOWER.withStays(
                List.of(MOWER.stays().get(0).withTasks(List.of(going)).withPlace("H1")));
        assertThrows(IllegalArgumentException.class, () -> Packer.first(day(endless)));
    }
}
