package org.shedboard.pack.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/** All numbers are invented. */
class WhyTest {
    private static final int PROBLEMS = 25 * Integer.getInteger("proof.scale", 1);
    private static final int MINUTES_TRIED = 12;

    private static void eachTask(BiConsumer<HandShift, List<Reason>> look) {
        for (int seed = 0; seed < PROBLEMS; seed++) {
            Problem fresh = RandomProblems.of(seed);
            Plan plan = PackedPlans.pack(fresh, seed, 100);
            look(fresh, plan, look);
            Problem later = RandomProblems.later(fresh, plan, 30 + 5 * seed, seed);
            if (ProblemCheck.faults(later).isEmpty()) {
                look(later, PackedPlans.follow(later), look);
            }
        }
    }

    private static void look(Problem problem, Plan plan, BiConsumer<HandShift, List<Reason>> look) {
        Why why = Why.of(problem, plan);
        for (Plan.TaskTime time : plan.tasks()) {
            HandShift shift = new HandShift(problem, plan, time.job(), time.stay(), time.task());
            look.accept(shift, why.of(time.job(), time.stay(), time.task()));
        }
    }

    private static int startOf(HandShift shift) {
        FlatProblem flat = new FlatProblem(shift.problem());
        PlanReading reading = new PlanReading(flat, shift.plan());
        for (int task : reading.order) {
            boolean same = flat.task[task].id().equals(shift.task())
                    && flat.stayOfTask[task] - flat.firstStay[flat.jobOfTask[task]] == shift.stay()
                    && flat.job(flat.jobOfTask[task]).id().equals(shift.job());
            if (same) {
                return reading.start[task];
            }
        }
        throw new IllegalStateException("not in the plan");
    }

    private static boolean isBegun(List<Reason> reasons) {
        return reasons.get(0) instanceof Reason.Begun;
    }

    private static Optional<Reason.Chosen> chosen(List<Reason> reasons) {
        return reasons.stream()
                .filter(Reason.Chosen.class::isInstance)
                .map(Reason.Chosen.class::cast)
                .findFirst();
    }

    @Test
    void every_task_has_its_reasons_and_all_kinds_of_them_occur() {
        Map<String, Integer> kinds = new TreeMap<>();
        eachTask((shift, reasons) -> {
            assertFalse(reasons.isEmpty());
            reasons.forEach(reason -> kinds.merge(reason.getClass().getSimpleName(), 1, Integer::sum));
        });
        assertEquals(Reason.class.getPermittedSubclasses().length, kinds.size(), kinds::toString);
    }

    /** The checker is asked at some minutes drawn before the start, and at the last ones. */
    @Test
    void a_task_that_is_bound_cannot_start_earlier_and_one_that_is_not_can() {
        Chance chance = new Chance(1);
        int[] bound = new int[1];
        eachTask((shift, reasons) -> {
            if (isBegun(reasons)) {
                return;
            }
            int start = startOf(shift);
            assertTrue(shift.isLegalAt(start), "the shifting itself is wrong");
            Optional<Reason.Chosen> chosen = chosen(reasons);
            chosen.ifPresent(at -> assertTrue(shift.isLegalAt(at.earliest()), () -> shift + " " + reasons));
            int now = shift.problem().now();
            int until = chosen.map(Reason.Chosen::earliest).orElse(start);
            for (int index = 0; index < MINUTES_TRIED && until > now; index++) {
                int minute = index < 5 ? Math.max(now, until - 1 - index) : now + chance.below(until - now);
                assertFalse(shift.isLegalAt(minute), () -> minute + ": " + shift + " " + reasons);
            }
            bound[0] += chosen.isEmpty() && start > now ? 1 : 0;
        });
        assertTrue(bound[0] > PROBLEMS * 5, "only " + bound[0] + " tasks are bound");
    }

    @Test
    void without_its_reasons_a_task_could_start_a_minute_earlier() {
        int[] freed = new int[1];
        eachTask((shift, reasons) -> {
            List<Reason> removable = removable(reasons);
            int start = startOf(shift);
            if (isBegun(reasons)
                    || chosen(reasons).isPresent()
                    || start == shift.problem().now()) {
                return;
            }
            HandShift loose = Loosening.without(shift, removable);
            assertTrue(loose.isLegalAt(start - 1), () -> shift + " " + reasons);
            freed[0]++;
        });
        assertTrue(freed[0] > PROBLEMS * 5, "only " + freed[0] + " tasks were freed");
    }

    private static List<Reason> removable(List<Reason> reasons) {
        return reasons.stream()
                .filter(reason -> !(reason instanceof Reason.Now))
                .toList();
    }

    @Test
    void without_what_is_named_beside_somebodys_break_it_could_start_before_the_break() {
        int[] freed = new int[1];
        eachTask((shift, reasons) -> {
            List<Reason.Off> off = reasons.stream()
                    .filter(Reason.Off.class::isInstance)
                    .map(Reason.Off.class::cast)
                    .toList();
            List<Reason> others = new ArrayList<>(removable(reasons));
            others.removeAll(off);
            boolean justBefore =
                    !others.isEmpty() && off.size() == 1 && off.get(0).until() == startOf(shift);
            boolean chained = justBefore && !sayAtLastMinute(shift, reasons);
            if (chained) {
                HandShift loose = Loosening.without(shift, others);
                assertTrue(loose.isLegalAt(off.get(0).from() - 1), () -> shift + " " + reasons);
                freed[0]++;
            }
        });
        assertTrue(freed[0] > 10, "only " + freed[0] + " tasks wait behind a break");
    }

    /** Whether something beside the break forbids the minute before the start, so that nothing need be known of before the break. */
    private static boolean sayAtLastMinute(HandShift shift, List<Reason> reasons) {
        HandShift atWork = Loosening.without(
                shift, reasons.stream().filter(Reason.Off.class::isInstance).toList());
        return !atWork.isLegalAt(startOf(shift) - 1);
    }

    @Test
    void what_is_named_is_so() {
        eachTask((shift, reasons) -> {
            for (Reason reason : reasons) {
                if (reason instanceof Reason.Busy busy) {
                    Plan.TaskTime other = shift.plan()
                            .findTask(busy.job(), busy.stay(), busy.task())
                            .orElseThrow();
                    assertTrue(other.people().contains(busy.person()));
                    assertTrue(other.people().size() > 1 || other.end() == busy.until());
                } else if (reason instanceof Reason.PlaceTaken taken) {
                    Plan.StayPlace other =
                            shift.plan().findStay(taken.job(), taken.stay()).orElseThrow();
                    assertEquals(
                            new Plan.StayPlace(taken.job(), taken.stay(), taken.place(), other.from(), taken.until()),
                            other);
                } else if (reason instanceof Reason.Arrival arrival) {
                    assertEquals(shift.jobValues().arrives(), arrival.until());
                } else if (reason instanceof Reason.Part part) {
                    assertEquals(shift.values().notBefore(), part.until());
                } else if (reason instanceof Reason.Pinned pinned) {
                    assertEquals(shift.values().at().orElseThrow(), pinned.until());
                } else if (reason instanceof Reason.Now now) {
                    assertEquals(shift.problem().now(), now.until());
                }
            }
        });
    }

    private static final Problem.Person PAT =
            Problem.Person.of("Pat", Set.of("service"), Span.of(0, 60), Span.of(75, 500));

    @Test
    void a_task_behind_a_break_is_told_of_both_the_break_and_the_work_before_it() {
        Problem.Job first = Problem.Job.of("First", Problem.Stay.nowhere(Problem.Task.of("a", "service", 60)))
                .withWeight(9);
        Problem.Job second = Problem.Job.of("Second", Problem.Stay.nowhere(Problem.Task.of("b", "service", 30)));
        Problem problem = Problem.of(0, 500, List.of(), List.of(PAT), List.of(first, second));
        Why why = Why.of(problem, PackedPlans.pack(problem, 1, 100));
        assertEquals(
                List.of(new Reason.Off("Pat", 60, 75), new Reason.Busy("Pat", "First", 0, "a", 60)),
                why.of("Second", 0, "b"));
        assertEquals(List.of(new Reason.Now(0)), why.of("First", 0, "a"));
        assertEquals(List.of(), why.of("First", 0, "b"));
    }

    @Test
    void a_task_kept_when_it_was_posted_is_told_so_with_the_minute_it_could_start() {
        Problem.Job job = Problem.Job.of("Quad", Problem.Stay.nowhere(Problem.Task.of("a", "service", 20)));
        Problem problem = Problem.of(0, 500, List.of(), List.of(PAT), List.of(job));
        Plan late = new Plan(
                120,
                0,
                List.of(),
                List.of(),
                List.of(new Plan.TaskTime("Quad", 0, "a", Optional.of("Pat"), List.of(), 100, 120)),
                0,
                0,
                0);
        assertEquals(List.of(new Reason.Chosen(0, false)), Why.of(problem, late).of("Quad", 0, "a"));
        assertEquals(
                List.of(new Reason.Chosen(0, true)),
                Why.of(problem.withPosted(late), late).of("Quad", 0, "a"));
    }

    @Test
    void a_gap_that_is_just_long_enough_could_take_the_task_and_one_a_minute_shorter_could_not() {
        assertEquals(List.of(new Reason.Chosen(20, false)), whyBehind(50));
        assertEquals(List.of(new Reason.Busy("Kim", "B", 0, "do", 80)), whyBehind(49));
    }

    /** Why a task of 30 minutes stands at 80, when others take Kim from 0 to 20 and from {@code second} to 80. */
    private static List<Reason> whyBehind(int second) {
        Problem.Person kim = Problem.Person.of("Kim", Set.of("service"), Span.of(0, 500));
        List<Problem.Job> jobs = List.of(alone("A", 20), alone("B", 80 - second), alone("C", 30));
        Problem problem = Problem.of(0, 500, List.of(), List.of(kim), jobs);
        List<Plan.TaskTime> times = List.of(at("A", 0, 20), at("B", second, 80), at("C", 80, 110));
        return Why.of(problem, new Plan(0, 0, List.of(), List.of(), times, 0, 0, 0))
                .of("C", 0, "do");
    }

    private static Problem.Job alone(String id, int minutes) {
        return Problem.Job.of(id, Problem.Stay.nowhere(Problem.Task.of("do", "service", minutes)));
    }

    private static Plan.TaskTime at(String job, int start, int end) {
        return new Plan.TaskTime(job, 0, "do", Optional.of("Kim"), List.of(), start, end);
    }

    @Test
    void a_machine_that_stands_through_a_closed_time_waits_for_its_end() {
        Problem.Place bay = Problem.Place.of("Bay", "bay").withClosed(Span.of(100, 200));
        Problem.Task drained =
                Problem.Task.of("drain", "service", 10).withDone(new Problem.Done(Optional.of("Pat"), 0, 10));
        Problem.Stay stay = Problem.Stay.of("bay", drained, Problem.Task.of("fill", "service", 60))
                .withPlace("Bay");
        Problem problem = Problem.of(80, 500, List.of(bay), List.of(PAT), List.of(Problem.Job.of("Quad", stay)));
        Why why = Why.of(problem, PackedPlans.first(problem));
        assertEquals(List.of(new Reason.PlaceClosed("Bay", 200)), why.of("Quad", 0, "fill"));
        assertEquals(List.of(new Reason.Begun()), why.of("Quad", 0, "drain"));
    }
}
