package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.Lent;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.Errand;
import org.shedboard.pack.Span;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Step;

/** What people clock besides their tasks, and what is put right afterwards. */
class HoursActsTest {
    private final Shed shed = Shed.open();

    @Test
    void who_takes_a_break_leaves_a_task_half_done() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.at("10:02").does(new Act.TakeBreak("ada", Break.Kind.REST));
        assertEquals(Optional.of(new Break(Break.Kind.REST)), shed.on("ada"));
        assertEquals(
                Progress.Status.PAUSED,
                shed.task(quad, "in-underside").progress().status());
    }

    @Test
    void a_hand_is_lent_and_brought_back_to_the_task_it_was_called_away_from() {
        String quad = shed.quad();
        String tractor = shed.does(Shed.takeIn("tractor-1", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.start("ada", quad, "in-underside"));
        OnStay own = new OnStay(quad, Step.UNDERSIDE, Optional.of("in-underside"));
        shed.at("10:02").does(new Act.Lend("ada", tractor));
        assertEquals(Optional.of(new Lent(new OnStay(tractor, Step.UNDERSIDE), own)), shed.on("ada"));
        shed.at("10:07").does(new Act.BringBack("ada"));
        assertEquals(Optional.of(own), shed.on("ada"));
        assertTrue(shed.task(quad, "in-underside").progress().isRunning());
    }

    @Test
    void a_hand_lent_on_goes_back_to_where_it_came_from_first() {
        String quad = shed.quad();
        String tractor = shed.does(Shed.takeIn("tractor-1", Shed.CLEAN, "oil")).orElseThrow();
        String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.does(new Act.Lend("ada", tractor));
        shed.does(new Act.Lend("ada", other));
        shed.does(new Act.BringBack("ada"));
        assertTrue(shed.task(quad, "in-underside").progress().isRunning());
    }

    @Test
    void who_comes_back_to_a_task_that_another_took_over_is_on_nothing() {
        String quad = shed.quad();
        String tractor = shed.does(Shed.takeIn("tractor-1", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.does(new Act.Lend("ada", tractor));
        shed.does(Shed.start("bo", quad, "in-underside"));
        shed.does(new Act.BringBack("ada"));
        assertEquals(Optional.empty(), shed.on("ada"));
    }

    @Test
    void who_is_on_nothing_lends_a_hand_without_being_called_away() {
        String quad = shed.quad();
        shed.does(new Act.Lend("cy", quad));
        assertEquals(Optional.of(new OnStay(quad, Step.UNDERSIDE)), shed.on("cy"));
    }

    @Test
    void several_may_be_on_one_machine() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.does(new Act.Lend("cy", quad));
        assertTrue(shed.on("ada").isPresent());
        assertTrue(shed.on("cy").isPresent());
    }

    @Test
    void who_left_and_comes_back_was_away_in_between() {
        shed.at("10:00").does(new Act.Stop("bo", true));
        shed.at("13:00").does(new Act.BeHere("bo", Shed.time("16:00")));
        List<Attendance> bos = shed.day().opening().orElseThrow().attendances().stream()
                .filter(each -> each.personId().equals("bo"))
                .toList();
        assertEquals(
                List.of(
                        new Attendance("bo", Shed.time("07:00"), Shed.time("16:00"), Optional.of(Shed.time("10:00"))),
                        new Attendance("bo", Shed.time("13:00"), Shed.time("16:00"), Optional.empty())),
                bos);
    }

    @Test
    void who_forgot_to_clock_off_is_clocked_off_when_they_say_they_went() {
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.at("12:00").does(new Act.Stop("bo", false, Optional.of(Shed.time("10:40"))));
        assertEquals(
                Optional.of(Shed.time("10:40")), shed.day().entries().get(0).to());
        assertTrue(shed.day().isHere(shed.day().shop().expectPerson("bo")));
    }

    @Test
    void a_correction_is_a_new_row_that_names_the_old_one_which_stays() {
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.at("11:00").does(new Act.Stop("bo", false));
        ClockEntry old = shed.day().entries().get(0);
        Act.Correct.Written right = new Act.Correct.Written(
                "bo", new Activity.OtherWork(Kind.PAPERWORK), Shed.time("10:00"), Shed.time("10:30"));
        shed.at("12:00").does(new Act.Correct("ada", Optional.of(old.id()), Optional.of(right), " wrong kind "));
        assertEquals(2, shed.day().entries().size());
        assertEquals(old, shed.day().entries().get(0));
        ClockEntry row = shed.day().entries().get(1);
        Correction why = new Correction(Optional.of(old.id()), false, "ada", Shed.time("12:00"), "wrong kind");
        assertEquals(Optional.of(why), row.correction());
        assertEquals(List.of(row), ClockEntry.standing(shed.day().entries()));
    }

    @Test
    void a_row_that_never_was_is_struck_out_by_a_row() {
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.at("11:00").does(new Act.Stop("bo", false));
        String old = shed.day().entries().get(0).id();
        shed.does(new Act.Correct("ada", Optional.of(old), Optional.empty(), "pressed by mistake"));
        assertEquals(2, shed.day().entries().size());
        assertEquals(List.of(), ClockEntry.standing(shed.day().entries()));
    }

    @Test
    void a_closed_day_still_takes_corrections() {
        shed.at("16:00").does(new Act.Stop("bo", true));
        shed.does(new Act.Stop("cy", true));
        shed.does(new Act.CloseDay("ada"));
        Act.Correct.Written right =
                new Act.Correct.Written("bo", new Activity.AtWork(), Shed.time("06:30"), Shed.time("07:00"));
        shed.does(new Act.Correct("ada", Optional.empty(), Optional.of(right), "came early to fetch the float"));
        assertTrue(shed.day().isClosed());
        assertEquals(1, shed.day().entries().size());
    }

    @Test
    void the_plan_goes_round_an_errand() {
        shed.does(new Act.PlanErrand("ada", Kind.FETCHING, Shed.time("10:30"), 45, "the quad at Tarn"));
        List<Span> shifts = new Roster(shed.day()).shiftsOf(shed.day().shop().expectPerson("ada"));
        int from = shed.day().minuteOf(Shed.time("10:30"));
        assertFalse(shifts.stream().anyMatch(span -> span.from() < from + 45 && from < span.to()));
        assertTrue(shifts.stream().anyMatch(span -> span.to() == from));
        assertTrue(shifts.stream().anyMatch(span -> span.from() == from + 45));
    }

    @Test
    void an_errand_is_begun_by_the_one_it_is_planned_for_and_ends_with_what_they_do_next() {
        shed.does(new Act.PlanErrand("ada", Kind.FETCHING, Shed.time("10:30"), 45, ""));
        String id = shed.day().errands().get(0).id();
        shed.at("10:20").does(new Act.RunErrand(id));
        assertEquals(Optional.of(new Activity.OtherWork(Kind.FETCHING)), shed.on("ada"));
        assertEquals(Errand.State.BEGUN, shed.day().errands().get(0).state());
        assertEquals(Shed.time("10:20"), shed.day().errands().get(0).from());
        shed.at("11:00").does(new Act.DoOther("ada", Kind.PAPERWORK));
        assertEquals(Errand.State.DONE, shed.day().errands().get(0).state());
    }

    @Test
    void what_was_left_open_yesterday_is_named_the_next_morning() {
        Instant began = Shed.time("15:00");
        shed.at("15:00").does(new Act.DoOther("bo", Kind.CLEANING_SHOP));
        shed.on(Shed.DATE.plusDays(1), "07:00");
        assertEquals(
                List.of(began),
                shed.day().unsettled().stream().map(ClockEntry::from).toList());
        assertEquals(Optional.of(Shed.DATE), shed.day().unclosed());
    }

    private List<List<String>> concerns(Concern.Kind kind) {
        return Concerns.of(shed.outlook()).stream()
                .filter(concern -> concern.kind() == kind)
                .map(Concern::values)
                .toList();
    }

    @Test
    void who_is_clocked_on_after_knock_off_is_asked_about() {
        shed.at("15:00").does(new Act.DoOther("bo", Kind.CLEANING_SHOP));
        shed.at("16:00");
        assertEquals(List.of(), concerns(Concern.Kind.ON_AFTER_KNOCK_OFF));
        shed.at("16:01");
        assertEquals(List.of(List.of("Bo", "16:00")), concerns(Concern.Kind.ON_AFTER_KNOCK_OFF));
    }

    @Test
    void who_began_something_after_knock_off_did_not_forget() {
        shed.at("16:10").does(new Act.DoOther("bo", Kind.CLEANING_SHOP));
        shed.at("16:30");
        assertEquals(List.of(), concerns(Concern.Kind.ON_AFTER_KNOCK_OFF));
    }

    @Test
    void what_was_left_open_comes_before_all_else_that_needs_the_foreman() {
        shed.at("15:00").does(new Act.DoOther("bo", Kind.CLEANING_SHOP));
        shed.quad();
        shed.on(Shed.DATE.plusDays(1), "07:00");
        List<Concern> all = Concerns.of(shed.outlook());
        assertEquals(Concern.Kind.UNSETTLED, all.get(0).kind());
        assertEquals(Concern.Kind.DAY_NOT_CLOSED, all.get(1).kind());
    }
}
