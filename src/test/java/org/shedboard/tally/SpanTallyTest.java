package org.shedboard.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.day.Act;
import org.shedboard.day.Shed;
import org.shedboard.hours.Activity.OtherWork.Kind;
import org.shedboard.hours.BreakRule;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Task;
import org.shedboard.shop.WorkKind;

class SpanTallyTest {
    private final Shed shed = Shed.open();

    private SpanTally tally() {
        return SpanTally.of(Ledger.of(shed.day(), shed.now()));
    }

    /** Somebody works through all of a visit, ten minutes a task, and somebody else signs it off. */
    private void worksThrough(String visit, String from) {
        shed.at(from);
        for (Task task : shed.visit(visit).tasks()) {
            String person = task.kind() == WorkKind.SIGN_OFF ? "bo" : "ada";
            shed.does(new Act.Start(person, visit, task.id(), Optional.empty()));
            shed.later(10);
            shed.does(new Act.Finish(person, visit, task.id(), Optional.of(Mark.GOOD)));
        }
    }

    /**
     * Common practice, no source: 8 h attended, 6.5 h on machines and 7.2 h estimated make 81.25, 110.77 and 90.00 in a hundred,
     * the third being the product of the others; a training glossary has 957 h of 1,040 h as 92.
     */
    @ParameterizedTest
    @CsvSource({"390,480,81.25", "432,390,110.77", "432,480,90.00", "57420,62400,92.02"})
    void the_ratios_of_the_trade_have_two_places(int top, int bottom, BigDecimal percent) {
        assertEquals(Optional.of(percent), new Ratio(top, bottom).percent());
    }

    @Test
    void a_ratio_to_nothing_is_none_and_shown_as_a_dash() {
        assertEquals(Optional.empty(), new Ratio(0, 0).percent());
        assertEquals("-", TallyWords.percent(new Ratio(12, 0)));
    }

    @Test
    void the_ratios_are_of_the_minutes_of_the_day() {
        String quad = shed.quad();
        worksThrough(quad, "08:00");
        int tasks = shed.visit(quad).tasks().size();
        int estimated =
                shed.visit(quad).tasks().stream().mapToInt(Task::handsOn).sum();
        SpanTally tally = tally();
        assertEquals(new Ratio(10 * tasks, tally.hours().attended()), tally.onMachinesOfAttended());
        assertEquals(new Ratio(estimated, 10 * tasks), tally.estimatedOfOnMachines());
    }

    @Test
    void a_line_is_charged_when_its_visit_is_done_rounded_once() {
        String quad = shed.quad();
        shed.does(Shed.start("ada", quad, "in-underside"));
        shed.later(3);
        assertEquals(OptionalInt.empty(), charged());
        shed.does(new Act.Pause(quad, "in-underside"));
        worksThrough(quad, "08:00");
        int worked = 3 + 10 * shed.visit(quad).tasks().size();
        assertEquals(OptionalInt.of((worked + 3) / 6 * 6), charged());
    }

    private OptionalInt charged() {
        return tally().visits().get(0).lines().get(0).chargeable();
    }

    private void rules(HoursRules.Basis basis, Rounding.Unit unit, Rounding.Direction direction) {
        shed.does(new Act.SetHoursRules(
                "ada", new HoursRules(Rounding.EXACT, new Rounding(unit, direction), basis, BreakRule.USUAL, 10)));
    }

    @Test
    void it_is_charged_as_worked_estimated_or_agreed_as_the_shop_has_it() {
        String quad = shed.quad();
        worksThrough(quad, "08:00");
        int estimated =
                shed.visit(quad).tasks().stream().mapToInt(Task::handsOn).sum();
        rules(HoursRules.Basis.ESTIMATED, Rounding.Unit.EXACT, Rounding.Direction.NEAREST);
        assertEquals(OptionalInt.of(estimated), charged());
        rules(HoursRules.Basis.AGREED, Rounding.Unit.QUARTER, Rounding.Direction.UP);
        assertEquals(OptionalInt.of((estimated + 14) / 15 * 15), charged(), "nothing was agreed");
        shed.does(new Act.AgreeHours(quad, shed.visit(quad).lines().get(0).id(), 31));
        assertEquals(OptionalInt.of(45), charged());
    }

    @Test
    void what_is_on_our_own_account_is_charged_to_nobody_and_names_the_visit_before() {
        String first = shed.quad();
        worksThrough(first, "08:00");
        shed.does(new Act.Collect(first, Optional.empty()));
        String again = shed.does(Shed.takeIn("quad-1", Shed.CLEAN, "oil")).orElseThrow();
        shed.does(new Act.AddWork(again, List.of(new Act.Wanted("brakes", Payer.OWN_ACCOUNT))));
        worksThrough(again, "11:00");
        Ledger ledger = Ledger.of(shed.day(), shed.now());
        Ledger knowing = new Ledger(
                ledger.books(),
                ledger.from(),
                ledger.until(),
                ledger.openings(),
                ledger.visits(),
                ledger.visits(),
                ledger.entries(),
                ledger.now());
        VisitTally back = SpanTally.of(knowing).visits().get(1);
        assertEquals(Optional.of(first), back.earlier().map(visit -> visit.id()));
        assertEquals(OptionalInt.empty(), back.lines().get(1).chargeable());
        assertEquals(
                back.worked(), back.lines().stream().mapToInt(LineTally::worked).sum());
    }

    @Test
    void hours_on_machines_are_told_by_kind_of_work() {
        String quad = shed.quad();
        shed.works("ada", quad, "in-underside", "raise");
        shed.does(Shed.start("ada", quad, "inspect-underside"));
        shed.later(7);
        SpanTally tally = tally();
        Map<Optional<WorkKind>, Integer> kinds =
                tally.byKind(tally.hours().people().get(0).onStays());
        assertEquals(7, kinds.get(Optional.of(WorkKind.INSPECT)));
    }

    @Test
    void a_hoist_is_used_from_the_first_task_on_it_to_the_last() {
        shed.at("08:00");
        String quad = shed.quad();
        shed.does(Shed.startIn("H1", "ada", quad, "in-underside"));
        shed.later(5);
        shed.does(Shed.finish("ada", quad, "in-underside"));
        shed.at("09:00");
        assertEquals(new HoistHours(shed.day().shop().expectPlace("H1"), 60, 120), hoist("H1"));
        assertEquals(0, hoist("H2").used());
    }

    private HoistHours hoist(String id) {
        return tally().hoists().stream()
                .filter(hours -> hours.hoist().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_hoist_that_is_locked_out_is_not_open_until_it_is_found_sound_again() {
        shed.at("08:00").does(new Act.CheckHoist(Shed.lockedOut("H1")));
        shed.at("10:00").does(new Act.CheckHoist(Shed.checked("H1")));
        shed.at("11:30");
        assertEquals(60 + 90, hoist("H1").open());
    }

    @Test
    void promises_count_once_they_are_due_or_their_machine_is_done() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "12:00", "", false));
        assertEquals(new Promises(0, 0), tally().promises());
        worksThrough(quad, "08:00");
        assertEquals(new Promises(1, 1), tally().promises());
    }

    @Test
    void a_promise_whose_time_went_by_is_due_and_not_kept() {
        String quad = shed.quad();
        shed.does(Shed.promise(quad, "12:00", "", false));
        shed.at("12:30");
        assertEquals(new Promises(1, 0), tally().promises());
    }

    @Test
    void other_work_and_what_is_unaccounted_are_in_the_sums() {
        shed.at("08:00").does(new Act.DoOther("cy", Kind.PAPERWORK));
        shed.at("09:00");
        SpanTally tally = tally();
        assertEquals(3 * 120, tally.hours().attended());
        assertEquals(60, tally.hours().people().get(2).otherMinutes());
        assertEquals(0, tally.hours().onMachines());
    }
}
