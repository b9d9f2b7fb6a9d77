package org.shedboard.pack.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** A legal plan, broken in one rule at a time. All numbers are invented. */
class PlanCheckTest {
    private static final Problem.Person PAT = Problem.Person.of(
                    "Pat", Set.of("wash", "service"), Span.of(0, 100), Span.of(120, 200))
            .withOvertime(Span.of(200, 260));
    private static final Problem.Person SAM = Problem.Person.of("Sam", Set.of("service"), Span.of(0, 200));
    private static final Problem.Place PAD = Problem.Place.of("W1", "wash");
    private static final Problem.Place HOIST =
            Problem.Place.of("H1", "hoist").withRatedKg(1000).withClosed(Span.of(180, 190));
    private static final Problem.Place LIGHT = Problem.Place.of("H2", "hoist").withRatedKg(200);

    private static final Problem.Job QUAD = Problem.Job.of(
                    "Quad",
                    Problem.Stay.of("wash", Problem.Task.of("wash", "wash", 20).withUnattended(10)),
                    Problem.Stay.of(
                            "hoist",
                            Problem.Task.of("drain", "service", 10).withUnattended(15),
                            Problem.Task.of("fill", "service", 10),
                            Problem.Task.of("sign", "service", 5).withNotBy("fill")))
            .withMassKg(300);
    private static final Problem.Job MOWER = Problem.Job.of(
            "Mower", Problem.Stay.nowhere(Problem.Task.of("lift", "service", 10).withPeople(2)));
    private static final Problem DAY =
            Problem.of(0, 300, List.of(PAD, HOIST, LIGHT), List.of(PAT, SAM), List.of(QUAD, MOWER));

    /** Pat washes 0 to 20, Sam drains 30 to 40, Pat fills 55 to 65, Sam signs 65 to 70; both lift 80 to 90. */
    private static final Plan PLAN = priced(
            DAY,
            List.of(stay("Quad", 0, "W1", 0, 30), stay("Quad", 1, "H1", 30, 70)),
            List.of(
                    time("Quad", 0, "wash", "Pat", 0, 20),
                    time("Quad", 1, "drain", "Sam", 30, 40),
                    time("Quad", 1, "fill", "Pat", 55, 65),
                    time("Quad", 1, "sign", "Sam", 65, 70),
                    new Plan.TaskTime("Mower", 0, "lift", Optional.of("Pat"), List.of("Sam"), 80, 90)));

    @Test
    void the_plan_that_the_other_tests_break_is_legal() {
        PackedPlans.checked(DAY, PLAN);
        assertEquals(70 + 90 + 10, PLAN.cost(), "two finishes and one handover");
    }

    @Test
    void a_wrong_cost_is_found() {
        Plan cheaper = new Plan(PLAN.cost() - 1, 0, List.of(), PLAN.stays(), PLAN.tasks(), 0, 0, 0);
        assertBreaks(DAY, cheaper, Rule.COST);
    }

    @Test
    void a_task_that_is_not_listed_is_found() {
        List<Plan.TaskTime> tasks = new ArrayList<>(PLAN.tasks());
        tasks.remove(4);
        assertBreaks(DAY, priced(DAY, PLAN.stays(), tasks), Rule.LISTED);
    }

    @Test
    void a_task_that_is_listed_twice_is_found() {
        List<Plan.TaskTime> tasks = new ArrayList<>(PLAN.tasks());
        tasks.add(tasks.get(4));
        assertBreaks(DAY, priced(DAY, PLAN.stays(), tasks), Rule.LISTED);
    }

    @Test
    void a_job_that_is_both_placed_and_unplaced_is_found() {
        List<Plan.Unplaced> left = List.of(new Plan.Unplaced("Mower", "no reason"));
        Plan plan = new Plan(80, 0, left, PLAN.stays(), PLAN.tasks(), 0, 0, 0);
        assertBreaks(DAY, plan, Rule.LISTED);
    }

    @Test
    void a_stay_without_its_place_is_found() {
        assertBreaks(DAY, priced(DAY, PLAN.stays().subList(0, 1), PLAN.tasks()), Rule.LISTED);
    }

    @Test
    void rule_1_too_few_people_are_found() {
        assertBreaks(DAY, changed(4, time("Mower", 0, "lift", "Pat", 80, 90)), Rule.CREW);
    }

    @Test
    void rule_1_the_same_person_twice_is_found() {
        Plan.TaskTime twice = new Plan.TaskTime("Mower", 0, "lift", Optional.of("Pat"), List.of("Pat"), 80, 90);
        assertBreaks(DAY, changed(4, twice), Rule.CREW);
    }

    @Test
    void rule_1_someone_without_the_skill_is_found() {
        assertBreaks(DAY, changed(0, time("Quad", 0, "wash", "Sam", 0, 20)), Rule.CREW);
    }

    @Test
    void rule_1_an_end_that_is_not_the_last_ones_is_found() {
        Plan late = changed(3, time("Quad", 1, "sign", "Sam", 65, 71));
        List<Plan.StayPlace> stays = List.of(PLAN.stays().get(0), stay("Quad", 1, "H1", 30, 71));
        assertBreaks(DAY, priced(DAY, stays, late.tasks()), Rule.CREW);
    }

    @Test
    void rule_1_everyone_works_their_own_minutes() {
        Problem.Task slow = Problem.Task.of("lift", "service", 10).withPeople(2).withHandsOnBy(Map.of("Sam", 12));
        Problem day = DAY.withJobs(List.of(QUAD, Problem.Job.of("Mower", Problem.Stay.nowhere(slow))));
        assertBreaks(day, priced(day, PLAN.stays(), PLAN.tasks()), Rule.CREW);
        Plan.TaskTime longer = new Plan.TaskTime("Mower", 0, "lift", Optional.of("Pat"), List.of("Sam"), 80, 92);
        PackedPlans.checked(day, priced(day, PLAN.stays(), with(4, longer)));
    }

    @Test
    void rule_2_a_start_outside_ones_hours_is_found() {
        Problem.Job call = Problem.Job.of("Mower", Problem.Stay.nowhere(Problem.Task.of("lift", "service", 10)));
        Problem day = DAY.withJobs(List.of(QUAD, call));
        assertBreaks(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Pat", 115, 130))), Rule.HOURS);
    }

    @Test
    void rule_2_work_stops_at_a_break_and_goes_on_after_it() {
        Problem.Job call = Problem.Job.of("Mower", Problem.Stay.nowhere(Problem.Task.of("lift", "service", 10)));
        Problem day = DAY.withJobs(List.of(QUAD, call));
        PackedPlans.checked(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Pat", 95, 125))));
        assertBreaks(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Pat", 95, 105))), Rule.CREW);
    }

    @Test
    void rule_2_two_tasks_of_one_person_at_once_are_found() {
        Plan.TaskTime during = new Plan.TaskTime("Mower", 0, "lift", Optional.of("Pat"), List.of("Sam"), 36, 46);
        assertBreaks(DAY, changed(4, during), Rule.HOURS);
    }

    @Test
    void rule_2_work_that_runs_at_knock_off_goes_into_overtime_and_costs() {
        Problem.Job call = Problem.Job.of("Mower", Problem.Stay.nowhere(Problem.Task.of("lift", "service", 10)));
        Problem day = DAY.withJobs(List.of(QUAD, call));
        Plan plan = priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Pat", 195, 205)));
        PackedPlans.checked(day, plan);
        assertEquals(70 + 205 + 10 + 5 * 5, plan.cost());
    }

    @Test
    void rule_3_a_stay_that_ends_before_its_unattended_minutes_is_found() {
        List<Plan.StayPlace> stays =
                List.of(stay("Quad", 0, "W1", 0, 20), PLAN.stays().get(1));
        assertBreaks(DAY, priced(DAY, stays, PLAN.tasks()), Rule.COMPLETION);
    }

    @Test
    void rule_4_a_start_before_the_task_before_is_complete_is_found() {
        assertBreaks(DAY, changed(2, time("Quad", 1, "fill", "Pat", 54, 64)), Rule.EARLIEST);
    }

    @Test
    void rule_4_a_start_before_now_arrival_or_not_before_is_found() {
        Problem.Task waits =
                Problem.Task.of("lift", "service", 10).withPeople(2).withNotBefore(81);
        Problem.Job waiting = Problem.Job.of("Mower", Problem.Stay.nowhere(waits));
        assertBreaks(DAY.withJobs(List.of(QUAD, waiting)), PLAN, Rule.EARLIEST);
        assertBreaks(DAY.withJobs(List.of(QUAD, MOWER.withArrives(81))), PLAN, Rule.EARLIEST);
        assertBreaks(DAY.withNow(1), PLAN, Rule.EARLIEST);
    }

    @Test
    void rule_5_a_place_of_the_wrong_kind_or_too_weak_is_found() {
        assertBreaks(DAY, standing(1, "W1"), Rule.PLACE);
        assertBreaks(DAY, standing(1, "H2"), Rule.PLACE);
    }

    @Test
    void rule_5_two_machines_in_one_place_are_found() {
        Problem.Job other = Problem.Job.of("Trike", Problem.Stay.of("hoist", Problem.Task.of("look", "service", 5)));
        Problem day = DAY.withJobs(List.of(QUAD, MOWER, other));
        List<Plan.TaskTime> tasks = new ArrayList<>(PLAN.tasks());
        tasks.add(time("Trike", 0, "look", "Sam", 45, 50));
        List<Plan.StayPlace> stays = new ArrayList<>(PLAN.stays());
        stays.add(stay("Trike", 0, "H1", 45, 50));
        assertBreaks(day, priced(day, stays, tasks), Rule.PLACE);
        stays.set(2, stay("Trike", 0, "H2", 45, 50));
        PackedPlans.checked(day, priced(day, stays, tasks));
    }

    @Test
    void rule_5_a_stay_through_a_closed_time_is_found() {
        Problem day = DAY.withPlaces(List.of(PAD, HOIST.withClosed(Span.of(45, 50)), LIGHT));
        assertBreaks(day, PLAN, Rule.PLACE);
    }

    @Test
    void rule_5_a_machine_already_there_may_stand_through_a_closed_time_without_work_on_it() {
        Problem begun = begunAt40();
        Problem closedWhileDraining = begun.withPlaces(List.of(PAD, HOIST.withClosed(Span.of(45, 50)), LIGHT));
        PackedPlans.checked(closedWhileDraining, priced(begun, PLAN.stays(), PLAN.tasks()));
        Problem closedWhileFilling = begun.withPlaces(List.of(PAD, HOIST.withClosed(Span.of(60, 62)), LIGHT));
        assertBreaks(closedWhileFilling, PLAN, Rule.PLACE);
        Problem closedForNoTime = begun.withPlaces(List.of(PAD, HOIST.withClosed(Span.of(60, 60)), LIGHT));
        PackedPlans.checked(closedForNoTime, priced(begun, PLAN.stays(), PLAN.tasks()));
    }

    @Test
    void rule_6_a_stay_before_the_one_before_it_is_complete_is_found() {
        Plan early = changed(1, time("Quad", 1, "drain", "Sam", 29, 39));
        List<Plan.StayPlace> stays = List.of(PLAN.stays().get(0), stay("Quad", 1, "H1", 29, 70));
        assertBreaks(DAY, priced(DAY, stays, early.tasks()), Rule.STAY_ORDER);
    }

    @Test
    void rule_7_what_is_done_keeps_its_person_start_and_end() {
        Problem begun = begunAt40();
        PackedPlans.checked(begun, PLAN);
        assertBreaks(begun, changed(1, time("Quad", 1, "drain", "Pat", 30, 40)), Rule.KEPT);
        assertBreaks(begun, changed(1, time("Quad", 1, "drain", "Sam", 31, 40)), Rule.KEPT, Rule.PLACE);
    }

    @Test
    void rule_7_whoever_is_at_work_goes_on_from_now() {
        Problem.Task going =
                Problem.Task.of("lift", "service", 10).withStarted(new Problem.Started(Optional.of("Pat"), 72, 6));
        Problem day = begunAt40()
                .withNow(75)
                .withJobs(List.of(allDone(), Problem.Job.of("Mower", Problem.Stay.nowhere(going))));
        PackedPlans.checked(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Pat", 72, 81))));
        assertBreaks(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Pat", 72, 82))), Rule.CREW);
        assertBreaks(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Sam", 72, 81))), Rule.KEPT);
    }

    @Test
    void rule_7_what_is_interrupted_may_go_on_by_anyone_later() {
        Problem.Task broken =
                Problem.Task.of("lift", "service", 10).withStarted(new Problem.Started(Optional.empty(), 72, 6));
        Problem day = begunAt40()
                .withNow(75)
                .withJobs(List.of(allDone(), Problem.Job.of("Mower", Problem.Stay.nowhere(broken))));
        PackedPlans.checked(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Sam", 72, 90))));
        assertBreaks(day, priced(day, PLAN.stays(), with(4, time("Mower", 0, "lift", "Sam", 72, 80))), Rule.EARLIEST);
    }

    @Test
    void rule_7_pins_hold() {
        Problem.Task signed = QUAD.stays().get(1).tasks().get(2);
        assertBreaks(withSign(signed.withPerson("Pat")), PLAN, Rule.KEPT);
        assertBreaks(withSign(signed.withAt(66)), PLAN, Rule.KEPT);
        Problem.Stay pinned = QUAD.stays().get(1).withPlace("H2");
        Problem.Job light = QUAD.withMassKg(100).withStays(List.of(QUAD.stays().get(0), pinned));
        assertBreaks(DAY.withJobs(List.of(light, MOWER)), PLAN, Rule.KEPT);
    }

    @Test
    void rule_8_an_end_after_the_horizon_is_found() {
        Problem short90 = new Problem(
                0, 89, DAY.costs(), DAY.places(), DAY.people(), DAY.jobs(), Optional.empty(), Optional.empty());
        assertBreaks(short90, PLAN, Rule.HORIZON);
    }

    @Test
    void rule_8_a_begun_job_that_is_left_out_is_found() {
        Problem begun = begunAt40();
        List<Plan.Unplaced> left = List.of(new Plan.Unplaced("Quad", "no reason"));
        Plan plan = new Plan(90, 0, left, List.of(), PLAN.tasks().subList(4, 5), 0, 0, 0);
        assertBreaks(begun, plan, Rule.HORIZON);
    }

    @Test
    void nobody_signs_off_their_own_work() {
        assertBreaks(DAY, changed(3, time("Quad", 1, "sign", "Pat", 65, 70)), Rule.NOT_BY);
    }

    @Test
    void what_is_moved_or_swapped_against_the_posted_plan_costs() {
        Problem day = DAY.withPosted(PLAN).withCosts(DAY.costs().withStability(1, 20));
        PackedPlans.checked(day, priced(day, PLAN.stays(), PLAN.tasks()));
        List<Plan.TaskTime> tasks =
                with(4, new Plan.TaskTime("Mower", 0, "lift", Optional.of("Sam"), List.of("Pat"), 83, 93));
        assertEquals(PLAN.cost() + 3 + 3 + 20, priced(day, PLAN.stays(), tasks).cost());
        Problem soon = day.withNow(25).withJobs(List.of(washed(), MOWER));
        assertEquals(
                PLAN.cost() + 3 + 3 * 4 + 20, priced(soon, PLAN.stays(), tasks).cost());
    }

    private static Problem.Job washed() {
        Problem.Task done = QUAD.stays().get(0).tasks().get(0).withDone(new Problem.Done(Optional.of("Pat"), 0, 20));
        return QUAD.withStays(List.of(
                QUAD.stays().get(0).withTasks(List.of(done)).withPlace("W1"),
                QUAD.stays().get(1)));
    }

    private static Problem begunAt40() {
        Problem.Job washed = washed();
        Problem.Stay hoist = washed.stays().get(1);
        List<Problem.Task> tasks = new ArrayList<>(hoist.tasks());
        tasks.set(0, tasks.get(0).withDone(new Problem.Done(Optional.of("Sam"), 30, 40)));
        Problem.Job quad = washed.withStays(
                List.of(washed.stays().get(0), hoist.withTasks(tasks).withPlace("H1")));
        return DAY.withNow(40).withJobs(List.of(quad, MOWER));
    }

    private static Problem.Job allDone() {
        Problem.Job quad = begunAt40().jobs().get(0);
        List<Problem.Task> tasks = new ArrayList<>(quad.stays().get(1).tasks());
        tasks.set(1, tasks.get(1).withDone(new Problem.Done(Optional.of("Pat"), 55, 65)));
        tasks.set(2, tasks.get(2).withDone(new Problem.Done(Optional.of("Sam"), 65, 70)));
        return quad.withStays(List.of(quad.stays().get(0), quad.stays().get(1).withTasks(tasks)));
    }

    private static Problem withSign(Problem.Task sign) {
        List<Problem.Task> tasks = new ArrayList<>(QUAD.stays().get(1).tasks());
        tasks.set(2, sign);
        Problem.Stay hoist = QUAD.stays().get(1).withTasks(tasks);
        return DAY.withJobs(List.of(QUAD.withStays(List.of(QUAD.stays().get(0), hoist)), MOWER));
    }

    private static Plan standing(int stay, String place) {
        List<Plan.StayPlace> stays = new ArrayList<>(PLAN.stays());
        Plan.StayPlace at = stays.get(stay);
        stays.set(stay, stay(at.job(), at.stay(), place, at.from(), at.to()));
        return priced(DAY, stays, PLAN.tasks());
    }

    private static Plan changed(int index, Plan.TaskTime time) {
        return priced(DAY, PLAN.stays(), with(index, time));
    }

    private static List<Plan.TaskTime> with(int index, Plan.TaskTime time) {
        List<Plan.TaskTime> tasks = new ArrayList<>(PLAN.tasks());
        tasks.set(index, time);
        return tasks;
    }

    /** A plan with the cost the checker finds, so that only the rule in question is broken. */
    private static Plan priced(Problem problem, List<Plan.StayPlace> stays, List<Plan.TaskTime> tasks) {
        Plan plan = new Plan(0, 0, List.of(), stays, tasks, 0, 0, 0);
        return new Plan(PlanCheck.of(problem, plan).cost(), 0, List.of(), stays, tasks, 0, 0, 0);
    }

    private static void assertBreaks(Problem problem, Plan plan, Rule... rules) {
        boolean costIsMeant = List.of(rules).contains(Rule.COST);
        Plan judged = costIsMeant || !plan.unplaced().isEmpty() ? plan : priced(problem, plan.stays(), plan.tasks());
        PlanCheck check = PlanCheck.of(problem, judged);
        Set<Rule> found = new TreeSet<>();
        check.breaches().forEach(breach -> found.add(breach.rule()));
        assertEquals(new TreeSet<>(List.of(rules)), found, check::toString);
    }

    private static Plan.StayPlace stay(String job, int stay, String place, int from, int to) {
        return new Plan.StayPlace(job, stay, place, from, to);
    }

    private static Plan.TaskTime time(String job, int stay, String task, String person, int start, int end) {
        return new Plan.TaskTime(job, stay, task, Optional.of(person), List.of(), start, end);
    }
}
