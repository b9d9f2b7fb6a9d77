package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.pack.Plan;
import org.shedboard.register.NoticeTaken;
import org.shedboard.register.Serviced;
import org.shedboard.register.Stock;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** Whatever was done on the demonstration day: taken back, the day is as it was; done again, it is as the act left it. */
class TakingBackPropertyTest {
    private static final int SEQUENCES = 4 * Integer.getInteger("proof.scale", 1);
    private static final int ACTS = 120;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, SEQUENCES);
    }

    /** Everything that counts of a day, without the rows that corrections add. */
    private record Counts(
            List<Visit> visits,
            Map<String, List<Trace.Stretch>> stretches,
            List<Errand> errands,
            List<Stock> stock,
            List<NoticeTaken> notices,
            List<Serviced> serviced,
            Optional<Opening> opening) {
        static Counts of(Day day) {
            return new Counts(
                    day.visits().stream()
                            .filter(visit -> visit.state() != VisitState.CANCELLED)
                            .toList(),
                    stretchesOf(day),
                    day.errands().stream().filter(Errand::isOpen).toList(),
                    day.books().shelf().stock().stream()
                            .sorted(Comparator.comparing(Stock::itemId))
                            .toList(),
                    day.visits().stream()
                            .flatMap(visit -> day.books().register().takenOn(visit.id()).stream())
                            .filter(taken -> taken.state() != NoticeTaken.State.DROPPED)
                            .toList(),
                    day.books().register().logbook().serviced().stream()
                            .sorted(Comparator.comparing(Serviced::visitId))
                            .toList(),
                    day.opening());
        }

        private static Map<String, List<Trace.Stretch>> stretchesOf(Day day) {
            Map<String, List<Trace.Stretch>> all = new LinkedHashMap<>();
            for (Person person : day.shop().people()) {
                all.put(person.id(), Trace.Stretch.of(day, person.id()));
            }
            return all;
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void taken_back_the_day_is_as_it_was_and_done_again_it_is_as_it_had_become(int seed) {
        Random random = new Random(seed);
        RandomActs acts = new RandomActs(random);
        Day day = Demonstration.day();
        Instant now = Demonstration.opens();
        List<String> taken = new ArrayList<>();
        for (int i = 0; i < ACTS; i++) {
            Act act = acts.next(day, now);
            try {
                day = day.with(Planning.follow(day, now));
                Outcome outcome = Planning.carryOut(day, act, now);
                if (outcome instanceof Outcome.Done done) {
                    boolean lasts = Lasting.of(act, done.trace()).isPresent();
                    day = lasts ? done.day() : thereAndBack(day, done, now, random);
                    taken.add(lasts ? "" : act.getClass().getSimpleName());
                }
                now = random.nextInt(3) > 0 ? now.plusSeconds(60L * random.nextInt(10)) : now;
            } catch (RuntimeException | AssertionError wrong) {
                fail("act %d of seed %d, %s at %s: %s".formatted(i, seed, act, day.timeOf(now), wrong), wrong);
            }
        }
        long kinds = taken.stream().distinct().count();
        assertTrue(kinds > 5, "only these were taken back: " + taken);
    }

    /** The day as it was, or as the act left it, after both were true in turn. */
    private static Day thereAndBack(Day before, Outcome.Done done, Instant now, Random random) {
        Instant later = random.nextBoolean() ? now : now.plusSeconds(60L * random.nextInt(20));
        Outcome.Done back = carry(done.day(), done.trace(), later);
        assertSame(Counts.of(before), Counts.of(back.day()));
        assertOldRowsStand(done.day(), back.day());
        RandomActsTest.assertTrueDay(back.day(), later);
        if (later.equals(now)) {
            Plan followed = Planning.follow(before, now).plan();
            assertEquals(followed.stays(), planOf(back.day()).stays());
            assertEquals(followed.tasks(), planOf(back.day()).tasks());
        }
        Outcome.Done again = carry(back.day(), back.trace(), later);
        assertSame(Counts.of(done.day()), Counts.of(again.day()));
        assertOldRowsStand(back.day(), again.day());
        RandomActsTest.assertTrueDay(again.day(), later);
        return random.nextInt(3) == 0 ? back.day() : again.day();
    }

    /** One thing after the other, so that a difference is seen. */
    private static void assertSame(Counts wanted, Counts is) {
        for (int i = 0; i < Math.min(wanted.visits().size(), is.visits().size()); i++) {
            assertEquals(wanted.visits().get(i), is.visits().get(i));
        }
        assertEquals(wanted.stretches(), is.stretches());
        assertEquals(wanted.errands(), is.errands());
        assertEquals(wanted.stock(), is.stock());
        assertEquals(wanted.serviced(), is.serviced());
        assertEquals(wanted, is);
    }

    private static Plan planOf(Day day) {
        return day.posted().orElseThrow().plan();
    }

    /** No row of the hours is changed but for one that was open, which has ended. */
    private static void assertOldRowsStand(Day before, Day after) {
        for (ClockEntry old : before.entries()) {
            ClockEntry now = after.entries().stream()
                    .filter(each -> each.id().equals(old.id()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(
                    old.isOpen()
                            ? new ClockEntry(
                                    old.id(), old.personId(), old.activity(), old.from(), now.to(), old.correction())
                            : old,
                    now);
        }
    }

    private static Outcome.Done carry(Day day, Trace trace, Instant now) {
        Outcome outcome = Planning.carryOut(day, new Act.TakeBack(trace, "P1", "a slip"), now);
        if (outcome instanceof Outcome.Refused refused) {
            throw new AssertionError("refused: " + refused.refusal());
        }
        return (Outcome.Done) outcome;
    }
}
