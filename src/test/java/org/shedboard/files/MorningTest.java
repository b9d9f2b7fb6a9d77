package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Beginning;
import org.shedboard.day.Day;
import org.shedboard.day.Morning;
import org.shedboard.day.Setup;
import org.shedboard.day.TimedAct;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.Window;

/**
 * Whether the demonstration's morning could have happened: a plain walk through its acts that shares no code with the day, and
 * fails at the first act that a shed would not allow.
 */
class MorningTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();
    private static final Setup SETUP = Seed.shop(CATALOGUE);
    private static final Morning MORNING = SETUP.morning().orElseThrow();
    private static final Walk WALK = new Walk();

    @BeforeAll
    static void walk() {
        MORNING.acts().forEach(WALK::act);
    }

    @Test
    void it_is_a_tuesday_at_twenty_to_ten() {
        assertEquals(DayOfWeek.TUESDAY, MORNING.date().getDayOfWeek());
        assertEquals(LocalTime.of(9, 40), MORNING.opensAt());
    }

    @Test
    void nine_visits_stand_in_every_state_there_is() {
        assertEquals(9, WALK.states.size());
        assertEquals(Set.of(VisitState.values()), Set.copyOf(WALK.states.values()));
    }

    /** Two independent walks through the same acts, the day's and this test's, must agree. */
    @Test
    void the_day_replays_it_without_a_refusal_to_the_same_states_and_places() {
        Day day = Beginning.of(CATALOGUE, SETUP, MORNING.date()).day();
        Map<String, VisitState> states =
                day.visits().stream().collect(Collectors.toMap(Visit::machineId, Visit::state));
        Map<String, VisitState> expected = new HashMap<>();
        WALK.states.forEach(
                (handle, state) -> expected.put(WALK.visits.get(handle).machine.id(), state));
        assertEquals(expected, states);
        for (Place place : SETUP.shop().places()) {
            assertEquals(
                    Optional.ofNullable(WALK.standing.get(place.id()))
                            .map(handle -> WALK.visits.get(handle).machine.id()),
                    day.standingIn(place.id()).map(Visit::machineId),
                    place.id());
        }
        for (Person person : SETUP.shop().people()) {
            assertEquals(
                    Optional.ofNullable(WALK.busy.get(person.id())).map(on -> on.split(" ", -1)[1]),
                    day.runningOf(person.id()).map(running -> running.task().id()),
                    person.name());
        }
    }

    @Test
    void there_are_things_to_watch_and_to_fix_and_one_stops_a_machine_being_ridden() {
        assertTrue(WALK.ticks.stream().anyMatch(tick -> tick.mark() == Mark.WATCH));
        assertTrue(WALK.ticks.stream()
                .filter(tick -> tick.mark() == Mark.FIX)
                .anyMatch(tick -> pointOf(tick).stopsRiding()));
    }

    @Test
    void a_measured_value_outside_its_limits_is_not_marked_good() {
        List<Act.Tick> measured =
                WALK.ticks.stream().filter(tick -> tick.measured().isPresent()).toList();
        assertFalse(measured.isEmpty());
        for (Act.Tick tick : measured) {
            boolean within = pointOf(tick)
                    .measure()
                    .orElseThrow()
                    .isWithin(tick.measured().getAsDouble());
            assertTrue(within || tick.mark() != Mark.GOOD, tick.toString());
        }
    }

    @Test
    void every_point_of_what_is_done_or_gone_was_looked_at() {
        for (String handle : List.of("@flat", "@verge")) {
            Taken visit = WALK.visits.get(handle);
            long ticked = WALK.ticks.stream()
                    .filter(tick -> tick.visitId().equals(handle))
                    .count();
            assertEquals(
                    CATALOGUE
                            .expectClass(visit.machine.classId())
                            .pointsAt(visit.depth)
                            .size(),
                    ticked);
        }
    }

    @Test
    void at_the_opening_one_hoist_and_one_bay_are_free_and_three_people_are_at_work() {
        assertEquals(Set.of("W1", "H2", "F1"), Set.copyOf(WALK.standing.keySet()));
        assertEquals(Set.of("P2", "P3", "P4"), Set.copyOf(WALK.busy.keySet()));
    }

    @Test
    void each_owner_of_a_machine_that_is_here_was_told_a_time() {
        WALK.states.forEach((handle, state) -> {
            if (state.isHere()) {
                assertTrue(WALK.promised.contains(handle), handle);
            }
        });
    }

    private static Point pointOf(Act.Tick tick) {
        return CATALOGUE
                .expectClass(WALK.visits.get(tick.visitId()).machine.classId())
                .findPoint(tick.pointId())
                .orElseThrow();
    }

    /** A visit and how far its tasks are. */
    private static final class Taken {
        private final Machine machine;
        private final Depth depth;
        private final List<Stay> stays;
        private final Map<String, Instant> complete = new HashMap<>();
        private final Map<String, String> doers = new HashMap<>();

        private Taken(Act.TakeIn act) {
            machine = SETUP.machines().stream()
                    .filter(each -> act.which().machineId().equals(Optional.of(each.id())))
                    .findFirst()
                    .orElseThrow();
            depth = act.depth()
                    .orElseGet(() -> act.wanted().stream()
                            .map(wanted -> CATALOGUE.expectWork(wanted.workId()).depth())
                            .max(Depth::compareTo)
                            .orElseThrow());
            List<Line> lines = act.wanted().stream()
                    .map(wanted -> new Line(wanted.workId(), wanted.workId(), "", Payer.OWNER, List.of()))
                    .toList();
            Intake intake = new Intake(Instant.EPOCH, act.mud(), depth, act.condition(), "");
            stays = new Estimator(CATALOGUE)
                    .estimate(machine.classId(), intake, lines)
                    .stays();
        }

        private Stream<Task> tasks() {
            return stays.stream().flatMap(stay -> stay.tasks().stream());
        }

        private Task task(String id) {
            return tasks().filter(task -> task.id().equals(id)).findFirst().orElseThrow();
        }

        private Stay stayOf(String taskId) {
            return stays.stream()
                    .filter(stay -> stay.findTask(taskId).isPresent())
                    .findFirst()
                    .orElseThrow();
        }

        private boolean isComplete(String taskId, Instant at) {
            return complete.containsKey(taskId) && !complete.get(taskId).isAfter(at);
        }
    }

    /** The shed while the acts go by. */
    private static final class Walk {
        private final Map<String, Taken> visits = new LinkedHashMap<>();
        private final Map<String, VisitState> states = new LinkedHashMap<>();
        private final List<Act.Tick> ticks = new ArrayList<>();
        private final Set<String> promised = new LinkedHashSet<>();
        /** Visit in each place that is taken. */
        private final Map<String, String> standing = new LinkedHashMap<>();
        /** What each person is on: "visit task", or other work. */
        private final Map<String, String> busy = new LinkedHashMap<>();

        private final Set<String> checked = new LinkedHashSet<>();

        private void act(TimedAct timed) {
            String what = timed.toString();
            if (timed.act() instanceof Act.OpenDay open) {
                checked.clear();
                open.checks().forEach(check -> checked.add(check.placeId()));
            } else if (timed.act() instanceof Act.CloseDay) {
                assertTrue(busy.isEmpty(), what + busy);
            } else if (timed.act() instanceof Act.TakeIn takeIn) {
                takeIn(timed.handle().orElseThrow(), takeIn);
            } else if (timed.act() instanceof Act.Start start) {
                start(start, timed.at(), what);
            } else if (timed.act() instanceof Act.Finish finish) {
                finish(finish, timed.at(), what);
            } else if (timed.act() instanceof Act.Pause pause) {
                assertTrue(busy.values().remove(pause.visitId() + " " + pause.taskId()), what);
            } else if (timed.act() instanceof Act.Tick tick) {
                tick(tick, what);
            } else if (timed.act() instanceof Act.DoOther other) {
                assertFalse(busy.getOrDefault(other.personId(), "").startsWith("@"), what);
                busy.put(other.personId(), other.kind().name());
            } else if (timed.act() instanceof Act.Stop stop) {
                assertTrue(busy.remove(stop.personId()) != null || stop.leaves(), what);
            } else {
                changeState(timed.act(), what);
            }
        }

        private void takeIn(String handle, Act.TakeIn act) {
            visits.put(handle, new Taken(act));
            states.put(handle, act.expected().isPresent() ? VisitState.BOOKED : VisitState.IN_YARD);
            act.said().ifPresent(said -> promised.add(handle));
        }

        private void start(Act.Start start, Instant at, String what) {
            Taken visit = visits.get(start.visitId());
            Task task = visit.task(start.taskId());
            Person person = SETUP.shop().expectPerson(start.personId());
            assertTrue(person.may(task.skill()), what);
            assertFalse(busy.containsKey(person.id()), what + busy);
            assertTrue(isOnShift(person, at), what);
            assertFalse(visit.complete.containsKey(task.id()), what);
            assertTrue(task.after().stream().allMatch(before -> visit.isComplete(before, at)), what);
            assertTrue(task.notBy().stream().noneMatch(other -> person.id().equals(visit.doers.get(other))), what);
            assertStays(visit, task, at, what);
            start.placeId().ifPresent(place -> moveTo(place, start.visitId(), what));
            if (!visit.stayOf(task.id()).needsPlace()) {
                standing.values().remove(start.visitId());
            }
            assertTrue(start.placeId().isPresent() == task.id().startsWith("in-"), what);
            assertTrue(task.skill() != Skill.HOIST || standsOnCheckedHoist(start.visitId()), what);
            busy.put(person.id(), start.visitId() + " " + task.id());
            states.put(start.visitId(), VisitState.IN_HAND);
        }

        private void assertStays(Taken visit, Task task, Instant at, String what) {
            for (Stay stay : visit.stays) {
                if (stay.findTask(task.id()).isPresent()) {
                    return;
                }
                assertTrue(stay.tasks().stream().allMatch(before -> visit.isComplete(before.id(), at)), what);
            }
        }

        private void moveTo(String placeId, String handle, String what) {
            standing.values().remove(handle);
            assertEquals(null, standing.put(placeId, handle), what);
            Place place = SETUP.shop().expectPlace(placeId);
            assertTrue(place.carries(visits.get(handle).machine.massKg()), what);
        }

        private boolean standsOnCheckedHoist(String handle) {
            return standing.entrySet().stream()
                    .anyMatch(entry -> entry.getValue().equals(handle) && checked.contains(entry.getKey()));
        }

        private void finish(Act.Finish finish, Instant at, String what) {
            assertTrue(busy.remove(finish.personId(), finish.visitId() + " " + finish.taskId()), what + busy);
            Taken visit = visits.get(finish.visitId());
            Task task = visit.task(finish.taskId());
            visit.complete.put(task.id(), at.plus(Duration.ofMinutes(task.unattended())));
            visit.doers.put(task.id(), finish.personId());
            Stay stay = visit.stayOf(task.id());
            if (stay.needsPlace() && task.id().startsWith("in-")) {
                Place place = standing.entrySet().stream()
                        .filter(entry -> entry.getValue().equals(finish.visitId()))
                        .map(entry -> SETUP.shop().expectPlace(entry.getKey()))
                        .findFirst()
                        .orElseThrow();
                assertTrue(stay.kinds().contains(place.kind()), what);
            }
            if (visit.tasks().allMatch(each -> visit.complete.containsKey(each.id()))) {
                states.put(finish.visitId(), VisitState.DONE);
            }
        }

        private void tick(Act.Tick tick, String what) {
            assertTrue(busy.getOrDefault(tick.personId(), "").startsWith(tick.visitId() + " "), what);
            Predicate<Act.Tick> same = other ->
                    other.visitId().equals(tick.visitId()) && other.pointId().equals(tick.pointId());
            assertTrue(ticks.stream().noneMatch(same), what);
            ticks.add(tick);
        }

        private void changeState(Act act, String what) {
            if (act instanceof Act.HoldVisit hold) {
                states.put(hold.visitId(), VisitState.HELD);
            } else if (act instanceof Act.SayPromise said) {
                promised.add(said.visitId());
            } else if (act instanceof Act.Collect collect) {
                assertEquals(VisitState.DONE, states.put(collect.visitId(), VisitState.GONE), what);
                standing.values().remove(collect.visitId());
            } else if (act instanceof Act.CallOff off) {
                VisitState next = off.noShow() ? VisitState.NO_SHOW : VisitState.CANCELLED;
                assertEquals(VisitState.BOOKED, states.put(off.visitId(), next), what);
            } else if (act instanceof Act.OrderStock order) {
                assertTrue(SETUP.stock().stream().anyMatch(each -> each.itemId().equals(order.itemId())), what);
            } else {
                throw new IllegalStateException("this walk does not know " + what);
            }
        }

        private static boolean isOnShift(Person person, Instant at) {
            LocalTime time = at.atZone(SETUP.shop().zone()).toLocalTime();
            Predicate<Window> open = window -> !time.isBefore(window.from()) && time.isBefore(window.to());
            return person.shifts().stream().anyMatch(open);
        }
    }
}
