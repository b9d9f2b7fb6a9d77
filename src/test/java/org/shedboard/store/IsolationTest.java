package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shedboard.store.Samples.STAMP;
import static org.shedboard.store.Samples.at;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.testing.Records;

/**
 * Two terminals that change the same thing at the same moment, each after having looked. What one of them must not overlook is in
 * each case something else: a row that the other writes too, a row that the other adds, a row about another machine.
 */
@Tag("records")
class IsolationTest {
    private static final int ROUNDS = 25;

    @TempDir
    private Path home;

    private Store first;
    private Store second;
    private final ExecutorService hands = Executors.newFixedThreadPool(2);
    private final CyclicBarrier together = new CyclicBarrier(2);

    @BeforeEach
    void open() {
        first = Store.create(Records.at(home));
        second = Store.open(Records.at(home));
        first.save(STAMP, "begin", Samples::base);
    }

    @AfterEach
    void close() {
        hands.shutdownNow();
        second.close();
        first.close();
    }

    private interface Turn {
        /** Whether this terminal did it. */
        boolean take(Tx tx, int round, String who);
    }

    /** Both terminals take each turn at once; how often either did it. */
    private int race(Turn turn) throws Exception {
        List<Future<Integer>> both =
                List.of(hands.submit(all(first, "abe", turn)), hands.submit(all(second, "kea", turn)));
        int done = 0;
        for (Future<Integer> each : both) {
            done += each.get();
        }
        return done;
    }

    private Callable<Integer> all(Store store, String who, Turn turn) {
        return () -> {
            int done = 0;
            for (int i = 0; i < ROUNDS; i++) {
                int round = i;
                together.await();
                done += store.change(STAMP, "turn", tx -> turn.take(tx, round, who)) ? 1 : 0;
            }
            return done;
        };
    }

    @Test
    void no_update_is_lost() throws Exception {
        int done = race((tx, round, who) -> {
            int known = tx.setting("count").map(Integer::parseInt).orElse(0);
            tx.saveSetting("count", Integer.toString(known + 1));
            return true;
        });
        assertEquals(2 * ROUNDS, done);
        assertEquals(Optional.of(Integer.toString(done)), first.read(reader -> reader.setting("count")));
        assertEquals(1 + done, first.read(reader -> reader.journal(0)).size());
    }

    @Test
    void nobody_is_clocked_on_twice() throws Exception {
        first.save(STAMP, "came", tx -> tx.saveVisits(Samples.visits(2)));
        int done = race((tx, round, who) -> {
            String person = "p" + round;
            boolean isOnAlready =
                    tx.openEntries().stream().anyMatch(entry -> entry.personId().equals(person));
            if (!isOnAlready) {
                Activity washing = new Activity.OnStay(who.equals("abe") ? "v1" : "v2", Step.WASH);
                tx.saveEntry(new ClockEntry(person + who, person, washing, at(round), Optional.empty()));
            }
            return !isOnAlready;
        });
        assertEquals(ROUNDS, done);
        assertEquals(ROUNDS, first.read(Reader::openEntries).size());
    }

    @Test
    void no_hoist_has_two_machines() throws Exception {
        int done = race((tx, round, who) -> {
            String hoist = "h" + round;
            boolean isTaken = tx.visitsOpenOrEndedSince(at(0)).stream().anyMatch(visit -> isOn(visit, hoist));
            if (!isTaken) {
                tx.saveVisit(onHoist(who + round, hoist));
            }
            return !isTaken;
        });
        assertEquals(ROUNDS, done);
        assertEquals(
                ROUNDS,
                first.read(reader -> reader.visitsOpenOrEndedSince(at(0))).size());
    }

    private static boolean isOn(Visit visit, String hoist) {
        return visit.stays().stream().anyMatch(stay -> stay.placeId().equals(Optional.of(hoist)));
    }

    private static Visit onHoist(String id, String hoist) {
        Visit visit = Samples.fullVisit(id, 1).withTag(OptionalInt.empty());
        return visit.withStays(
                visit.stays().stream().map(stay -> stay.at(hoist)).toList());
    }
}
