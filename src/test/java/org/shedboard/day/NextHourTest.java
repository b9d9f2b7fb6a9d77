package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.Span;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;

/** One person, one hoist; the quad from now on, the mower behind it in two tasks. All numbers are invented. */
class NextHourTest {
    private static final Problem.Job QUAD =
            Problem.Job.of("Quad", Problem.Stay.of("hoist", Problem.Task.of("service", "service", 50)));
    private static final Problem.Job MOWER = Problem.Job.of(
            "Mower",
            Problem.Stay.of("hoist", Problem.Task.of("blades", "service", 20), Problem.Task.of("belt", "service", 20)));
    private static final Problem DAY = Problem.of(
            0,
            480,
            List.of(Problem.Place.of("H1", "hoist")),
            List.of(Problem.Person.of("Pat", Set.of("service"), Span.of(0, 480))),
            List.of(QUAD.withWeight(9), MOWER));
    private static final Plan QUAD_FIRST = Packer.pack(DAY, Search.of(1, 100));

    private static Problem.Task task(Problem problem, int job, int index) {
        return problem.jobs().get(job).stays().get(0).tasks().get(index);
    }

    @Test
    void what_starts_within_the_hour_is_pinned_to_minute_person_and_place_and_the_rest_is_not() {
        Problem kept = NextHour.kept(DAY, QUAD_FIRST);
        assertEquals(OptionalInt.of(0), task(kept, 0, 0).at());
        assertEquals(OptionalInt.of(50), task(kept, 1, 0).at());
        assertEquals(Optional.of("Pat"), task(kept, 1, 0).person());
        assertEquals(Optional.of("H1"), kept.jobs().get(1).stays().get(0).place());
        assertEquals(OptionalInt.empty(), task(kept, 1, 1).at());
    }

    @Test
    void the_hour_ends_before_its_sixtieth_minute() {
        assertTrue(NextHour.isWithin(DAY, 0));
        assertTrue(NextHour.isWithin(DAY, 59));
        assertFalse(NextHour.isWithin(DAY, 60));
    }

    @Test
    void the_plan_itself_is_legal_with_its_next_hour_kept_and_a_search_leaves_it_alone() {
        Problem hurried = DAY.withJobs(List.of(QUAD, MOWER.withWeight(9)));
        Problem kept = NextHour.kept(hurried, QUAD_FIRST);
        assertTrue(PlanCheck.of(NextHour.kept(DAY, QUAD_FIRST), QUAD_FIRST).isLegal());
        assertEquals(QUAD_FIRST.tasks(), Packer.pack(kept, Search.of(1, 500)).tasks());
        assertFalse(QUAD_FIRST
                .tasks()
                .equals(Packer.pack(hurried, Search.of(1, 500)).tasks()));
    }
}
