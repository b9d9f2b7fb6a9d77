package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/** Whatever is moved by hand on days on which all sorts of things happen: it lies where it was dropped, and the plan obeys. */
class RandomHandTest {
    private static final int SEQUENCES = 2 * Integer.getInteger("proof.scale", 1);
    private static final int ACTS = 60;

    private Random random = new Random();
    private Day day = Demonstration.day();
    private Instant now = Demonstration.opens();
    private int moved;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, SEQUENCES);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_is_moved_by_hand_lies_where_it_was_dropped_in_a_legal_plan(int seed) {
        random = new Random(seed);
        RandomActs others = new RandomActs(random);
        for (int i = 0; i < ACTS; i++) {
            Act act = random.nextInt(3) > 0 ? move() : others.next(day, now);
            try {
                carry(act);
                now = now.plusSeconds(60L * random.nextInt(6));
                assertObeys();
            } catch (RuntimeException | AssertionError wrong) {
                fail("act %d of seed %d, %s at %s: %s".formatted(i, seed, act, day.timeOf(now), wrong), wrong);
            }
        }
        assertTrue(moved > ACTS / 10, "only " + moved + " moves were possible");
    }

    private void carry(Act act) {
        Outcome outcome = Planning.carryOut(day, act, now);
        if (outcome instanceof Outcome.Done done) {
            day = done.day();
            if (act instanceof Act.PinTask pin) {
                moved++;
                assertLiesWhereDropped(pin);
            }
        }
        assertObeys();
    }

    private void assertLiesWhereDropped(Act.PinTask pin) {
        Plan plan = Planning.follow(day, now).plan();
        Task task = day.expectVisit(pin.visitId()).findTask(pin.taskId()).orElseThrow();
        Plan.TaskTime time = plan.tasks().stream()
                .filter(each -> each.job().equals(pin.visitId()) && each.task().equals(pin.taskId()))
                .findFirst()
                .orElseThrow();
        pin.pin().at().ifPresent(at -> assertEquals(day.minuteOf(at), time.start(), "starts"));
        pin.pin()
                .placeId()
                .ifPresent(place -> assertEquals(
                        place,
                        plan.findStay(pin.visitId(), time.stay()).orElseThrow().place()));
        if (task.handsOn() > 0) {
            pin.pin().personId().ifPresent(person -> assertEquals(Optional.of(person), time.person()));
        }
    }

    private void assertObeys() {
        Problem problem = Problems.of(day, now);
        assertEquals(List.of(), ProblemCheck.faults(problem));
        PlanCheck check = PlanCheck.of(problem, Planning.settled(problem));
        assertTrue(check.isLegal(), check::toString);
    }

    private Act move() {
        List<Visit> open =
                day.visits().stream().filter(visit -> visit.state().isOpen()).toList();
        Visit visit = any(open);
        Task task = any(visit.tasks());
        if (random.nextInt(6) == 0) {
            return new Act.LiftPin(visit.id(), task.id());
        }
        boolean isPlace = random.nextInt(3) == 0;
        boolean isPerson = random.nextInt(3) == 0;
        Optional<String> place = isPlace ? Optional.of(any(day.shop().places()).id()) : Optional.empty();
        Optional<String> person =
                isPerson ? Optional.of(any(day.shop().people()).id()) : Optional.empty();
        boolean isTime = random.nextBoolean() || !isPlace && !isPerson;
        Optional<Instant> at = isTime ? Optional.of(near(visit, task)) : Optional.empty();
        return new Act.PinTask(visit.id(), task.id(), new TaskPin(place, at, person));
    }

    /** Two hours about where it is planned. */
    private Instant near(Visit visit, Task task) {
        int planned = day.posted().orElseThrow().plan().tasks().stream()
                .filter(time -> time.job().equals(visit.id()) && time.task().equals(task.id()))
                .mapToInt(Plan.TaskTime::start)
                .findFirst()
                .orElse(day.minuteOf(now));
        return day.instantOf(planned - 60 + random.nextInt(120));
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
