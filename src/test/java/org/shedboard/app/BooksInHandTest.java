package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Outcome;
import org.shedboard.day.RandomActs;
import org.shedboard.files.Seed;
import org.shedboard.register.Reading;
import org.shedboard.shop.Mark;
import org.shedboard.store.Address;
import org.shedboard.testing.Records;

/** Books that are kept in hand say what books read from the start say, whatever another terminal has done. */
@Tag("records")
class BooksInHandTest {
    private static final long SEED = 7;
    private static final int ACTS = 120;
    private static final int LOOK_AFTER = 3;

    @TempDir
    Path directory;

    private Address demonstration;
    private Instant now = Instant.parse("2026-05-11T23:40:00Z");

    @BeforeEach
    void prepare() {
        demonstration = Records.at(directory.resolve("home"));
        Workshop.make(demonstration, Seed.catalogue(), Seed.shop(Seed.catalogue()));
    }

    private Workshop open(String terminal) {
        return Workshop.open(demonstration, terminal, reader -> new Clock() {
            @Override
            public Instant instant() {
                return now;
            }

            @Override
            public ZoneId getZone() {
                return ZoneId.of("Australia/Brisbane");
            }

            @Override
            public Clock withZone(ZoneId zone) {
                throw new UnsupportedOperationException();
            }
        });
    }

    @Test
    void random_acts_of_another_terminal_are_all_in_the_books_that_were_in_hand() {
        RandomActs acts = new RandomActs(new Random(SEED));
        Map<String, Integer> done = new HashMap<>();
        try (Workshop other = open("other");
                Workshop board = open("board")) {
            for (int i = 1; i <= ACTS; i++) {
                now = now.plus(Duration.ofMinutes(1));
                Act act = i % 3 == 0 ? finish(other.day()).orElseGet(this::reading) : acts.next(other.day(), now);
                if (other.carryOut(act, "P1") instanceof Outcome.Done) {
                    done.merge(act.getClass().getSimpleName(), 1, Integer::sum);
                }
                if (i % LOOK_AFTER == 0) {
                    assertSameAsFromTheStart(board.day());
                }
            }
        }
        assertTrue(done.size() > 15, done::toString);
        assertTrue(done.containsKey("Finish"), done::toString);
    }

    /** What somebody is on is over, so that visits are finished too. */
    private static Optional<Act> finish(Day day) {
        return day.visits().stream()
                .flatMap(visit -> visit.tasks().stream()
                        .filter(task -> task.progress().isRunning())
                        .map(task -> (Act) new Act.Finish(
                                task.progress().person().orElseThrow(), visit.id(), task.id(), Optional.of(Mark.GOOD))))
                .findFirst();
    }

    private Act reading() {
        return new Act.ReadMeter(
                "M1", Reading.Unit.HOURS, 5000 + now.getEpochSecond() % 1000, Reading.Told.RIGHT_AS_TYPED, "P1");
    }

    private void assertSameAsFromTheStart(Day inHand) {
        try (Workshop fresh = open("fresh")) {
            Day read = fresh.day();
            assertEquals(read.books().owners(), inHand.books().owners());
            assertEquals(read.books().machines(), inHand.books().machines());
            assertEquals(read.books().register(), inHand.books().register());
            assertEquals(read.books().shop(), inHand.books().shop());
            assertEquals(read.books().catalogue(), inHand.books().catalogue());
            assertEquals(read.books().hoursRules(), inHand.books().hoursRules());
            assertEquals(read.books().shelf(), inHand.books().shelf());
            assertEquals(read.visits(), inHand.visits());
            assertEquals(read.entries(), inHand.entries());
        }
    }
}
