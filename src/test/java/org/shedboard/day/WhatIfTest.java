package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Work;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Visit;

/** Changes tried on the demonstration day at 09:40. */
class WhatIfTest {
    private final Day day = Demonstration.day();
    private final Instant now = Demonstration.opens();
    private final Outlook outlook = Outlook.of(day, now);

    private WhatIf.Answer.Tried tried(Act... acts) {
        WhatIf whatIf = new WhatIf(List.of(acts));
        WhatIf.Answer.Tried tried = (WhatIf.Answer.Tried) whatIf.on(outlook);
        assertKeptAsShown(whatIf, tried);
        return tried;
    }

    /** Keeping gives the day that was shown. */
    private void assertKeptAsShown(WhatIf whatIf, WhatIf.Answer.Tried tried) {
        Outcome.Done kept = (Outcome.Done) whatIf.postedAs(tried).carryOut(day, now);
        Outlook after = Outlook.of(kept.day(), now);
        assertEquals(tried.outlook().plan(), after.plan());
        assertEquals(tried.outlook().day().visits(), kept.day().visits());
        assertEquals(tried.outlook().day().opening(), kept.day().opening());
        assertEquals(tried.comparison(), Comparison.between(outlook, after));
    }

    private Instant at(int hour, int minute) {
        return day.instantOf(60 * hour + minute);
    }

    private Comparison.Row rowOf(WhatIf.Answer.Tried tried, Visit visit) {
        return tried.comparison().rows().stream()
                .filter(row -> row.visit().id().equals(visit.id()))
                .findFirst()
                .orElseThrow();
    }

    private Visit tagged(int tag) {
        return day.findByTag(tag).orElseThrow();
    }

    /** Minutes of today beyond which nobody works. */
    private int midnight() {
        return Roster.MINUTES_A_DAY;
    }

    private Act walkIn() {
        Machine machine = day.books().machines().stream()
                .filter(each -> day.visits().stream()
                        .noneMatch(visit -> visit.machineId().equals(each.id())))
                .findFirst()
                .orElseThrow();
        Work work = day.books().catalogue().worksFor(machine.classId()).get(0);
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.of(machine.ownerId()), "", ""),
                Act.TakeIn.Which.known(machine.id()),
                Mud.MUDDY,
                Optional.empty(),
                new Condition(true, true, true, true),
                List.of(new Act.Wanted(work.id(), Payer.OWNER)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                "",
                Optional.empty());
    }

    private Act lockOut(Place hoist) {
        return new Act.CheckHoist(new Act.OpenDay.Checked(hoist.id(), day.inCharge(), Optional.of("hose")));
    }

    private Act promised(Visit visit, int hour) {
        return new Act.SayPromise(visit.id(), at(hour, 0), day.inCharge(), "Marrowby", "late", true);
    }

    @Test
    void what_was_kept_is_taken_back_as_a_whole() {
        Visit seven = tagged(7);
        WhatIf whatIf = new WhatIf(List.of(promised(seven, 15), promised(seven, 16), walkIn()));
        Outcome.Done kept = (Outcome.Done) whatIf.carryOut(day, now);
        assertEquals(2, kept.trace().visits().size());
        Act back = new Act.TakeBack(kept.trace(), day.inCharge(), "tried out");
        Outcome.Done taken = (Outcome.Done) Planning.carryOut(kept.day(), back, now);
        assertEquals(Optional.of(seven), taken.day().findVisit(seven.id()));
        assertEquals(
                outlook.plan().tasks(),
                taken.day().posted().orElseThrow().plan().tasks());
    }

    @Test
    void what_was_kept_stays_where_one_act_of_it_cannot_be_taken_back() {
        WhatIf whatIf = new WhatIf(
                List.of(promised(tagged(7), 15), lockOut(day.shop().hoists().get(0))));
        Outcome.Done kept = (Outcome.Done) whatIf.carryOut(day, now);
        assertTrue(kept.trace().isNothing());
        assertEquals(Optional.of(Lasting.PRESENCE), Lasting.of(whatIf, kept.trace()));
    }

    @Test
    void a_walk_in_comes_into_the_plan() {
        WhatIf.Answer.Tried tried = tried(walkIn());
        List<Comparison.Row> come = tried.comparison().rows().stream()
                .filter(row -> row.before().isEmpty())
                .toList();
        assertEquals(1, come.size());
        assertTrue(come.get(0).after().orElseThrow().ready().isPresent());
        assertTrue(come.get(0).isEarlier());
    }

    @Test
    void somebody_sick_from_eleven_has_nothing_after_that() {
        Person tobin = day.shop().findPersonCalled("Tobin").orElseThrow();
        assertTrue(
                outlook.tasksOf(tobin.id()).stream().anyMatch(time -> time.end() > 11 * 60 && time.end() < midnight()));
        WhatIf.Answer.Tried tried = tried(new Act.BeHere(tobin.id(), at(11, 0)));
        assertTrue(tried.outlook().tasksOf(tobin.id()).stream()
                .noneMatch(time -> time.start() >= 11 * 60 && time.start() < midnight()));
        assertTrue(tried.comparison().later() > 0);
    }

    @Test
    void a_hoist_that_is_out_holds_no_machine_and_puts_a_promise_in_danger() {
        Place hoist = day.shop().hoists().get(0);
        WhatIf.Answer.Tried tried = tried(lockOut(hoist));
        assertTrue(tried.outlook().staysIn(hoist.id()).stream()
                .noneMatch(stay -> stay.from() >= outlook.problem().now() && stay.from() < midnight()));
        assertTrue(tried.comparison().count(Comparison.Fate.IN_DANGER) > 0);
    }

    @Test
    void a_promise_that_moves_has_another_chance() {
        Visit visit = tagged(9);
        WhatIf.Answer.Tried tried =
                tried(new Act.SayPromise(visit.id(), at(16, 0), day.inCharge(), "Marrowby", "late", true));
        Comparison.Row row = rowOf(tried, visit);
        assertEquals(Optional.of(at(16, 0)), row.after().orElseThrow().promised());
        assertTrue(row.after().get().chance().orElseThrow()
                > row.before().orElseThrow().chance().orElseThrow());
        assertEquals(Comparison.Fate.SAVED, row.fate());
    }

    @Test
    void a_machine_washed_down_first_has_that_to_do() {
        Visit visit = tagged(12);
        assertFalse(visit.hasBegun());
        WhatIf.Answer.Tried tried = tried(new Act.SetWashDown(day.ownerOf(visit).id(), true));
        Visit after = tried.outlook().day().expectVisit(visit.id());
        assertTrue(visit.findTask("sign-wash-down").isEmpty());
        assertTrue(tried.outlook().timeOf(visit.id(), "sign-wash-down").isPresent());
        assertTrue(after.intake().washDownFirst());
        assertTrue(rowOf(tried, visit).isLater());
    }

    @Test
    void overtime_for_one_lets_them_work_longer_today() {
        Person tobin = day.shop().findPersonCalled("Tobin").orElseThrow();
        WhatIf.Answer.Tried tried = tried(new Act.BeHere(tobin.id(), at(19, 0)));
        assertTrue(new Roster(day).overtimeOf(tobin).stream().noneMatch(span -> span.to() == 19 * 60));
        assertTrue(new Roster(tried.outlook().day())
                .overtimeOf(tobin).stream().anyMatch(span -> span.to() > 17 * 60 && span.from() < midnight()));
    }

    @Test
    void several_are_tried_one_after_another() {
        Person tobin = day.shop().findPersonCalled("Tobin").orElseThrow();
        Place hoist = day.shop().hoists().get(0);
        WhatIf.Answer.Tried one = tried(lockOut(hoist));
        WhatIf.Answer.Tried both = tried(lockOut(hoist), new Act.BeHere(tobin.id(), at(11, 0)));
        assertTrue(both.comparison().later() > one.comparison().later());
    }

    @Test
    void nothing_tried_changes_nothing() {
        assertEquals(List.of(), tried().comparison().rows());
    }

    @Test
    void the_first_act_that_cannot_be_is_told_and_nothing_is_carried_out() {
        Act over = new Act.BeHere(day.inCharge(), now.minusSeconds(60));
        WhatIf whatIf = new WhatIf(List.of(walkIn(), over));
        WhatIf.Answer.NotPossible not = (WhatIf.Answer.NotPossible) whatIf.on(outlook);
        assertEquals(over, not.act());
        assertEquals("until_is_over", not.refusal().name());
        assertEquals(new Outcome.Refused(not.refusal()), whatIf.carryOut(day, now));
    }

    @Test
    void what_has_to_be_signed_is_not_tried() {
        WhatIf.Answer answer = new WhatIf(List.of(new Act.CloseDay(day.inCharge()))).on(outlook);
        assertEquals(
                "not_to_be_tried",
                ((WhatIf.Answer.NotPossible) answer).refusal().name());
    }

    @Test
    void a_better_plan_that_was_found_for_it_is_shown_and_posted_with_it() {
        WhatIf whatIf = new WhatIf(List.of(lockOut(day.shop().hoists().get(0))));
        WhatIf.Answer.Tried moved = (WhatIf.Answer.Tried) whatIf.on(outlook);
        Plan found = Packer.pack(moved.outlook().problem(), new Search(1, 3000));
        assertTrue(found.isBetterThan(moved.outlook().plan()));
        WhatIf.Answer.Tried packed = moved.by(found, outlook);
        assertKeptAsShown(whatIf, packed);
        assertEquals(2, whatIf.postedAs(packed).acts().size());
        assertTrue(packed.comparison().later() <= moved.comparison().later());
    }

    @Test
    void one_plan_is_saved_however_many_acts_there_are() {
        Person tobin = day.shop().findPersonCalled("Tobin").orElseThrow();
        WhatIf whatIf = new WhatIf(List.of(lockOut(day.shop().hoists().get(0)), new Act.BeHere(tobin.id(), at(11, 0))));
        Outcome.Done kept = (Outcome.Done) whatIf.carryOut(day, now);
        assertEquals(
                List.of(new Change.PlanPosted(kept.day().posted().orElseThrow())),
                kept.changes().stream()
                        .filter(Change.PlanPosted.class::isInstance)
                        .toList());
    }
}
