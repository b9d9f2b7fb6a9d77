package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/** All numbers are invented. */
class InsertionTest {
    private static final int PROBLEMS = 200 * Integer.getInteger("proof.scale", 1);
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), Span.of(0, 500));

    private static Problem.Job job(String id, int minutes) {
        return Problem.Job.of(id, Problem.Stay.of("bay", Problem.Task.of("do", "service", minutes)));
    }

    private static Problem posted(List<Problem.Job> jobs, Problem.Job more) {
        Problem without = Problem.of(0, 500, List.of(Problem.Place.of("Bay", "bay")), List.of(PAT), jobs);
        List<Problem.Job> all = new ArrayList<>(jobs);
        all.add(more);
        return without.withJobs(all).withPosted(PackedPlans.pack(without, 1, 100));
    }

    private static int startOf(Problem problem, String job) {
        Plan plan = PackedPlans.checked(problem, Insertion.of(problem, "More").orElseThrow());
        return plan.findTask(job, 0, "do").orElseThrow().start();
    }

    @Test
    void a_job_goes_into_a_gap_that_is_just_long_enough() {
        Problem problem =
                posted(List.of(job("A", 40).withWeight(9), job("B", 60).withArrives(70)), job("More", 30));
        assertEquals(40, startOf(problem, "More"));
        assertEquals(70, startOf(problem, "B"));
    }

    @Test
    void a_job_that_does_not_matter_goes_behind_all_others_and_one_that_does_pushes_them() {
        List<Problem.Job> others =
                List.of(job("A", 40).withPromise(40), job("B", 60).withPromise(100));
        assertEquals(100, startOf(posted(others, job("More", 30)), "More"));
        Problem urgent = posted(others, job("More", 30).withPromise(70).withWeight(9));
        assertEquals(40, startOf(urgent, "More"));
        assertEquals(70, startOf(urgent, "B"));
    }

    @Test
    void a_job_that_has_no_room_before_the_horizon_is_not_fitted() {
        assertEquals(Optional.empty(), Insertion.of(posted(List.of(job("A", 400)), job("More", 120)), "More"));
        Problem skill = posted(
                List.of(job("A", 40)), Problem.Job.of("More", Problem.Stay.nowhere(Problem.Task.of("do", "wash", 5))));
        assertEquals(Optional.empty(), Insertion.of(skill, "More"));
        assertThrows(IllegalArgumentException.class, () -> Insertion.of(skill, "Nobody's"));
    }

    @Test
    void a_job_fitted_in_obeys_every_rule_and_leaves_everyones_order_or_is_the_posted_plan_followed_seeds_from_0() {
        int fitted = 0;
        int fresh = 0;
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem whole = Unsure.of(RandomProblems.of(seed)).withCosts(Costs.STANDARD.withStability(1, 20));
            Problem.Job more = whole.jobs().get(0);
            Problem others = whole.withJobs(whole.jobs().subList(1, whole.jobs().size()));
            Plan plan = PackedPlans.pack(others, seed, 100);
            Problem later = seed % 2 == 0 ? others : RandomProblems.later(others, plan, 30 + seed % 100, seed);
            if (plan.unplaced().isEmpty() && ProblemCheck.faults(later).isEmpty()) {
                List<Problem.Job> all = new ArrayList<>(later.jobs());
                all.add(seed % all.size(), more);
                Problem problem = later.withJobs(all).withPosted(plan);
                fitted += checked(problem, more, seed) ? 1 : 0;
                fresh++;
            }
        }
        assertTrue(fitted > fresh * 7 / 10, "only " + fitted + " of " + fresh + " were fitted");
    }

    private static boolean checked(Problem problem, Problem.Job more, long seed) {
        Optional<Plan> found = Insertion.of(problem, more.id());
        if (found.isEmpty() || !found.get().unplaced().isEmpty()) {
            return false;
        }
        PackedPlans.checked(problem, found.get());
        Plan followed = PackedPlans.follow(problem);
        if (found.get().tasks().equals(followed.tasks())) {
            return true;
        }
        MeanCost less = MeanCost.difference(problem, found.get(), followed, 100, 11);
        assertTrue(less.points() <= 0 || followed.unplaced().size() > 0, () -> "seed " + seed + ": " + less);
        Plan before = PackedPlans.follow(problem.withJobs(
                problem.jobs().stream().filter(job -> !job.equals(more)).toList()));
        for (Problem.Person person : problem.people()) {
            assertEquals(
                    order(problem, before, person.id(), more),
                    order(problem, found.get(), person.id(), more),
                    "seed " + seed);
        }
        return true;
    }

    private static List<String> order(Problem problem, Plan plan, String person, Problem.Job without) {
        FlatProblem flat = new FlatProblem(problem);
        PlanReading reading = new PlanReading(flat, plan);
        List<Integer> own = new ArrayList<>();
        for (int task : reading.order) {
            boolean theirs = contains(reading.who[task], flat.personNumber(Optional.of(person)));
            if (theirs
                    && flat.state[task] != FlatProblem.DONE
                    && !flat.job(flat.jobOfTask[task]).equals(without)) {
                own.add(task);
            }
        }
        own.sort(Comparator.comparingInt(task -> reading.start[task]));
        return own.stream()
                .map(task ->
                        flat.job(flat.jobOfTask[task]).id() + " " + flat.stayOfTask[task] + " " + flat.task[task].id())
                .toList();
    }

    private static boolean contains(int[] people, int person) {
        return Arrays.stream(people).anyMatch(one -> one == person);
    }
}
