package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

class PromisesTest {
    private static final Problem.Person ADA = Problem.Person.of("ada", Set.of("wash"), Span.of(0, 1000));

    @Test
    void a_promise_is_kept_to_the_minute_with_the_unattended_ones() {
        Problem day = day(job("by 30", 30), job("by 29", 29), Problem.Job.of("no promise", stay()), job("out", 500));
        Plan plan = new Plan(
                0,
                0,
                List.of(new Plan.Unplaced("out", "left out")),
                List.of(),
                List.of(done("by 30"), done("by 29"), done("no promise")),
                0,
                0,
                0);
        assertEquals(Set.of("by 30"), Promises.of(day, plan).kept());
    }

    @Test
    void only_promises_that_the_other_plan_keeps_can_be_missed_of_it() {
        Promises best = new Promises(Set.of("a", "b"));
        assertEquals(0, best.missedOf(best));
        assertEquals(1, new Promises(Set.of("b", "c")).missedOf(best));
        assertEquals(2, new Promises(Set.of()).missedOf(best));
        assertEquals(0, best.missedOf(new Promises(Set.of())));
    }

    private static Problem day(Problem.Job... jobs) {
        return Problem.of(0, 1000, List.of(), List.of(ADA), List.of(jobs));
    }

    private static Problem.Job job(String id, int promise) {
        return Problem.Job.of(id, stay()).withPromise(promise);
    }

    private static Problem.Stay stay() {
        return Problem.Stay.nowhere(Problem.Task.of("wash", "wash", 20).withUnattended(10));
    }

    private static Plan.TaskTime done(String job) {
        return new Plan.TaskTime(job, 0, "wash", Optional.of("ada"), List.of(), 0, 20);
    }
}
