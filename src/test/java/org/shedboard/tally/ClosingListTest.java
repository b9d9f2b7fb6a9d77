package org.shedboard.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Shed;
import org.shedboard.hours.Activity.Break;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Task;
import org.shedboard.shop.WorkKind;
import org.shedboard.words.Words;

/** One case for each thing there is to look at before the day is closed. */
class ClosingListTest {
    private final Shed shed = Shed.open();

    private List<ClosingItem> items(ClosingItem.Kind kind) {
        SpanTally tally = SpanTally.of(Ledger.of(shed.day(), shed.now()));
        List<ClosingItem> all = ClosingList.of(shed.outlook(), tally);
        all.forEach(item ->
                assertTrue(!Words.say("closing." + item.kind(), item.values()).contains("{")));
        return all.stream().filter(item -> item.kind() == kind).toList();
    }

    private List<String> values(ClosingItem.Kind kind) {
        return items(kind).stream().map(item -> item.values().get(0)).toList();
    }

    @Test
    void who_is_clocked_on_is_asked_for_that_and_who_is_only_here_for_when_they_left() {
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        assertEquals(List.of("Bo"), values(ClosingItem.Kind.OPEN_ENTRY));
        assertEquals(List.of("Ada", "Cy"), values(ClosingItem.Kind.STILL_HERE));
        shed.does(new Act.Stop("bo", true));
        assertEquals(List.of(), items(ClosingItem.Kind.OPEN_ENTRY));
        assertEquals(List.of("Ada", "Cy"), values(ClosingItem.Kind.STILL_HERE));
    }

    @Test
    void a_break_between_rest_and_meal_is_asked_about_until_somebody_says() {
        shed.at("10:00").does(new Act.TakeBreak("bo", Break.Kind.MEAL));
        shed.at("10:25").does(new Act.Stop("bo", false));
        ClosingItem item = items(ClosingItem.Kind.REST_TO_SAY).get(0);
        assertEquals(List.of("Bo", "10:00", "10:25"), item.values());
        Act.Correct.Written right =
                new Act.Correct.Written("bo", new Break(Break.Kind.OFF_DUTY), Shed.time("10:00"), Shed.time("10:25"));
        shed.does(new Act.Correct("ada", item.entry().map(entry -> entry.id()), Optional.of(right), "was at the bank"));
        assertEquals(List.of(), items(ClosingItem.Kind.REST_TO_SAY));
    }

    @Test
    void a_planned_meal_cut_short_is_asked_about_too_and_settled_by_a_row() {
        shed.at("11:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.at("12:05").does(new Act.Stop("bo", false));
        shed.at("14:00");
        ClosingItem item = items(ClosingItem.Kind.REST_TO_SAY).get(0);
        assertEquals(List.of("Bo", "12:05", "12:30"), item.values());
        Act.Correct.Written right =
                new Act.Correct.Written("bo", new Break(Break.Kind.REST), Shed.time("12:05"), Shed.time("12:30"));
        shed.does(new Act.Correct("bo", Optional.empty(), Optional.of(right), "was called twice"));
        assertEquals(List.of(), items(ClosingItem.Kind.REST_TO_SAY));
    }

    @Test
    void a_machine_on_a_hoist_is_named_with_it() {
        String quad = shed.quad();
        shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
        assertEquals(
                "light hoist", items(ClosingItem.Kind.ON_HOIST).get(0).values().get(1));
    }

    @Test
    void a_drained_machine_is_named_until_it_is_filled() {
        String quad = shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "oil")).orElseThrow();
        assertTrue(shed.visit(quad).findTask("drain").isPresent());
        worksUntil(quad, "fill");
        assertEquals(1, items(ClosingItem.Kind.NO_OIL).size());
        shed.works("ada", quad, "fill");
        assertEquals(List.of(), items(ClosingItem.Kind.NO_OIL));
    }

    private void worksUntil(String visit, String last) {
        for (Task task : shed.visit(visit).tasks()) {
            if (task.id().equals(last)) {
                return;
            }
            shed.works(task.kind() == WorkKind.SIGN_OFF ? "bo" : "ada", visit, task.id());
        }
    }

    @Test
    void points_not_reached_on_a_machine_that_is_done_are_named() {
        String quad = shed.quad();
        for (Task task : shed.visit(quad).tasks()) {
            String person = task.kind() == WorkKind.SIGN_OFF ? "bo" : "ada";
            shed.does(new Act.Start(person, quad, task.id(), Optional.empty()));
            shed.does(new Act.Finish(person, quad, task.id(), Optional.of(Mark.NOT_REACHED), "no time"));
        }
        assertEquals(1, items(ClosingItem.Kind.NOT_REACHED).size());
    }

    @Test
    void a_missed_promise_says_whether_the_owner_was_told_in_time() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "09:00", "", false));
        String other = shed.does(Shed.takeIn("quad-2", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(Shed.promise(other, "10:00", "", false));
        shed.at("09:40").does(Shed.promise(other, "15:00", "the plug is seized", false));
        shed.at("15:30");
        assertEquals(1, items(ClosingItem.Kind.MISSED_UNTOLD).size());
        ClosingItem told = items(ClosingItem.Kind.MISSED_TOLD).get(0);
        assertEquals(List.of("10:00", "09:40", "15:00"), told.values().subList(1, 4));
    }

    @Test
    void who_was_told_after_the_promised_time_was_not_told() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "09:00", "", false));
        shed.at("09:01").does(Shed.promise(quad, "15:00", "the plug is seized", false));
        assertEquals(1, items(ClosingItem.Kind.MISSED_UNTOLD).size());
    }

    @Test
    void a_promise_to_come_is_missed_only_when_the_plan_has_it_late() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "15:30", "", false));
        assertEquals(List.of(), items(ClosingItem.Kind.MISSED_UNTOLD));
    }

    @Test
    void parts_locked_hoists_and_what_goes_over_are_named() {
        String quad = shed.quad();
        shed.does(new Act.HoldVisit(quad, Hold.Reason.PARTS, "boot kit", Optional.of(Shed.time("15:00"))));
        shed.does(new Act.CheckHoist(Shed.lockedOut("H2")));
        assertEquals(
                "boot kit",
                items(ClosingItem.Kind.PARTS_TO_ORDER).get(0).values().get(1));
        assertEquals(List.of("heavy hoist"), values(ClosingItem.Kind.HOIST_LOCKED));
        assertEquals(1, items(ClosingItem.Kind.GOES_OVER).size());
    }

    @Test
    void what_blocks_comes_first() {
        shed.at("10:00").does(new Act.DoOther("bo", Kind.TRAINING));
        shed.quad();
        SpanTally tally = SpanTally.of(Ledger.of(shed.day(), shed.now()));
        List<ClosingItem> all = ClosingList.of(shed.outlook(), tally);
        List<Boolean> blocks = all.stream().map(item -> item.kind().blocks()).toList();
        assertEquals(blocks.stream().sorted(Comparator.reverseOrder()).toList(), blocks);
    }
}
