package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/** Ada and Bo may do everything, the apprentice Cy no brakes; the light hoist takes quads, the heavy one all. */
class PinActsTest {
    private static final String RAISE = "in-underside";

    private final Shed shed = Shed.open();
    private final String quad = shed.quad();

    @Test
    void a_task_starts_at_the_minute_it_was_dropped_at() {
        shed.does(Hand.at(quad, RAISE, "11:10"));
        assertEquals(Shed.time("11:10"), startOf(RAISE));
        assertObeys();
    }

    @Test
    void a_stay_is_in_the_place_it_was_dropped_in() {
        assertEquals("H1", placeOf(RAISE));
        shed.does(Hand.place(quad, RAISE, "H2"));
        assertEquals("H2", placeOf(RAISE));
        assertObeys();
    }

    @Test
    void a_task_is_done_by_the_one_it_was_given_to() {
        String before = personOf(RAISE);
        String other = before.equals("bo") ? "ada" : "bo";
        shed.does(Hand.person(quad, RAISE, other));
        assertEquals(other, personOf(RAISE));
        assertObeys();
    }

    @Test
    void the_checker_knows_of_the_pin() {
        shed.does(Hand.at(quad, RAISE, "11:10"));
        Plan pinned = Planning.settled(problem());
        shed.does(Hand.at(quad, RAISE, "11:11"));
        assertTrue(!PlanCheck.of(problem(), pinned).isLegal(), "the plan from before the move still obeys");
    }

    @Test
    void a_search_leaves_the_pin_where_it_is() {
        shed.does(Hand.at(quad, RAISE, "11:10"));
        Plan packed = Packer.pack(problem(), new Search(7, 2_000));
        assertEquals(
                11 * 60 + 10,
                packed.tasks().stream()
                        .filter(time -> time.task().equals(RAISE))
                        .findFirst()
                        .orElseThrow()
                        .start());
    }

    @Test
    void a_lifted_pin_holds_nothing() {
        shed.does(Hand.at(quad, RAISE, "11:10"));
        shed.does(new Act.LiftPin(quad, RAISE));
        assertEquals(Optional.empty(), pinOf(RAISE));
        Plan packed = Packer.pack(problem(), new Search(7, 2_000));
        assertTrue(packed.tasks().stream()
                .filter(time -> time.task().equals(RAISE))
                .allMatch(time -> time.start() < 11 * 60 + 10));
    }

    @Test
    void a_break_is_worked_through_by_a_window_in_the_problem() {
        String time = insideABreakOf("bo");
        shed.does(Hand.personAt(quad, RAISE, "bo", time));
        assertEquals(Shed.time(time), startOf(RAISE));
        assertObeys();
    }

    private String insideABreakOf(String person) {
        Problem.Person who = problem().people().stream()
                .filter(each -> each.id().equals(person))
                .findFirst()
                .orElseThrow();
        int minute = who.shifts().stream().mapToInt(span -> span.to()).min().orElseThrow();
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }

    @Test
    void a_skill_is_lent_for_that_task_alone() {
        Day day = Demonstration.day();
        Instant now = Demonstration.opens();
        Act.PinTask lent = lending(day, now);
        Day after = ((Outcome.Done) Planning.carryOut(day, lent, now)).day();
        Outlook outlook = Outlook.of(after, now);
        String person = lent.pin().personId().orElseThrow();
        assertEquals(
                Optional.of(person),
                outlook.timeOf(lent.visitId(), lent.taskId()).orElseThrow().person());
        Problem problem = Problems.of(after, now);
        PlanCheck check = PlanCheck.of(problem, Planning.settled(problem));
        assertTrue(check.isLegal(), check::toString);
        assertEquals(
                1 + skillsOf(Problems.of(day, now), person),
                skillsOf(problem, person),
                "skills of the one it is lent to");
    }

    private static int skillsOf(Problem problem, String person) {
        return problem.people().stream()
                .filter(each -> each.id().equals(person))
                .findFirst()
                .orElseThrow()
                .skills()
                .size();
    }

    /** The first task of the demonstration that can be given to somebody who has not its skill. */
    private static Act.PinTask lending(Day day, Instant now) {
        for (Visit visit : day.visits()) {
            for (Task task : visit.tasks()) {
                for (Person person : day.shop().people()) {
                    Act.PinTask act = Hand.person(visit.id(), task.id(), person.id());
                    if (!person.may(task.skill()) && Acts.apply(day, act, now) instanceof Outcome.Done) {
                        return act;
                    }
                }
            }
        }
        throw new IllegalStateException("no skill can be lent in the demonstration");
    }

    @Test
    void a_pin_ends_when_its_task_is_done() {
        shed.does(Hand.person(quad, RAISE, "ada"));
        shed.does(Shed.start("ada", quad, RAISE));
        shed.later(5).does(Shed.finish("ada", quad, RAISE));
        assertEquals(Optional.empty(), pinOf(RAISE));
    }

    @Test
    void a_minute_that_is_past_yields_and_the_machine_stays_in_the_plan() {
        shed.does(Hand.at(quad, RAISE, "08:00"));
        shed.at("09:30");
        Instant start = startOf(RAISE);
        assertNotEquals(Shed.time("08:00"), start);
        assertTrue(!start.isBefore(shed.now()), "starts at " + start);
    }

    @Test
    void a_pin_ends_with_its_day_and_one_for_tomorrow_does_not() {
        shed.does(Hand.place(quad, RAISE, "H2"));
        String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        Instant tomorrow = Shed.time("10:00").plusSeconds(24 * 3600);
        shed.does(
                new Act.PinTask(other, RAISE, new TaskPin(Optional.empty(), Optional.of(tomorrow), Optional.empty())));
        shed.at("16:30");
        for (String person : new String[] {"ada", "bo", "cy"}) {
            shed.does(new Act.Stop(person, true));
        }
        shed.does(new Act.CloseDay("ada"));
        assertEquals(Optional.empty(), pinOf(RAISE));
        assertTrue(shed.day()
                .expectVisit(other)
                .findTask(RAISE)
                .orElseThrow()
                .pin()
                .isPresent());
    }

    @Test
    void the_place_of_a_stay_is_insisted_on_once() {
        Task second =
                shed.day().expectVisit(quad).stayOf(RAISE).orElseThrow().tasks().get(1);
        shed.does(Hand.place(quad, RAISE, "H2"));
        shed.does(Hand.place(quad, second.id(), "H1"));
        assertEquals(Optional.empty(), pinOf(RAISE));
        assertEquals("H1", placeOf(RAISE));
    }

    private Problem problem() {
        return Problems.of(shed.day(), shed.now());
    }

    private void assertObeys() {
        Problem problem = problem();
        PlanCheck check = PlanCheck.of(problem, Planning.settled(problem));
        assertTrue(check.isLegal(), check::toString);
    }

    private Optional<TaskPin> pinOf(String task) {
        return shed.day().expectVisit(quad).findTask(task).orElseThrow().pin();
    }

    private Outlook outlook() {
        return Outlook.of(shed.day(), shed.now());
    }

    private Instant startOf(String task) {
        return shed.day().instantOf(outlook().timeOf(quad, task).orElseThrow().start());
    }

    private String personOf(String task) {
        return outlook().timeOf(quad, task).orElseThrow().person().orElseThrow();
    }

    private String placeOf(String task) {
        Plan.TaskTime time = outlook().timeOf(quad, task).orElseThrow();
        return outlook().plan().findStay(quad, time.stay()).orElseThrow().place();
    }
}
