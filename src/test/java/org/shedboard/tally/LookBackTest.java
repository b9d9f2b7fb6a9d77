package org.shedboard.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.day.Act;
import org.shedboard.day.Shed;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.WorkKind;
import org.shedboard.tally.Overrun.Cause;

class LookBackTest {
    private final Shed shed = Shed.open();
    private final List<Noted> noted = new ArrayList<>();

    private LookBack back() {
        return LookBack.of(Ledger.of(shed.day(), shed.now()), noted);
    }

    private Overrun overrun() {
        return back().overruns().get(0);
    }

    /** Works through a visit as long as estimated, and longer at the tasks of one step. */
    private void worksThrough(String visit, Step slow, int longer) {
        for (Task task : shed.visit(visit).tasks()) {
            String person = task.kind() == WorkKind.SIGN_OFF ? "bo" : "ada";
            boolean isSlow = shed.visit(visit).stayOf(task.id()).orElseThrow().step() == slow;
            shed.does(new Act.Start(person, visit, task.id(), Optional.empty()));
            shed.later(task.handsOn() + (isSlow ? longer : 0));
            shed.does(new Act.Finish(person, visit, task.id(), Optional.of(Mark.GOOD)));
        }
    }

    private long tasksOf(String visit, Step step) {
        return shed.visit(visit).stays().stream()
                .filter(stay -> stay.step() == step)
                .mapToLong(stay -> stay.tasks().size())
                .sum();
    }

    @Test
    void what_took_as_long_as_estimated_is_no_overrun() {
        worksThrough(shed.quad(), Step.DRIVE, 0);
        assertEquals(List.of(), back().overruns());
    }

    @Test
    void cleaning_beyond_its_estimate_is_put_down_to_mud() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil")).orElseThrow();
        worksThrough(quad, Step.WASH, 4);
        int over = 4 * (int) tasksOf(quad, Step.WASH);
        assertTrue(over > 0);
        assertEquals(List.of(new Cause(Cause.Kind.MUD, over)), overrun().causes());
        assertEquals(over, overrun().over());
    }

    @Test
    void and_to_other_mud_than_was_booked_where_the_journal_says_so() {
        String quad = shed.does(Shed.takeIn("quad-1", Mud.CAKED, "oil")).orElseThrow();
        noted.add(new Noted(Noted.Kind.MUD_CHANGED, shed.now(), quad, ""));
        worksThrough(quad, Step.WASH, 4);
        assertEquals(Cause.Kind.MUD_CHANGED, overrun().causes().get(0).kind());
    }

    @Test
    void lines_added_on_the_way_were_not_in_the_estimate_and_are_a_cause() {
        String quad = shed.quad();
        shed.does(new Act.AddWork(quad, List.of(new Act.Wanted("brakes", Payer.OWNER))));
        String added = shed.visit(quad).lines().get(1).id();
        noted.add(new Noted(Noted.Kind.WORK_ADDED, shed.now(), quad, added));
        worksThrough(quad, Step.DRIVE, 0);
        Overrun overrun = overrun();
        assertEquals(Cause.Kind.ADD_ON, overrun.causes().get(0).kind());
        assertEquals(overrun.over(), overrun.causes().get(0).minutes());
        int all = shed.visit(quad).tasks().stream().mapToInt(Task::handsOn).sum();
        assertEquals(all, overrun.worked());
    }

    @Test
    void work_on_our_own_account_is_rework_and_what_is_left_is_the_work_itself() {
        String quad = shed.quad();
        shed.does(new Act.AddWork(quad, List.of(new Act.Wanted("brakes", Payer.OWN_ACCOUNT))));
        worksThrough(quad, Step.UNDERSIDE, 60);
        List<Cause> causes = overrun().causes();
        assertEquals(
                List.of(Cause.Kind.REWORK, Cause.Kind.WORK),
                causes.stream().map(Cause::kind).sorted().toList());
        assertEquals(overrun().over(), causes.stream().mapToInt(Cause::minutes).sum());
    }

    @Test
    void how_long_it_was_held_is_told_beside_the_minutes_worked() {
        String quad = shed.quad();
        noted.add(new Noted(Noted.Kind.HELD, shed.now(), quad, ""));
        noted.add(new Noted(Noted.Kind.RELEASED, shed.now().plusSeconds(5400), quad, ""));
        worksThrough(quad, Step.UNDERSIDE, 5);
        List<Cause> causes = overrun().causes();
        assertEquals(new Cause(Cause.Kind.WAITING, 90), causes.get(causes.size() - 1));
    }

    @Test
    void owners_and_weeks_are_summed() {
        String quad = shed.quad();
        worksThrough(quad, Step.DRIVE, 0);
        LookBack back = back();
        LookBack.OwnerHours owner = back.owners().get(0);
        assertEquals(1, owner.visits());
        assertEquals(back.tally().hours().onMachines(), owner.worked());
        assertEquals(back.tally().chargeable(), owner.chargeable());
        assertEquals(1, back.weeks().size());
        assertEquals(back.tally().onMachinesOfAttended(), back.weeks().get(0).onMachinesOfAttended());
        assertEquals(back.tally().estimatedOfOnMachines(), back.weeks().get(0).estimatedOfOnMachines());
        int kinds = back.byKind().values().stream().mapToInt(Integer::intValue).sum();
        assertEquals(back.tally().hours().onMachines(), kinds);
    }

    /** ISO 8601 week dates, as published tables have them. */
    @ParameterizedTest
    @CsvSource({
        "1977-01-01,1976-W53", "1977-12-31,1977-W52", "1978-01-01,1977-W52", "1978-01-02,1978-W01",
        "1979-12-31,1980-W01", "1980-12-29,1981-W01", "1982-01-03,1981-W53", "2005-01-01,2004-W53",
        "2006-12-31,2006-W52", "2008-12-29,2009-W01", "2010-01-03,2009-W53", "2012-12-31,2013-W01",
        "2016-01-02,2015-W53", "2022-12-31,2022-W52", "2024-12-30,2025-W01", "2026-05-28,2026-W22",
        "2027-01-01,2026-W53"
    })
    void weeks_are_named_as_the_standard_has_them(LocalDate date, String week) {
        assertEquals(week, Stamps.week(date));
    }
}
