package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.VisitState;

/** What each act leaves behind: on the visit, on the clock, in what is to be saved. */
class ActsTest {
    private final Shed shed = Shed.open();

    @Test
    void opening_the_day_notes_who_is_here_and_what_was_checked_and_posts_a_plan() {
        Shed morning = Shed.closed();
        morning.quad();
        assertTrue(morning.day().posted().isEmpty());
        morning.does(morning.openDay());
        assertTrue(morning.day().isOpened());
        assertEquals(3, morning.day().opening().orElseThrow().attendances().size());
        assertTrue(morning.day().opening().orElseThrow().isChecked("H1"));
        assertFalse(morning.day().posted().orElseThrow().plan().tasks().isEmpty());
    }

    @Test
    void a_machine_taken_in_stands_in_the_yard_with_the_lowest_free_tag() {
        String quad = shed.quad();
        String other = shed.does(Shed.takeIn("quad-2", Mud.CAKED, "brakes")).orElseThrow();
        assertEquals(VisitState.IN_YARD, shed.visit(quad).state());
        assertEquals(OptionalInt.of(1), shed.visit(quad).tag());
        assertEquals(OptionalInt.of(2), shed.visit(other).tag());
        assertEquals(Depth.STANDARD, shed.visit(other).intake().depth());
        assertEquals(Step.WASH, shed.visit(other).stays().get(0).step());
    }

    @Test
    void a_new_owner_and_a_new_machine_come_on_the_books_with_the_weight_of_the_class() {
        Act.TakeIn fresh = Shed.takeIn(
                new Act.TakeIn.Which(Optional.empty(), "quad", "Burr", OptionalInt.of(2020), "X1"),
                new Act.TakeIn.Whose(Optional.empty(), "Reed", "0000 2"),
                Mud.CLEAN,
                OptionalInt.of(40),
                Optional.empty(),
                "oil");
        String visit = shed.does(fresh).orElseThrow();
        assertEquals("Reed", shed.day().ownerOf(shed.visit(visit)).name());
        assertEquals(300, shed.day().machineOf(shed.visit(visit)).massKg());
        assertEquals(OptionalInt.of(40), shed.visit(visit).tag());
    }

    @Test
    void a_booking_has_no_tag_until_it_comes_and_is_estimated_anew_by_its_mud() {
        String booked = shed.does(Shed.booking("quad-1", "09:00", "oil")).orElseThrow();
        assertEquals(VisitState.BOOKED, shed.visit(booked).state());
        assertEquals(OptionalInt.empty(), shed.visit(booked).tag());
        assertEquals(Step.UNDERSIDE, shed.visit(booked).stays().get(0).step());
        shed.at("09:20").does(new Act.Arrive(booked, Optional.of(Mud.CAKED), OptionalInt.empty()));
        assertEquals(VisitState.IN_YARD, shed.visit(booked).state());
        assertEquals(Shed.time("09:20"), shed.visit(booked).intake().arrives());
        assertEquals(Step.WASH, shed.visit(booked).stays().get(0).step());
        assertEquals(20, shed.task(booked, "wash").handsOn());
    }

    @Test
    void a_booking_called_off_is_cancelled_or_a_no_show() {
        String one = shed.does(Shed.booking("quad-1", "09:00", "oil")).orElseThrow();
        String other = shed.does(Shed.booking("quad-2", "09:00", "oil")).orElseThrow();
        shed.does(new Act.CallOff(one, false));
        shed.does(new Act.CallOff(other, true));
        assertEquals(VisitState.CANCELLED, shed.visit(one).state());
        assertEquals(VisitState.NO_SHOW, shed.visit(other).state());
        assertTrue(shed.outlook().queue().isEmpty());
    }

    @Test
    void a_started_task_takes_its_place_and_clocks_its_person_on() {
        String quad = shed.quad();
        shed.does(Shed.startIn("H2", "cy", quad, "in-underside"));
        assertEquals(VisitState.IN_HAND, shed.visit(quad).state());
        assertEquals(Optional.of("H2"), shed.visit(quad).standsIn());
        assertEquals(
                Optional.of(new Activity.OnStay(quad, Step.UNDERSIDE, Optional.of("in-underside"))), shed.on("cy"));
        assertTrue(shed.task(quad, "in-underside").progress().isBy("cy"));
    }

    @Test
    void a_slower_person_is_expected_to_take_longer() {
        String quad = shed.quad();
        shed.works("ada", quad, "in-underside", "raise");
        shed.does(Shed.start("cy", quad, "inspect-underside"));
        assertEquals(9, shed.task(quad, "inspect-underside").progress().left());
    }

    @Test
    void who_starts_another_task_pauses_the_first_which_waits_half_done() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil")).orElseThrow();
        String other = shed.does(Shed.takeIn("quad-2", Mud.CLEAN, "oil")).orElseThrow();
        shed.works("ada", quad, "in-wash").does(Shed.start("ada", quad, "wash"));
        shed.at("07:09").does(Shed.start("ada", other, "in-underside"));
        Progress wash = shed.task(quad, "wash").progress();
        assertEquals(Progress.Status.PAUSED, wash.status());
        assertEquals(20 - 8, wash.left());
        assertEquals(Optional.empty(), wash.person());
        assertEquals(
                Optional.of(new Activity.OnStay(other, Step.UNDERSIDE, Optional.of("in-underside"))), shed.on("ada"));
        assertEquals(
                Optional.of(Shed.time("07:09")), shed.day().entries().get(1).to());
        assertEquals(Optional.of("W"), shed.visit(quad).standsIn());
    }

    @Test
    void breaks_are_not_worked_on_a_task_that_runs_through_them() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CLEAN, "brakes")).orElseThrow();
        shed.works("ada", quad, "in-underside", "raise").at("11:50").does(Shed.start("ada", quad, "pads-change"));
        shed.at("12:40").does(new Act.Pause(quad, "pads-change"));
        assertEquals(30 - 20, shed.task(quad, "pads-change").progress().left());
    }

    @Test
    void a_task_that_runs_over_has_a_minute_left_still() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.at("08:00").does(new Act.Pause(quad, "in-underside"));
        assertEquals(1, shed.task(quad, "in-underside").progress().left());
    }

    @Test
    void finishing_clocks_off_and_the_rest_of_the_points_get_one_mark() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CLEAN, "brakes")).orElseThrow();
        shed.works("bo", quad, "in-underside", "raise").does(Shed.start("bo", quad, "inspect-underside"));
        shed.does(Shed.tick(quad, "pads", Mark.FIX));
        shed.does(new Act.Finish("bo", quad, "inspect-underside", Optional.of(Mark.NOT_REACHED), "no time"));
        assertEquals(Mark.FIX, shed.visit(quad).findingAt("pads").orElseThrow().mark());
        assertEquals(
                Mark.NOT_REACHED,
                shed.visit(quad).findingAt("frame").orElseThrow().mark());
        assertEquals(Optional.empty(), shed.on("bo"));
    }

    @Test
    void who_presses_finish_for_another_leaves_the_work_on_the_others_name() {
        String quad = shed.quad();
        shed.does(Shed.start("cy", quad, "in-underside"));
        shed.does(new Act.DoOther("ada", Kind.PAPERWORK));
        shed.does(Shed.finish("ada", quad, "in-underside"));
        assertTrue(shed.task(quad, "in-underside").progress().isBy("cy"));
        assertEquals(Optional.empty(), shed.on("cy"));
        assertEquals(Optional.of(new Activity.OtherWork(Kind.PAPERWORK)), shed.on("ada"));
    }

    @Test
    void the_last_task_finished_makes_the_visit_done_and_collecting_frees_its_tag() {
        String quad = shed.quad();
        shed.worksThrough("cy", quad).works("ada", quad, "sign-off");
        assertEquals(VisitState.DONE, shed.visit(quad).state());
        assertEquals(Optional.of(shed.now()), shed.visit(quad).finished());
        shed.does(new Act.Collect(quad, Optional.empty()));
        assertEquals(VisitState.GONE, shed.visit(quad).state());
        assertEquals(OptionalInt.empty(), shed.visit(quad).tag());
    }

    @Test
    void a_later_finding_at_a_point_takes_the_place_of_the_earlier_one() {
        String quad = shed.quad();
        shed.does(Shed.tick(quad, "pads", Mark.GOOD));
        shed.does(Shed.tick(quad, "pads", Mark.WATCH));
        assertEquals(1, shed.visit(quad).findings().size());
        assertEquals(Mark.WATCH, shed.visit(quad).findings().get(0).mark());
    }

    @Test
    void a_hold_pauses_who_was_on_it_and_keeps_the_place() {
        String quad = shed.quad();
        shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
        shed.does(Shed.hold(quad));
        assertEquals(VisitState.HELD, shed.visit(quad).state());
        assertEquals(Optional.empty(), shed.on("ada"));
        assertEquals(Optional.of("H1"), shed.visit(quad).standsIn());
        assertEquals("H1", shed.outlook().plan().findStay(quad, 0).orElseThrow().place());
        assertTrue(shed.outlook().freeFrom("H1").orElseThrow() > shed.day().minuteOf(Shed.time("14:00")));
        shed.does(new Act.Release(quad));
        assertEquals(VisitState.IN_HAND, shed.visit(quad).state());
    }

    @Test
    void a_hold_without_an_end_is_looked_at_again_when_the_next_working_day_begins() {
        String quad = shed.quad();
        shed.on(LocalDate.of(2026, 5, 15), "08:00");
        shed.does(new Act.HoldVisit(quad, Hold.Reason.OWNERS_WORD, "", Optional.empty()));
        assertEquals(
                LocalDate.of(2026, 5, 18)
                        .atTime(LocalTime.of(7, 0))
                        .atZone(Shed.ZONE)
                        .toInstant(),
                shed.visit(quad).hold().orElseThrow().until());
        shed.does(new Act.Release(quad));
        assertEquals(VisitState.IN_YARD, shed.visit(quad).state());
    }

    @Test
    void a_task_handed_over_goes_on_under_the_other_with_what_is_left() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil")).orElseThrow();
        shed.works("cy", quad, "in-wash").at("07:10").does(Shed.start("cy", quad, "wash"));
        shed.at("07:20").does(new Act.HandOver(quad, "wash", "bo"));
        Progress wash = shed.task(quad, "wash").progress();
        assertTrue(wash.isBy("bo"));
        assertEquals(20, wash.left(), "thirty of the apprentice's minutes, less ten");
        assertEquals(Optional.empty(), shed.on("cy"));
        assertEquals(Optional.of(new Activity.OnStay(quad, Step.WASH, Optional.of("wash"))), shed.on("bo"));
    }

    @Test
    void work_found_on_the_way_joins_the_visit_and_its_lines() {
        String quad = shed.quad();
        shed.works("ada", quad, "in-underside", "raise");
        shed.does(new Act.AddWork(quad, List.of(new Act.Wanted("brakes", Payer.OWN_ACCOUNT))));
        assertEquals(2, shed.visit(quad).lines().size());
        assertEquals(List.of("pads-change"), shed.task(quad, "sign-off").notBy());
        assertEquals(List.of("raise"), shed.task(quad, "pads-change").after());
    }

    @Test
    void other_work_pauses_what_one_was_on_and_stopping_leaves_one_free() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.does(new Act.DoOther("ada", Kind.FETCHING));
        assertEquals(
                Progress.Status.PAUSED,
                shed.task(quad, "in-underside").progress().status());
        shed.does(new Act.Stop("ada", false));
        assertEquals(Optional.empty(), shed.on("ada"));
        assertTrue(shed.day().isHere(shed.day().shop().expectPerson("ada")));
    }

    @Test
    void who_leaves_is_planned_no_more_today_and_who_comes_back_is() {
        String quad = shed.quad();
        shed.at("08:00").does(new Act.Stop("bo", true));
        shed.does(new Act.Stop("cy", true));
        shed.does(new Act.Stop("ada", true));
        assertTrue(shed.outlook().readyAt(quad).orElseThrow().isAfter(Shed.time("16:00")));
        shed.does(new Act.BeHere("ada", Shed.time("12:00")));
        assertEquals(
                12 * 60,
                shed.outlook().problem().people().get(0).shifts().get(0).to());
        shed.does(Shed.start("ada", quad, "in-underside"));
        assertTrue(shed.outlook().timeOf(quad, "in-underside").orElseThrow().end() < 9 * 60);
    }

    @Test
    void a_changed_promise_is_the_one_planned_for_and_the_first_still_counts() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "11:00", "", false));
        shed.does(Shed.promise(quad, "12:00", "no plug on the shelf", false));
        assertEquals(Shed.time("12:00"), at(shed.visit(quad).promise()));
        assertEquals(Shed.time("11:00"), at(shed.visit(quad).firstPromise()));
        assertEquals(12 * 60, shed.outlook().problem().jobs().get(0).promise().orElseThrow());
    }

    @Test
    void what_the_owner_asked_for_counts_from_then_on() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "11:00", "", false));
        shed.does(Shed.promise(quad, "14:00", "comes after school", true));
        shed.does(Shed.promise(quad, "15:00", "no plug on the shelf", false));
        assertEquals(Shed.time("14:00"), at(shed.visit(quad).firstPromise()));
        assertEquals(Shed.time("15:00"), at(shed.visit(quad).promise()));
    }

    private static Instant at(Optional<Promise> promise) {
        return promise.orElseThrow().at();
    }

    @Test
    void closing_the_day_asks_when_the_others_left_and_lets_who_closes_it_go() {
        shed.at("16:10").assertRefused("still_here", new Act.CloseDay("ada"));
        shed.does(new Act.Stop("bo", true, Optional.of(Shed.time("16:00"))));
        shed.does(new Act.Stop("cy", true));
        shed.does(new Act.CloseDay("ada"));
        assertEquals(Optional.of(Shed.time("16:00")), left("bo"));
        assertEquals(Optional.of(Shed.time("16:10")), left("ada"));
        assertEquals(
                Optional.of(new Opening.Closed(Shed.time("16:10"), "ada")),
                shed.day().opening().orElseThrow().closed());
    }

    private Optional<Instant> left(String person) {
        return shed.day()
                .opening()
                .orElseThrow()
                .attendanceOf(person)
                .orElseThrow()
                .left();
    }

    @Test
    void who_forgot_to_clock_off_yesterday_can_be_clocked_off_without_being_here() {
        shed.does(new Act.DoOther("bo", Kind.CLEANING_SHOP));
        LocalDate next = Shed.DATE.plusDays(1);
        shed.on(next, "07:00");
        shed.does(new Act.OpenDay(
                "ada",
                List.of(new Act.OpenDay.Here("ada", shed.now(), shed.now().plusSeconds(3600))),
                List.of()));
        shed.assertRefused("still_clocked_on", new Act.CloseDay("ada"));
        shed.does(new Act.Stop("bo", true));
        shed.does(new Act.CloseDay("ada"));
    }

    @Test
    void who_works_alone_may_sign_off_their_own_work_so_that_the_machine_can_leave() {
        Shed own = Shed.adasOwn();
        String quad = own.does(Shed.takeIn("quad-1", Mud.CLEAN, "brakes")).orElseThrow();
        assertTrue(own.outlook().readyAt(quad).isPresent());
        own.worksThrough("ada", quad);
        assertTrue(own.outlook().readyAt(quad).isPresent());
        own.works("ada", quad, "sign-off");
        assertEquals(VisitState.DONE, own.visit(quad).state());
    }

    /** A lift is inspected by its operator every day before use: ANSI/ALI ALOIM; AS/NZS 2550.9. */
    @Test
    void a_hoist_that_was_not_checked_today_is_not_used() {
        String quad = shed.quad();
        assertTrue(shed.outlook().readyAt(quad).orElseThrow().isBefore(Shed.time("12:00")));
        LocalDate next = Shed.DATE.plusDays(1);
        shed.on(next, "07:00");
        shed.does(new Act.OpenDay(
                "ada",
                List.of(new Act.OpenDay.Here("ada", shed.now(), shed.now().plusSeconds(9 * 3600))),
                List.of()));
        assertTrue(shed.outlook().staysIn("H1").stream().allMatch(stay -> stay.from() >= 24 * 60));
        assertTrue(shed.outlook().staysIn("H2").stream().allMatch(stay -> stay.from() >= 24 * 60));
        shed.assertRefused("no_place_free", Shed.start("ada", quad, "in-underside"));
        shed.does(new Act.CheckHoist(Shed.checked("H1")));
        shed.does(Shed.start("ada", quad, "in-underside"));
        assertEquals(Optional.of("H1"), shed.visit(quad).standsIn());
    }

    @Test
    void nobody_works_on_on_a_hoist_that_is_locked_out_under_them() {
        String quad = shed.quad();
        shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
        shed.does(new Act.CheckHoist(Shed.lockedOut("H1")));
        assertEquals(Optional.empty(), shed.on("ada"));
        assertEquals(
                Progress.Status.PAUSED,
                shed.task(quad, "in-underside").progress().status());
        shed.assertRefused("hoist_not_checked", Shed.start("ada", quad, "in-underside"));
    }

    @Test
    void an_act_tells_what_is_to_be_saved_each_thing_once() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        Outcome outcome = Planning.carryOut(shed.day(), Shed.finish("ada", quad, "in-underside"), shed.now());
        List<Change> changes = ((Outcome.Done) outcome).changes();
        assertEquals(3, changes.size());
        assertTrue(changes.get(0) instanceof Change.VisitSaved saved
                && saved.visit().id().equals(quad));
        assertTrue(changes.get(1) instanceof Change.EntrySaved saved
                && !saved.entry().isOpen());
        assertTrue(changes.get(2) instanceof Change.PlanPosted);
    }

    @Test
    void nobody_is_clocked_on_twice_whatever_they_turn_to() {
        String quad = shed.quad();
        for (String task : List.of("in-underside", "raise")) {
            shed.works("ada", quad, task);
            shed.does(new Act.DoOther("ada", Kind.WAITING));
        }
        assertEquals(1, shed.day().entries().stream().filter(ClockEntry::isOpen).count());
        assertTrue(shed.visit(quad).tasks().stream().noneMatch(ActsTest::isRunning));
    }

    private static boolean isRunning(Task task) {
        return task.progress().isRunning();
    }
}
