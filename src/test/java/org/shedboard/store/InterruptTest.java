package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class InterruptTest {
    private static final int INTERRUPTS = 8;
    private static final long SEED = 7;

    @TempDir
    private Path home;

    /** Interrupts that thread again and again, at moments that fall into the middle of its work. */
    private static Thread pest(Thread victim) {
        Random random = new Random(SEED);
        Thread pest = new Thread(() -> {
            for (int i = 0; i < INTERRUPTS; i++) {
                try {
                    Thread.sleep(150, random.nextInt(999_999));
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
    void an_interrupt_costs_no_change() throws InterruptedException {
        int made = 0;
        int seen = 0;
        Thread pest = pest(Thread.currentThread());
        try (Store store = Store.create(home)) {
            pest.start();
            while (pest.isAlive()) {
                ShopProcess.countOne(store, "n", ++made);
                seen += Thread.interrupted() ? 1 : 0;
            }
            seen += Thread.interrupted() ? 1 : 0;
            assertEquals(made, store.read(reader -> reader.journal(0)).size());
        }
        // not all of them: the database swallows some
        assertTrue(seen > 0);
        assertTrue(made > INTERRUPTS);
        try (Store store = Store.open(home)) {
            assertEquals(made, store.read(reader -> reader.journal(0)).size());
        }
    }
}
