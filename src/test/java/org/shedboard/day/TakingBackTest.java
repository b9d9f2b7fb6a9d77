package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.register.Movement;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

class TakingBackTest {
    private final Shed shed = Shed.open();
    private final String quad = shed.quad();

    @Test
    void a_start_taken_back_strikes_its_row_out_and_the_task_has_not_begun() {
        Visit before = shed.visit(quad);
        Trace start = shed.at("08:00").leaves(Shed.start("ada", quad, "in-underside"));
        shed.at("08:05").does(Shed.back(start));
        assertEquals(before, shed.visit(quad));
        assertEquals(Optional.empty(), shed.on("ada"));
        ClockEntry clocked = shed.day().entries().get(0);
        ClockEntry struck = shed.day().entries().get(1);
        assertEquals(Optional.of(Shed.time("08:05")), clocked.to());
        assertEquals(
                Optional.of(new Correction(
                        Optional.of(clocked.id()), true, "ada", Shed.time("08:05"), "a slip of the finger")),
                struck.correction());
        assertEquals(List.of(), ClockEntry.standing(shed.day().entries()));
    }

    @Test
    void who_was_taken_off_a_task_by_a_start_that_is_taken_back_was_on_it_all_along() {
        String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        shed.at("08:00").does(Shed.start("ada", other, "in-underside"));
        Visit before = shed.visit(other);
        Trace start = shed.at("08:10").leaves(Shed.start("ada", quad, "in-underside"));
        shed.at("08:12").does(Shed.back(start));
        assertEquals(before, shed.visit(other));
        List<ClockEntry> standing = ClockEntry.standing(shed.day().entries());
        assertEquals(1, standing.size());
        assertEquals(Shed.time("08:00"), standing.get(0).from());
        assertTrue(standing.get(0).isOpen());
    }

    @Test
    void a_start_done_again_begins_when_it_first_began() {
        Trace start = shed.at("08:00").leaves(Shed.start("ada", quad, "in-underside"));
        Visit started = shed.visit(quad);
        Trace back = shed.at("08:05").leaves(Shed.back(start));
        shed.at("08:07").does(Shed.back(back));
        assertEquals(started, shed.visit(quad));
        ClockEntry open = shed.day().openEntryOf("ada").orElseThrow();
        assertEquals(Shed.time("08:00"), open.from());
    }

    @Test
    void a_finish_taken_back_leaves_whoever_did_it_on_the_task_and_the_machine_in_hand() {
        shed.worksThrough("ada", quad);
        shed.does(Shed.start("bo", quad, "sign-off"));
        Visit before = shed.visit(quad);
        Trace finish = shed.later(3).leaves(Shed.finish("bo", quad, "sign-off"));
        assertEquals(VisitState.DONE, shed.visit(quad).state());
        shed.later(1).does(Shed.back(finish));
        assertEquals(before, shed.visit(quad));
        assertTrue(shed.day().openEntryOf("bo").isPresent());
        assertTrue(shed.day().books().register().logbook().serviced().isEmpty());
    }

    @Test
    void parts_that_a_finish_took_are_back_on_the_shelf_by_a_movement_of_their_own() {
        Shed stocked = Parts.shed(Shed.open(), List.of(Parts.plenty()), List.of());
        String visit = stocked.quad();
        stocked.works("ada", visit, "in-underside", "raise", "inspect-underside", "drain");
        stocked.later(20).does(Shed.start("ada", visit, "plug"));
        Amount before = amountOf(stocked, "w12");
        String line = stocked.visit(visit).lines().get(0).id();
        stocked.does(new Act.FitPart(visit, line, "Washer", "w12", "ada"));
        Trace finish = stocked.leaves(Shed.finish("ada", visit, "plug"));
        assertTrue(amountOf(stocked, "w12").compareTo(before) < 0);
        Outcome.Done back = (Outcome.Done) Planning.carryOut(stocked.day(), Shed.back(finish), stocked.now());
        assertEquals(
                before,
                back.day().books().shelf().findStock("w12").orElseThrow().amount());
        List<Movement> moved = back.changes().stream()
                .filter(Change.MovementSaved.class::isInstance)
                .map(change -> ((Change.MovementSaved) change).movement())
                .toList();
        assertTrue(moved.stream().allMatch(each -> each.kind() == Movement.Kind.PUT_BACK), moved::toString);
        assertTrue(moved.stream()
                .noneMatch(each ->
                        finish.moved().stream().anyMatch(taken -> taken.id().equals(each.id()))));
        assertFalse(moved.isEmpty());
    }

    private static Amount amountOf(Shed shed, String item) {
        return shed.day().books().shelf().findStock(item).orElseThrow().amount();
    }

    @Test
    void a_take_in_taken_back_is_a_visit_that_was_called_off_and_its_tag_is_free() {
        Trace in = shed.leaves(Shed.takeIn("quad-2", Shed.CLEAN, "oil"));
        String visit = in.visitIds().get(0);
        int tag = shed.visit(visit).tag().orElseThrow();
        Trace back = shed.leaves(Shed.back(in));
        assertEquals(VisitState.CANCELLED, shed.visit(visit).state());
        assertTrue(shed.day().findByTag(tag).isEmpty());
        shed.does(Shed.back(back));
        assertEquals(tag, shed.visit(visit).tag().orElseThrow());
        assertEquals(VisitState.IN_YARD, shed.visit(visit).state());
    }

    @Test
    void a_take_in_is_not_done_again_while_another_machine_has_its_tag() {
        Trace in = shed.leaves(Shed.takeIn("quad-2", Shed.CLEAN, "oil"));
        Trace back = shed.leaves(Shed.back(in));
        shed.does(Shed.takeIn("quad-3", Shed.CLEAN, "oil"));
        shed.assertRefused("tag_taken", Shed.back(back));
    }

    @Test
    void a_machine_that_was_taken_in_once_more_meanwhile_is_not_taken_in_again() {
        Trace in = shed.leaves(Shed.takeIn("quad-2", Shed.CLEAN, "oil"));
        Trace back = shed.leaves(Shed.back(in));
        shed.does(Shed.takeIn(
                Act.TakeIn.Which.known("quad-2"),
                Shed.nobodyNew(),
                Shed.CLEAN,
                OptionalInt.of(9),
                Optional.empty(),
                "oil"));
        shed.assertRefused("machine_here", Shed.back(back));
    }

    @Test
    void a_finding_a_promise_and_a_hold_taken_back_are_as_if_they_had_never_been() {
        Visit before = shed.visit(quad);
        Trace tick = shed.leaves(Shed.tick(quad, "frame", Mark.FIX));
        Trace promise = shed.leaves(Shed.promise(quad, "15:00", "", false));
        Trace hold = shed.leaves(Shed.hold(quad));
        shed.does(Shed.back(hold));
        shed.does(Shed.back(promise));
        shed.does(Shed.back(tick));
        assertEquals(before, shed.visit(quad));
    }

    @Test
    void nothing_is_taken_back_past_what_another_terminal_did_to_the_same_machine() {
        Trace tick = shed.leaves(Shed.tick(quad, "frame", Mark.WATCH));
        shed.does(Shed.promise(quad, "15:00", "", false));
        shed.assertRefused("changed_since", Shed.back(tick));
    }

    @Test
    void what_another_terminal_did_to_another_machine_is_no_hindrance() {
        Trace tick = shed.leaves(Shed.tick(quad, "frame", Mark.WATCH));
        String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.back(tick));
        assertEquals(List.of(), shed.visit(quad).findings());
        assertEquals(VisitState.IN_YARD, shed.visit(other).state());
    }

    @Test
    void a_finish_is_not_taken_back_into_a_place_that_another_machine_has_taken() {
        Trace last = Trace.NOTHING;
        for (String task : List.of("in-underside", "raise", "inspect-underside", "drain", "plug", "lower")) {
            shed.later(30).does(Shed.startIn("H1", "ada", quad, task));
            last = shed.later(5).leaves(Shed.finish("ada", quad, task));
            if (shed.visit(quad).standsIn().isEmpty()) {
                break;
            }
        }
        assertEquals(Optional.empty(), shed.visit(quad).standsIn());
        String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.startIn("H1", "bo", other, "in-underside"));
        shed.assertRefused("place_taken", Shed.back(last));
    }

    @Test
    void nobody_is_put_back_on_a_task_after_they_left() {
        shed.does(Shed.start("bo", quad, "in-underside"));
        Trace finish = shed.later(5).leaves(Shed.finish("bo", quad, "in-underside"));
        shed.does(new Act.Stop("bo", true));
        shed.assertRefused("person_not_here", Shed.back(finish));
    }

    @Test
    void nothing_is_taken_back_past_the_close() {
        Trace tick = shed.leaves(Shed.tick(quad, "frame", Mark.WATCH));
        shed.does(new Act.Stop("bo", true));
        shed.does(new Act.Stop("cy", true));
        shed.does(new Act.CloseDay("ada"));
        shed.assertRefused("day_already_closed", Shed.back(tick));
    }

    @Test
    void what_was_planned_is_posted_again() {
        Posted before = shed.day().posted().orElseThrow();
        Trace hold = shed.leaves(Shed.hold(quad));
        assertFalse(before.plan()
                .tasks()
                .equals(shed.day().posted().orElseThrow().plan().tasks()));
        shed.does(Shed.back(hold));
        assertEquals(
                before.plan().tasks(), shed.day().posted().orElseThrow().plan().tasks());
    }

    @Test
    void a_break_taken_back_was_no_break() {
        shed.at("08:00").does(Shed.start("ada", quad, "in-underside"));
        Trace rest = shed.at("08:10").leaves(new Act.TakeBreak("ada", Activity.Break.Kind.REST));
        shed.at("08:11").does(Shed.back(rest));
        assertTrue(shed.task(quad, "in-underside").progress().isRunning());
        assertEquals(1, ClockEntry.standing(shed.day().entries()).size());
    }

    @Test
    void what_was_true_when_it_was_said_leaves_no_trace_and_says_how_it_is_put_right() {
        Act here = new Act.BeHere("ada", Shed.time("17:00"));
        assertEquals(Optional.of(Lasting.PRESENCE), Lasting.of(here, shed.leaves(here)));
        Act home = new Act.Stop("bo", true);
        assertEquals(Optional.of(Lasting.PRESENCE), Lasting.of(home, shed.leaves(home)));
        Act count = new Act.CountStock("oil", Amount.of(2), Optional.empty(), "bo");
        assertEquals(Optional.of(Lasting.SHELF), Lasting.of(count, Trace.NOTHING));
        Act start = Shed.start("ada", quad, "in-underside");
        assertEquals(Optional.empty(), Lasting.of(start, shed.leaves(start)));
    }
}
