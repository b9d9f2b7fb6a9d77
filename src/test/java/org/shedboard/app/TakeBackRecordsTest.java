package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Outcome;
import org.shedboard.day.Refusal;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** Acts taken back in the records: what an act left is found again in what is read of it, so that it counts as unchanged. */
@Timeout(120)
class TakeBackRecordsTest {
    @TempDir
    private static Path home;

    private static Workshop workshop;

    @BeforeAll
    static void open() {
        LocalDateTime at = LocalDateTime.parse(CommandRoom.MORNING);
        workshop = Workshop.open(Demonstration.ready(home), "test", Optional.of(at));
    }

    @AfterAll
    static void close() {
        workshop.close();
    }

    private final Visit seven = workshop.day().findByTag(7).orElseThrow();

    private static Outcome.Done does(Act act) {
        Outcome outcome = workshop.carryOut(act, "P1");
        if (outcome instanceof Outcome.Refused refused) {
            throw new AssertionError(act + " is refused: " + refused.refusal());
        }
        return (Outcome.Done) outcome;
    }

    private static Act back(Outcome.Done done) {
        return new Act.TakeBack(done.trace(), "P1", "a slip");
    }

    /** The act is carried out, taken back, done again and taken back. */
    private void assertThereAndBack(Act act) {
        Day before = workshop.day();
        Outcome.Done done = does(act);
        Day after = workshop.day();
        Outcome.Done back = does(back(done));
        assertSame(before, workshop.day());
        Outcome.Done again = does(back(back));
        assertSame(after, workshop.day());
        does(back(again));
        assertSame(before, workshop.day());
    }

    private static void assertSame(Day wanted, Day is) {
        assertEquals(here(wanted), here(is));
        assertEquals(standing(wanted), standing(is));
        assertEquals(wanted.errands(), is.errands());
        assertEquals(wanted.books().shelf().stock(), is.books().shelf().stock());
    }

    private static List<Visit> here(Day day) {
        return day.visits().stream()
                .filter(visit -> visit.state() != VisitState.CANCELLED)
                .toList();
    }

    private static List<String> standing(Day day) {
        return ClockEntry.standing(day.entries()).stream()
                .map(entry -> entry.personId() + entry.activity() + entry.from() + entry.to())
                .sorted()
                .toList();
    }

    private Task running() {
        return seven.tasks().stream()
                .filter(task -> task.progress().isRunning())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_pause_and_a_finish() {
        assertThereAndBack(new Act.Pause(seven.id(), running().id()));
        String person = running().progress().person().orElseThrow();
        assertThereAndBack(new Act.Finish(person, seven.id(), running().id(), Optional.of(Mark.GOOD)));
    }

    @Test
    void a_hold_a_finding_a_promise_and_more_work() {
        String point = workshop.day()
                .books()
                .catalogue()
                .expectClass(workshop.day().machineOf(seven).classId())
                .points()
                .get(0)
                .id();
        assertThereAndBack(new Act.HoldVisit(seven.id(), Hold.Reason.PARTS, "a plug", Optional.empty()));
        assertThereAndBack(new Act.Tick("P1", seven.id(), point, Mark.WATCH, OptionalDouble.empty(), "thin"));
        assertThereAndBack(new Act.SayPromise(
                seven.id(), workshop.now().plusSeconds(7_200), "P1", "the owner", "it takes longer", false));
        String work = seven.lines().get(0).workId();
        assertThereAndBack(new Act.AddWork(seven.id(), List.of(new Act.Wanted(work, Payer.OWNER))));
    }

    @Test
    void other_work_a_break_and_an_errand() {
        assertThereAndBack(new Act.DoOther("P2", Activity.OtherWork.Kind.PAPERWORK));
        assertThereAndBack(new Act.TakeBreak("P3", Activity.Break.Kind.MEAL));
        assertThereAndBack(new Act.PlanErrand(
                "P2", Activity.OtherWork.Kind.FETCHING, workshop.now().plusSeconds(3_600), 30, ""));
    }

    @Test
    void a_machine_that_came_and_one_that_was_booked() {
        Visit booked = workshop.day().visits().stream()
                .filter(visit -> visit.state() == VisitState.BOOKED)
                .findFirst()
                .orElseThrow();
        assertThereAndBack(new Act.Arrive(booked.id(), Optional.empty(), OptionalInt.empty()));
        assertThereAndBack(new Act.CallOff(booked.id(), false));
        Visit done = workshop.day().visits().stream()
                .filter(visit -> visit.state() == VisitState.DONE)
                .findFirst()
                .orElseThrow();
        assertTrue(does(new Act.Collect(done.id(), Optional.empty())).trace().isNothing());
        Act.TakeIn in = new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known(done.machineId()),
                done.intake().mud(),
                Optional.empty(),
                done.intake().condition(),
                List.of(new Act.Wanted(done.lines().get(0).workId(), Payer.OWNER)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                "",
                Optional.empty());
        assertThereAndBack(in);
    }

    @Test
    void what_was_changed_in_the_records_since_is_not_passed() {
        Outcome.Done held = does(new Act.HoldVisit(seven.id(), Hold.Reason.PARTS, "", Optional.empty()));
        does(new Act.Release(seven.id()));
        Outcome late = workshop.carryOut(back(held), "P1");
        Refusal refusal = ((Outcome.Refused) late).refusal();
        assertEquals("changed_since", refusal.name());
    }
}
