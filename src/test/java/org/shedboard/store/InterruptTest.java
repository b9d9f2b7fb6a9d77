package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class InterruptTest {
    private static final int INTERRUPTS = 8;
    private static final long SEED = 7;

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
}
