package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class InterruptTest {
    private static final int INTERRUPTS = 8;
    private static final long SEED = 7;
    private static final int TURNS = 20;
    /** About as long as closing takes. */
    private static final int LONGEST_DELAY_NANOS = 4_000_000;

    @TempDir
    private Path home;

    /** How many changes are made; the pest lets two go by between its interrupts, so that no change is hit time and again. */
    private final AtomicInteger made = new AtomicInteger();

    /** Interrupts that thread again and again, at moments that fall into the middle of its work. */
    private Thread pest(Thread victim) {
        Random random = new Random(SEED);
        Thread pest = new Thread(() -> {
            for (int i = 0; i < INTERRUPTS; i++) {
                int before = made.get();
                try {
                    while (made.get() < before + 2) {
                        Thread.sleep(1);
                    }
                    Thread.sleep(0, random.nextInt(999_999));
                } catch (InterruptedException interrupt) {
                    return;
                }
                victim.interrupt();
            }
        });
        pest.setDaemon(true);
        return pest;
    }

    @Test
    void an_interrupt_costs_no_change() {
        Thread pest = pest(Thread.currentThread());
        try (Store store = Store.create(home)) {
            pest.start();
            while (pest.isAlive()) {
                ShopProcess.countOne(store, "n", made.incrementAndGet());
            }
            assertEquals(made.get(), store.read(reader -> reader.journal(0)).size());
        } finally {
            stop(pest);
        }
        assertTrue(made.get() > INTERRUPTS);
        try (Store store = Store.open(home)) {
            assertEquals(made.get(), store.read(reader -> reader.journal(0)).size());
        }
    }

    /** What it leaves behind must not reach the next test. */
    private static void stop(Thread pest) {
        pest.interrupt();
        while (pest.isAlive()) {
            Thread.onSpinWait();
        }
        Thread.interrupted();
    }

    @Test
    void whoever_was_interrupted_before_a_change_still_is_after_it() {
        try (Store store = Store.create(home)) {
            Thread.currentThread().interrupt();
            ShopProcess.countOne(store, "n", 1);
            assertTrue(Thread.interrupted());
            assertEquals(1, store.read(reader -> reader.journal(0)).size());
        }
    }

    @Test
    void whoever_was_interrupted_before_closing_closes_in_order_and_still_is_afterwards() {
        for (int turn = 1; turn <= TURNS; turn++) {
            Store store = Store.openOrCreate(home);
            ShopProcess.countOne(store, "n", turn);
            Thread.currentThread().interrupt();
            store.close();
            assertTrue(Thread.interrupted());
        }
        try (Store store = Store.open(home)) {
            assertEquals(TURNS, store.read(reader -> reader.journal(0)).size());
        }
    }

    /** Interrupts the closing at moments spread over all that it takes; the file must be let go whatever it was at. */
    @Test
    void an_interrupt_while_closing_lets_the_file_go_and_costs_no_change() {
        Random random = new Random(SEED);
        for (int turn = 1; turn <= TURNS; turn++) {
            Store store = Store.openOrCreate(home);
            ShopProcess.countOne(store, "n", turn);
            Thread victim = Thread.currentThread();
            int delay = random.nextInt(LONGEST_DELAY_NANOS);
            Thread pest = new Thread(() -> {
                LockSupport.parkNanos(delay);
                victim.interrupt();
            });
            pest.start();
            store.close();
            stop(pest);
        }
        try (Store store = Store.open(home)) {
            assertEquals(TURNS, store.read(reader -> reader.journal(0)).size());
        }
    }
}
