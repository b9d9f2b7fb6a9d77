package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Instant;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.check.Rule;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.shop.Person;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** Whatever people do on the demonstration day and the days after it, the day stays true and its plan obeys every rule. */
class RandomActsTest {
    private static final int SEQUENCES = 4 * Integer.getInteger("proof.scale", 1);
    private static final int ACTS = 150;
    private static final LocalTime EVENING = LocalTime.of(17, 45);
    private static final LocalTime MORNING = LocalTime.of(6, 50);

    static IntStream seeds() {
        return IntStream.rangeClosed(1, SEQUENCES);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void random_acts_leave_a_true_day_with_a_legal_plan(int seed) {
        Random random = new Random(seed);
        RandomActs acts = new RandomActs(random);
        Day day = Demonstration.day();
        Instant now = Demonstration.opens();
        int done = 0;
        for (int i = 0; i < ACTS; i++) {
            Act act = acts.next(day, now);
            try {
                Outcome outcome = Planning.carryOut(day, act, now);
                if (outcome instanceof Outcome.Done carried) {
                    day = carried.day();
                    done++;
                }
                assertTrueDay(day, now);
                if (random.nextInt(3) > 0) {
                    now = now.plusSeconds(60L * random.nextInt(25));
                }
                if (day.timeOf(now).isAfter(EVENING)) {
                    // now and then nobody remembers to close the day
                    day = random.nextInt(4) == 0 ? day : evening(day, now);
                    day = day.on(day.date().plusDays(1));
                    now = RandomActs.at(day, MORNING);
                    day = carry(day, acts.openDay(day), now);
                }
                day = day.with(Planning.follow(day, now));
                assertTrueDay(day, now);
            } catch (RuntimeException | AssertionError wrong) {
                fail("act %d of seed %d, %s at %s: %s".formatted(i, seed, act, day.timeOf(now), wrong), wrong);
            }
        }
        assertTrue(done > ACTS / 4, "only " + done + " acts were possible");
        assertEquals(day, Outlook.of(day, now).day());
    }

    /** Everybody is clocked off, and the day is closed. */
    private static Day evening(Day day, Instant now) {
        Day next = day;
        for (Person person : day.shop().people()) {
            if (next.isHere(person)) {
                next = carry(next, new Act.Stop(person.id(), true), now);
            }
        }
        return carry(next, new Act.CloseDay("P1"), now);
    }

    private static Day carry(Day day, Act act, Instant now) {
        return ((Outcome.Done) Planning.carryOut(day, act, now)).day();
    }

    static void assertTrueDay(Day day, Instant now) {
        Problem problem = Problems.of(day, now);
        assertEquals(List.of(), ProblemCheck.faults(problem));
        assertObeys(problem, day.posted().orElseThrow().plan());
        PlanCheck next = PlanCheck.of(problem, Planning.settled(problem));
        assertTrue(next.isLegal(), next::toString);
        assertPlanKnowsWhereMachinesStand(day, problem);
        assertOneEntryAndOneTaskAPerson(day);
        assertOneVisitAPlace(day);
        assertIdsAreUnique(day);
        assertStatesGoWithTheWork(day);
    }

    /** The posted plan said what it cost to come to it from the one before; from itself it costs nothing. */
    private static void assertObeys(Problem problem, Plan posted) {
        PlanCheck check = PlanCheck.of(problem, posted);
        assertTrue(check.breaches().stream().allMatch(breach -> breach.rule() == Rule.COST), check::toString);
    }

    private static void assertOneEntryAndOneTaskAPerson(Day day) {
        Map<String, ClockEntry> open = new HashMap<>();
        for (ClockEntry entry : day.entries()) {
            if (entry.isOpen()) {
                assertEquals(null, open.put(entry.personId(), entry), entry.personId() + " is clocked on twice");
            }
        }
        Map<String, Task> running = new HashMap<>();
        for (Visit visit : day.visits()) {
            for (Task task : visit.tasks()) {
                if (task.progress().isRunning()) {
                    String person = task.progress().person().orElseThrow();
                    assertEquals(null, running.put(person, task), person + " is on two tasks");
                    Activity stay = new Activity.OnStay(
                            visit.id(), visit.stayOf(task.id()).orElseThrow().step(), Optional.of(task.id()));
                    assertEquals(stay, open.get(person).activity(), person + " is not clocked on " + task.id());
                }
            }
        }
    }

    private static void assertPlanKnowsWhereMachinesStand(Day day, Problem problem) {
        Plan plan = Planning.settled(problem);
        for (Visit visit : day.visits()) {
            if (visit.state().isOpen() && visit.standsIn().isPresent()) {
                Plan.StayPlace stay =
                        plan.findStay(visit.id(), visit.currentStay()).orElseThrow();
                assertEquals(visit.standsIn().get(), stay.place());
                assertTrue(stay.from() <= problem.now(), visit.id() + " stands in " + stay);
                visit.hold()
                        .ifPresent(hold -> assertTrue(
                                stay.to() > day.minuteOf(hold.until()), visit.id() + " is held, but leaves: " + stay));
            }
        }
    }

    private static void assertOneVisitAPlace(Day day) {
        Set<String> taken = new HashSet<>();
        for (Visit visit : day.visits()) {
            visit.standsIn()
                    .filter(place -> visit.state().isOpen())
                    .ifPresent(place -> assertTrue(taken.add(place), place + " holds two machines"));
        }
    }

    private static void assertIdsAreUnique(Day day) {
        Set<Integer> tags = new HashSet<>();
        for (Visit visit : day.visits()) {
            Set<String> ids = new HashSet<>();
            visit.tasks().forEach(task -> assertTrue(ids.add(task.id()), "two tasks are called " + task.id()));
            visit.tag().ifPresent(tag -> assertTrue(tags.add(tag), "two machines have tag " + tag));
        }
    }

    private static void assertStatesGoWithTheWork(Day day) {
        for (Visit visit : day.visits()) {
            boolean over = visit.stays().stream().allMatch(Stay::isDone);
            boolean gone = visit.state() == VisitState.DONE || visit.state() == VisitState.GONE;
            assertEquals(over, gone, visit.id() + " is " + visit.state());
        }
    }

    @Test
    void a_day_on_which_nothing_is_done_moves_along_minute_by_minute() {
        Day day = Demonstration.day();
        Instant now = Demonstration.opens();
        for (int minute = 0; minute < 11 * 60; minute += 7) {
            now = now.plusSeconds(7 * 60);
            day = day.with(Planning.follow(day, now));
            assertTrueDay(day, now);
        }
    }
}
