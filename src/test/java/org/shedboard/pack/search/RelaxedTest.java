package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;
import org.shedboard.pack.check.PlanCheck;

/**
 * What makes a day easier never makes its plan worse, because the posted plan is always among those looked at. That this needs saying
 * is known from R. L. Graham, "Bounds on multiprocessing timing anomalies" (SIAM J. Appl. Math. 17, 1969), whose example this is: done
 * in the order of one list by whoever is free first, it takes longer with a fourth worker, with shorter times and with less to wait for.
 */
class RelaxedTest {
    private static final int SEEDS = 60 * Integer.getInteger("proof.scale", 1);

    /** Minutes of T1 to T9, and what each waits for, both counted from 0. */
    private static final int[] MINUTES = {3, 2, 2, 2, 4, 4, 4, 4, 9};

    private static final int[][] AFTER = {{}, {}, {}, {}, {3}, {3}, {3}, {3}, {0}};
    private static final int[][] LESS_AFTER = {{}, {}, {}, {}, {}, {}, {3}, {3}, {0}};
    private static final int[] IN_ORDER = {0, 1, 2, 3, 4, 5, 6, 7, 8};

    private static int[] shorter() {
        return Arrays.stream(MINUTES).map(minutes -> minutes - 1).toArray();
    }

    @Test
    void the_list_alone_takes_longer_when_things_get_easier() {
        assertEquals(12, listed(MINUTES, AFTER, 3, IN_ORDER).cost());
        assertEquals(15, listed(MINUTES, AFTER, 4, IN_ORDER).cost());
        assertEquals(13, listed(shorter(), AFTER, 3, IN_ORDER).cost());
        assertEquals(16, listed(MINUTES, LESS_AFTER, 3, IN_ORDER).cost());
        assertEquals(
                14,
                listed(MINUTES, AFTER, 3, new int[] {0, 1, 3, 4, 5, 2, 8, 6, 7}).cost());
    }

    @ParameterizedTest
    @CsvSource({
        "one worker more, 4, 0, false",
        "shorter, 3, 1, false",
        "less to wait for, 3, 0, true",
        "all, 4, 1, true"
    })
    void the_plan_does_not(String what, int workers, int shorter, boolean lessAfter) {
        Plan posted = listed(MINUTES, AFTER, 3, IN_ORDER);
        int[] minutes = shorter == 1 ? shorter() : MINUTES;
        Problem easier = day(minutes, lessAfter ? LESS_AFTER : AFTER, workers).withPosted(posted);
        Plan follow = PackedPlans.follow(easier);
        Plan packed = PackedPlans.pack(easier, 1, 500);
        assertTrue(follow.cost() <= posted.cost(), what + ": " + follow);
        assertTrue(packed.cost() <= follow.cost(), what + ": " + packed);
    }

    @Test
    void with_a_place_or_a_person_more_or_less_to_wait_for_a_posted_plan_stays_as_good_seeds_from_0() {
        int compared = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Problem before = RandomProblems.of(seed).withCosts(Costs.STANDARD.withStability(seed % 2, 20 * (seed % 2)));
            Plan posted = PackedPlans.pack(before, seed, 100);
            for (Problem easier : List.of(withMorePlaces(before), withMorePeople(before), withLessAfter(before))) {
                Problem asked = easier.withPosted(posted);
                assertTrue(PlanCheck.of(asked, posted).isLegal(), "seed " + seed);
                assertFalse(posted.isBetterThan(PackedPlans.follow(asked)), "followed, seed " + seed);
                assertFalse(posted.isBetterThan(PackedPlans.pack(asked, seed, 100)), "packed, seed " + seed);
                compared++;
            }
        }
        assertEquals(3 * SEEDS, compared);
    }

    private static Problem withMorePlaces(Problem problem) {
        List<Problem.Place> places = new ArrayList<>(problem.places());
        places.add(0, Problem.Place.of("more", "hoist"));
        return problem.withPlaces(places);
    }

    private static Problem withMorePeople(Problem problem) {
        List<Problem.Person> people = new ArrayList<>(problem.people());
        people.add(0, Problem.Person.of("more", Set.of("wash", "service", "hoist"), Span.of(0, 600)));
        return problem.withPeople(people);
    }

    private static Problem withLessAfter(Problem problem) {
        return problem.withJobs(problem.jobs().stream()
                .map(job -> job.withStays(job.stays().stream()
                        .map(stay -> stay.withTasks(stay.tasks().stream()
                                .map(Problem.Task::withAfter)
                                .toList()))
                        .toList()))
                .toList());
    }

    private static Problem day(int[] minutes, int[][] after, int workers) {
        List<Problem.Task> tasks = new ArrayList<>();
        for (int task = 0; task < minutes.length; task++) {
            String[] names =
                    Arrays.stream(after[task]).mapToObj(waited -> "T" + waited).toArray(String[]::new);
            tasks.add(Problem.Task.of("T" + task, "work", minutes[task]).withAfter(names));
        }
        List<Problem.Person> people = new ArrayList<>();
        for (int worker = 0; worker < workers; worker++) {
            people.add(Problem.Person.of("M" + worker, Set.of("work"), Span.of(0, 100)));
        }
        Problem.Job job = Problem.Job.of("J", Problem.Stay.nowhere(tasks.toArray(Problem.Task[]::new)));
        return Problem.of(0, 100, List.of(), people, List.of(job)).withCosts(Costs.MAKESPAN_ONLY);
    }

    /** Whoever is free takes the first task of the list that can start. */
    private static Plan listed(int[] minutes, int[][] after, int workers, int[] list) {
        int[] end = new int[minutes.length];
        Arrays.fill(end, Integer.MAX_VALUE);
        int[] freeFrom = new int[workers];
        List<Plan.TaskTime> times = new ArrayList<>();
        for (int minute = 0; times.size() < minutes.length; minute++) {
            for (int worker = 0; worker < workers; worker++) {
                int task = freeFrom[worker] <= minute ? next(list, after, end, minute) : -1;
                if (task >= 0) {
                    end[task] = minute + minutes[task];
                    freeFrom[worker] = end[task];
                    times.add(new Plan.TaskTime(
                            "J", 0, "T" + task, Optional.of("M" + worker), List.of(), minute, end[task]));
                }
            }
        }
        int makespan = Arrays.stream(end).max().orElseThrow();
        Plan plan = new Plan(makespan, 0, List.of(), List.of(), times, 0, 0, 0);
        return PackedPlans.checked(day(minutes, after, workers), plan);
    }

    private static int next(int[] list, int[][] after, int[] end, int minute) {
        return Arrays.stream(list)
                .filter(task -> end[task] == Integer.MAX_VALUE)
                .filter(task -> Arrays.stream(after[task]).allMatch(waited -> end[waited] <= minute))
                .findFirst()
                .orElse(-1);
    }
}
