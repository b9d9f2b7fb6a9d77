package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;

/**
 * All minutes are invented. The probabilities are those of the log-normal distribution: work of 100 minutes with a spread of 0.5 is
 * over by minute m with the chance that a normal draw is below ln((m + 0.5) / 100) / 0.5, since drawn minutes are rounded.
 */
class KnockOffsTest {
    private static final int DRAWS = 4000;
    private static final Span TODAY = Span.of(0, 120);
    private static final Span TOMORROW = Span.of(1440, 1560);
    private static final Problem.Person PAT = Problem.Person.of("Pat", Set.of("service"), TODAY, TOMORROW);
    private static final Problem.Person KIM = Problem.Person.of("Kim", Set.of("wash"), TODAY, TOMORROW);
    private static final Problem.Job QUAD =
            job("Quad", Problem.Task.of("do", "service", 100).withSpread(0.5));
    /** ln(120.5 / 100) / 0.5 = 0.37296; the normal distribution has 0.64541 below it. */
    private static final double OVER_BY_120 = 0.64541;
    /** ln(110.5 / 100) / 0.5 = 0.19969; the normal distribution has 0.57914 below it. */
    private static final double OVER_BY_110 = 0.57914;

    private static Problem.Job job(String id, Problem.Task... tasks) {
        return Problem.Job.of(id, Problem.Stay.nowhere(tasks));
    }

    private static Problem day(List<Problem.Person> people, Problem.Job... jobs) {
        return Problem.of(0, 2880, List.of(), people, List.of(jobs));
    }

    private static KnockOffs of(Problem problem) {
        return KnockOffs.of(problem, PackedPlans.first(problem), DRAWS, 1);
    }

    private static void assertChance(double expected, KnockOff day) {
        double error = Math.sqrt(expected * (1 - expected) / DRAWS);
        assertEquals(expected, day.chance(), 4 * error + Quantiles.LARGEST_ERROR);
        assertEquals(Math.sqrt(day.chance() * (1 - day.chance()) / DRAWS), day.error(), 1e-12);
    }

    @Test
    void one_piece_of_work_is_over_by_the_end_of_the_shift_as_often_as_its_minutes_are_few_enough() {
        List<KnockOff> days = of(day(List.of(PAT), QUAD)).days();
        assertEquals(1, days.size());
        assertEquals(0, days.get(0).day());
        assertEquals(120, days.get(0).minute());
        assertChance(OVER_BY_120, days.get(0));
    }

    @Test
    void work_that_ends_with_the_shift_is_in_time() {
        Problem problem = day(List.of(PAT), job("Sure", Problem.Task.of("do", "service", 120)));
        assertEquals(1, of(problem).days().get(0).chance());
    }

    @Test
    void overtime_at_the_end_of_the_day_does_not_make_it_in_time() {
        Problem.Person long_ = PAT.withOvertime(Span.of(120, 600));
        assertChance(OVER_BY_120, of(day(List.of(long_), QUAD)).days().get(0));
    }

    @Test
    void two_people_are_both_in_time_as_often_as_each_is_by_the_other() {
        Problem.Job wash = job("Wash", Problem.Task.of("wash", "wash", 100).withSpread(0.5));
        KnockOff day = of(day(List.of(PAT, KIM), QUAD, wash)).days().get(0);
        assertChance(OVER_BY_120 * OVER_BY_120, day);
    }

    @Test
    void a_plan_that_needs_overtime_is_in_time_as_often_as_its_work_turns_out_shorter() {
        Problem.Person long_ = PAT.withOvertime(Span.of(120, 600));
        Problem problem = day(List.of(long_), job("Short", Problem.Task.of("do", "service", 30)), QUAD);
        // ln(90.5 / 100) / 0.5 = -0.19964; the normal distribution has 0.42088 below it
        assertChance(0.42088, of(problem).days().get(0));
        Problem.Job sure = job("Quad", Problem.Task.of("do", "service", 100));
        assertEquals(
                0,
                of(problem.withJobs(List.of(problem.jobs().get(0), sure)))
                        .days()
                        .get(0)
                        .chance());
    }

    @Test
    void a_day_on_which_only_overtime_is_planned_is_told_too() {
        Problem.Person long_ = PAT.withOvertime(Span.of(120, 600));
        KnockOff day = of(day(
                        List.of(long_),
                        job("Large", Problem.Task.of("do", "service", 200).withSpread(0.5))))
                .days()
                .get(0);
        assertEquals(120, day.minute());
        // ln(120.5 / 200) / 0.5 = -1.01335; the normal distribution has 0.15545 below it
        assertChance(0.15545, day);
    }

    @Test
    void overtime_before_the_shift_is_nobodys_late_day() {
        Problem.Person early =
                new Problem.Person("Pat", Set.of("service"), List.of(Span.of(60, 180)), List.of(Span.of(0, 60)), 0);
        assertEquals(
                1,
                of(day(List.of(early), job("Sure", Problem.Task.of("do", "service", 100))))
                        .days()
                        .get(0)
                        .chance());
    }

    @Test
    void work_that_the_plan_takes_over_night_is_due_on_the_day_it_ends() {
        Problem.Job large = job("Large", Problem.Task.of("do", "service", 180).withSpread(0.3));
        List<KnockOff> days = of(day(List.of(PAT), large)).days();
        assertEquals(List.of(1), days.stream().map(KnockOff::day).toList());
        // ln(240.5 / 180) / 0.3 = 0.96585; the normal distribution has 0.83294 below it
        assertChance(0.83294, days.get(0));
    }

    @Test
    void what_decides_alone_has_the_whole_drop() {
        Problem problem = day(
                List.of(PAT),
                QUAD,
                job("Sure", Problem.Task.of("do", "service", 10)).withWeight(0));
        KnockOffs knockOffs = of(problem);
        KnockOff day = knockOffs.days().get(0);
        assertChance(OVER_BY_110, day);
        List<KnockOff.Decider> deciders = knockOffs.deciders(day, 3);
        assertEquals(
                List.of("Quad"), deciders.stream().map(KnockOff.Decider::job).toList());
        assertEquals(1 - day.chance(), deciders.get(0).drop(), 1e-12);
        assertEquals(day.error(), deciders.get(0).error(), 1e-12);
    }

    @Test
    void each_of_two_that_decide_has_the_drop_of_the_days_that_only_it_spoils() {
        Problem.Job wash = job("Wash", Problem.Task.of("wash", "wash", 110).withSpread(0.5));
        KnockOffs knockOffs = of(day(List.of(PAT, KIM), QUAD, wash));
        List<KnockOff.Decider> deciders = knockOffs.deciders(knockOffs.days().get(0), 3);
        // ln(120.5 / 110) / 0.5 = 0.18234; the normal distribution has 0.57234 below it
        double washInTime = 0.57234;
        assertEquals(
                List.of("Wash", "Quad"),
                deciders.stream().map(KnockOff.Decider::job).toList());
        assertEquals(
                (1 - washInTime) * OVER_BY_120,
                deciders.get(0).drop(),
                4 * deciders.get(0).error());
        assertEquals(
                (1 - OVER_BY_120) * washInTime,
                deciders.get(1).drop(),
                4 * deciders.get(1).error());
        double drop = deciders.get(1).drop();
        assertEquals(
                Math.sqrt(drop * (1 - drop) / DRAWS),
                deciders.get(1).error(),
                1e-9,
                "it never spoils a day by being held");
        assertEquals(1, knockOffs.deciders(knockOffs.days().get(0), 1).size());
    }

    @Test
    void without_any_spread_a_day_is_in_time_unless_the_plan_has_overtime_after_the_shift() {
        int late = 0;
        for (int seed = 0; seed < 100; seed++) {
            Problem problem = withHalfADay(RandomProblems.of(seed));
            Plan plan = PackedPlans.pack(problem, 1, 100);
            List<KnockOff> days = KnockOffs.of(problem, plan, 2, 1).days();
            boolean all = days.stream().allMatch(day -> day.chance() == 1);
            assertTrue(all || hasOvertime(problem, plan), "seed " + seed);
            late += all ? 0 : 1;
        }
        assertTrue(late > 30, "only " + late + " late days");
    }

    private static Problem withHalfADay(Problem problem) {
        return problem.withPeople(problem.people().stream()
                .map(person -> new Problem.Person(
                        person.id(),
                        person.skills(),
                        person.shifts().subList(0, 1),
                        List.of(Span.of(person.shifts().get(0).to(), 600)),
                        0))
                .toList());
    }

    private static boolean hasOvertime(Problem problem, Plan plan) {
        return problem.people().stream()
                .anyMatch(person -> plan.tasks().stream()
                        .anyMatch(time -> time.people().contains(person.id())
                                && time.end() > person.shifts().get(0).to()));
    }
}
