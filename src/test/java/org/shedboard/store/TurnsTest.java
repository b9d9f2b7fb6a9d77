package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Shorter than a turn that is not given back would be waited for. */
@Timeout(8)
class TurnsTest {
    private static final int WAITING = 6;

    private final Turns turns = new Turns();
    private final List<Integer> order = Collections.synchronizedList(new ArrayList<>());

    private Thread waiting(int number) throws InterruptedException {
        Thread thread = new Thread(() -> turns.during(() -> order.add(number)));
        thread.start();
        while (thread.getState() != Thread.State.TIMED_WAITING) {
            Thread.sleep(1);
        }
        return thread;
    }

    @Test
    void those_who_wait_come_in_the_order_in_which_they_came() throws InterruptedException {
        List<Thread> threads = new ArrayList<>();
        turns.during(() -> {
            for (int i = 0; i < WAITING; i++) {
                threads.add(waiting(i));
            }
            return null;
        });
        for (Thread thread : threads) {
            thread.join();
        }
        assertEquals(IntStream.range(0, WAITING).boxed().toList(), order);
    }

    @Test
    void a_turn_in_which_the_work_fails_is_over_too() {
        assertThrows(
                IllegalStateException.class,
                () -> turns.during(() -> {
                    throw new IllegalStateException("it does not go");
                }));
        assertEquals(7, turns.<Integer, RuntimeException>during(() -> 7));
    }

    @Test
    void a_guest_that_goes_in_its_turn_gives_it_back(@TempDir Path home) throws Exception {
        Store.create(home).close();
        try (Store owner = Store.open(home)) {
            SyncLine gone =
                    SyncLine.open(new Loopback(Notice.find(Home.at(home)).orElseThrow()));
            assertEquals(SyncServer.YOURS, gone.ask(SyncServer.TURN));
            CountDownLatch saved = new CountDownLatch(1);
            Thread waits = new Thread(() -> {
                owner.save(Samples.STAMP, "set", tx -> tx.saveSetting("a", "b"));
                saved.countDown();
            });
            waits.start();
            while (waits.getState() != Thread.State.TIMED_WAITING) {
                Thread.sleep(1);
            }
            assertEquals(1, saved.getCount(), "the owner waits for its guest's turn to be over");
            gone.close();
            saved.await();
        }
    }

    @Test
    void a_guest_takes_turn_after_turn_over_one_line(@TempDir Path home) throws Exception {
        Store.create(home).close();
        try (Store owner = Store.open(home)) {
            TurnLine line = new TurnLine(new Loopback(Notice.find(Home.at(home)).orElseThrow()));
            for (int i = 0; i < 3; i++) {
                int next = i;
                assertEquals(next, line.during(() -> next));
                ShopProcess.countOne(owner, "between", i);
            }
            line.close();
            assertThrows(IOException.class, () -> line.during(() -> 0));
        }
    }
}
