package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.hours.Activity;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Rung;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/** Two people decide the same thing, each without knowing of the other. */
class DecisionTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Setup SETUP = Seed.shop(CATALOGUE);
    private static final Day SEEN =
            Beginning.of(CATALOGUE, SETUP, LocalDate.EPOCH).day();
    private static final Instant NOW = SETUP.morning()
            .orElseThrow()
            .date()
            .atTime(9, 40)
            .atZone(SEEN.zone())
            .toInstant();
    private static final Visit SEVEN = SEEN.findByTag(7).orElseThrow();
    private static final Visit TWELVE = SEEN.findByTag(12).orElseThrow();
    private static final Line LINE = SEVEN.lines().get(0);

    /** What the one does and the other does, and one more that is about something else. */
    private record Pair(Act theirs, Act mine, Act unrelated) {
        @Override
        public String toString() {
            return mine.getClass().getSimpleName();
        }
    }

    static Stream<Pair> pairs() {
        return Stream.of(
                new Pair(
                        promise(SEVEN, 1, "Quillgate"), promise(SEVEN, 2, "Quillgate"), promise(TWELVE, 2, "Drummock")),
                new Pair(agree(SEVEN, 70), agree(SEVEN, 80), agree(TWELVE, 80)),
                new Pair(add(SEVEN), add(SEVEN), agree(SEVEN, 80)),
                new Pair(tick(Mark.GOOD), tick(Mark.FIX), agree(SEVEN, 80)),
                new Pair(pin(TWELVE, 60), pin(TWELVE, 90), pin(SEVEN, 90)),
                new Pair(
                        pin(TWELVE, 60),
                        new Act.LiftPin(TWELVE.id(), open(TWELVE).id()),
                        pin(SEVEN, 90)),
                new Pair(owner("Quillgate A"), owner("Quillgate B"), washDown(true)),
                new Pair(washDown(true), washDown(false), owner("Quillgate")),
                new Pair(machine("Trudge 700"), machine("Trudge 701"), owner("Quillgate")),
                new Pair(count(3), count(4), order(2)),
                new Pair(order(2), order(2), count(3)),
                new Pair(rung("tomorrow"), rung("not this year"), machine("Trudge")),
                new Pair(hoist("H1", "hose"), hoist("H1", "chain"), hoist("H2", "hose")),
                new Pair(stays("P1", 60), stays("P1", 120), stays("P2", 60)),
                new Pair(errand("P1", 60), errand("P1", 90), errand("P2", 60)),
                new Pair(new Act.SetPackedPercent("P1", 70), new Act.SetPackedPercent("P1", 80), count(3)),
                new Pair(rules(12), rules(15), count(3)),
                new Pair(lend("the old Burr"), lend("the Clod"), agree(SEVEN, 80)));
    }

    private static Act promise(Visit visit, int hours, String to) {
        return new Act.SayPromise(visit.id(), NOW.plus(Duration.ofHours(hours + 4L)), "P1", to, "parts", false);
    }

    private static Act agree(Visit visit, int minutes) {
        return new Act.AgreeHours(visit.id(), visit.lines().get(0).id(), minutes);
    }

    private static Act add(Visit visit) {
        String other = CATALOGUE.works().stream()
                .map(work -> work.id())
                .filter(id ->
                        visit.lines().stream().noneMatch(line -> line.workId().equals(id)))
                .findFirst()
                .orElseThrow();
        return new Act.AddWork(visit.id(), List.of(new Act.Wanted(other, Payer.OWNER)));
    }

    private static Act tick(Mark mark) {
        String point = CATALOGUE
                .expectClass(SEEN.machineOf(SEVEN).classId())
                .points()
                .get(0)
                .id();
        return new Act.Tick("P2", SEVEN.id(), point, mark, OptionalDouble.empty(), "seen");
    }

    private static Task open(Visit visit) {
        return visit.tasks().stream()
                .filter(task -> !task.hasBegun())
                .findFirst()
                .orElseThrow();
    }

    private static Act pin(Visit visit, int minutes) {
        TaskPin pin = new TaskPin(Optional.empty(), Optional.of(NOW.plusSeconds(60L * minutes)), Optional.empty());
        return new Act.PinTask(visit.id(), open(visit).id(), pin);
    }

    private static Act owner(String name) {
        return new Act.CorrectOwner(SEEN.ownerOf(SEVEN).id(), name, "0000 000 999");
    }

    private static Act washDown(boolean first) {
        return new Act.SetWashDown(SEEN.ownerOf(SEVEN).id(), first);
    }

    private static Act machine(String label) {
        Machine now = SEEN.machineOf(SEVEN);
        return new Act.CorrectMachine(now.id(), label, now.modelYear(), now.number(), now.massKg());
    }

    private static String item() {
        return CATALOGUE.items().get(0).id();
    }

    private static Act count(int pieces) {
        return new Act.CountStock(item(), Amount.of(pieces), Optional.empty(), "P1");
    }

    private static Act order(int pieces) {
        return new Act.OrderStock(item(), Amount.of(pieces), Optional.of(NOW.plus(Duration.ofDays(2))), "P1");
    }

    private static Act rung(String note) {
        return new Act.NoteRung(SEVEN.machineId(), Rung.Said.NOT_COMING, Optional.empty(), note, "P1");
    }

    private static Act hoist(String place, String why) {
        return new Act.CheckHoist(new Act.OpenDay.Checked(place, "P1", Optional.of(why)));
    }

    private static Act stays(String person, int minutes) {
        return new Act.BeHere(person, NOW.plusSeconds(60L * minutes));
    }

    private static Act errand(String person, int minutes) {
        return new Act.PlanErrand(
                person, Activity.OtherWork.Kind.FETCHING, NOW.plus(Duration.ofHours(3)), minutes, "the mill");
    }

    private static Act rules(int lentMinutes) {
        HoursRules now = SEEN.books().hoursRules();
        return new Act.SetHoursRules(
                "P1", new HoursRules(now.attendance(), now.charge(), now.basis(), now.breaks(), lentMinutes));
    }

    private static Act lend(String label) {
        return new Act.LendMachine(SEVEN.id(), Optional.empty(), label);
    }

    private static Day after(Act act) {
        return assertInstanceOf(Outcome.Done.class, Planning.carryOut(SEEN, act, NOW), act::toString)
                .day();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void what_somebody_else_decided_first_overtakes_the_same_decision_and_no_other(Pair pair) {
        assertTrue(Decision.isOvertaken(pair.mine(), SEEN, after(pair.theirs())));
        assertFalse(Decision.isOvertaken(pair.mine(), SEEN, after(pair.unrelated())));
        assertFalse(Decision.isOvertaken(pair.mine(), SEEN, SEEN));
    }

    @Test
    void work_that_begins_meanwhile_overtakes_no_promise() {
        Task next = open(SEVEN);
        Day begun = after(new Act.Pause(
                SEVEN.id(),
                SEVEN.tasks().stream()
                        .filter(task -> task.progress().isRunning())
                        .findFirst()
                        .orElseThrow()
                        .id()));
        assertFalse(Decision.isOvertaken(promise(SEVEN, 1, "Quillgate"), SEEN, begun));
        assertFalse(Decision.isOvertaken(new Act.Start("P2", SEVEN.id(), next.id(), Optional.empty()), SEEN, begun));
    }

    @Test
    void an_act_is_about_its_visit_and_its_person() {
        assertEquals(Set.of(SEVEN.id(), "P2"), Decision.about(new Act.Start("P2", SEVEN.id(), "t", Optional.empty())));
        assertEquals(Set.of(SEVEN.machineId()), Decision.about(machine("Trudge")));
        assertEquals(Set.of(item()), Decision.about(count(1)));
        assertEquals(Set.of("M1", "M2"), Decision.about(new Act.MergeMachines("M1", "M2")));
        assertEquals(Set.of(), Decision.about(hoist("H1", "hose")));
    }
}
