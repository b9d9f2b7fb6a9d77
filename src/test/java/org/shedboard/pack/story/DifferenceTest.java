package org.shedboard.pack.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.shedboard.pack.Span;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.fault.ProblemCheck;

/** All numbers are invented. */
class DifferenceTest {
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), Span.of(0, 500));
    private static final Problem.Person KIM = Problem.Person.of("Kim", Set.of("service"), Span.of(0, 500));
    private static final Problem.Job QUAD = Problem.Job.of(
                    "Quad", Problem.Stay.of("bay", Problem.Task.of("fit", "service", 30)))
            .withPromise(40);
    private static final Problem.Job BIKE = Problem.Job.of(
                    "Bike", Problem.Stay.of("bay", Problem.Task.of("oil", "service", 20)))
            .withPromise(20);
    private static final Problem DAY = Problem.of(
            0,
            500,
            List.of(Problem.Place.of("B1", "bay"), Problem.Place.of("B2", "bay")),
            List.of(PAT, KIM),
            List.of(QUAD, BIKE));

    private static Plan plan(Object... cells) {
        java.util.ArrayList<Plan.StayPlace> stays = new java.util.ArrayList<>();
        java.util.ArrayList<Plan.TaskTime> tasks = new java.util.ArrayList<>();
        for (int at = 0; at < cells.length; at += 6) {
            String job = (String) cells[at];
            int from = (int) cells[at + 4];
            int to = (int) cells[at + 5];
            stays.add(new Plan.StayPlace(job, 0, (String) cells[at + 2], from, to));
            tasks.add(new Plan.TaskTime(
                    job, 0, (String) cells[at + 1], Optional.of((String) cells[at + 3]), List.of(), from, to));
        }
        return new Plan(0, 0, List.of(), stays, tasks, 0, 0, 0);
    }

    private static final Plan ONE = plan("Quad", "fit", "B1", "Pat", 0, 30, "Bike", "oil", "B1", "Pat", 30, 50);

    @Test
    void the_same_plan_changes_nothing() {
        assertEquals(new Difference(List.of(), 0), Difference.between(DAY, ONE, ONE));
    }

    @Test
    void what_moves_is_told_from_and_to_with_what_it_gains() {
        Plan other = plan("Quad", "fit", "B1", "Pat", 0, 30, "Bike", "oil", "B2", "Kim", 0, 20);
        Difference difference = Difference.between(DAY, ONE, other);
        Difference.Changed bike = new Difference.Changed(
                "Bike",
                List.of(
                        new Difference.Move.Relocated(0, "B1", "B2"),
                        new Difference.Move.HandedOver(0, "oil", List.of("Pat"), List.of("Kim")),
                        new Difference.Move.Retimed(0, "oil", 30, 0)),
                OptionalInt.of(50),
                OptionalInt.of(20),
                Difference.Promise.NOW_KEPT,
                100 * 30 + 30);
        assertEquals(new Difference(List.of(bike), 0), difference);
        assertEquals(3030, difference.gain());
        assertEquals(List.of(1, 0, 1), List.of(difference.earlier(), difference.later(), difference.promises()));
    }

    @Test
    void what_gets_worse_is_told_too_and_the_way_back_gains_as_much_as_the_way_there_loses() {
        Plan other = plan("Bike", "oil", "B1", "Pat", 0, 20, "Quad", "fit", "B1", "Pat", 20, 50);
        Difference there = Difference.between(DAY, ONE, other);
        assertEquals(
                List.of(Difference.Promise.NOW_MISSED, Difference.Promise.NOW_KEPT),
                there.jobs().stream().map(Difference.Changed::promise).toList());
        assertEquals(List.of(1, 1, 0), List.of(there.earlier(), there.later(), there.promises()));
        assertEquals(-there.gain(), Difference.between(DAY, other, ONE).gain());
    }

    @Test
    void a_job_that_comes_in_or_goes_out_does_not_move() {
        Plan alone = plan("Quad", "fit", "B1", "Pat", 0, 30);
        Difference in = Difference.between(DAY, alone, ONE);
        assertEquals(
                List.of(new Difference.Changed(
                        "Bike",
                        List.of(),
                        OptionalInt.empty(),
                        OptionalInt.of(50),
                        Difference.Promise.STILL_MISSED,
                        -3050)),
                in.jobs());
        assertEquals(1, in.earlier());
        assertEquals(1, Difference.between(DAY, ONE, alone).later());
    }

    @Test
    void the_gain_is_the_difference_of_the_checkers_costs_seeds_from_0() {
        int moved = 0;
        for (int seed = 0; seed < 200; seed++) {
            Problem before = RandomProblems.of(seed).withCosts(new Costs(100, 5, 1, 10, 3, 2, 20));
            Problem later = RandomProblems.later(before, PackedPlans.pack(before, seed, 50), 30 + seed % 200, seed);
            Problem problem = seed % 2 == 0 || !ProblemCheck.faults(later).isEmpty() ? before : later;
            Plan one = PackedPlans.first(problem);
            Plan other = PackedPlans.pack(problem, seed, 100);
            Difference difference = Difference.between(problem, one, other);
            long gain = PlanCheck.of(problem, one).cost()
                    - PlanCheck.of(problem, other).cost();
            assertEquals(gain, difference.gain(), "seed " + seed);
            moved += difference.jobs().isEmpty() ? 0 : 1;
        }
        assertTrue(moved > 50, "only " + moved + " plans differ");
    }
}
