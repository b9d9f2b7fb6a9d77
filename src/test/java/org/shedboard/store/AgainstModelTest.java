package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Several processes change the same things at random and are killed at random moments, the owner of the file with its guests' connections
 * as often as a guest. What is there in the end is what a map holds that made the changes of the journal one after another; and in the
 * journal is every change that was acknowledged, once. {@code -Dproof.scale=10} kills ten times as often.
 */
@Timeout(600)
class AgainstModelTest {
    private static final long SEED = 20261127;
    private static final int CLIENTS = 3;
    private static final int KILLS = 5 * Integer.getInteger("proof.scale", 1);
    private static final int LONGEST_LIFE_MILLIS = 700;

    @TempDir
    private Path home;

    private final Random random = new Random(SEED);
    private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();
    private final List<Thread> listeners = new ArrayList<>();
    private int started;

    private ShopProcess client() throws IOException {
        ShopProcess client = ShopProcess.at(home);
        String name = "client" + ++started;
        client.tell("deeds %s %s".formatted(name, String.valueOf(random.nextInt(1 << 20))));
        Thread listener = new Thread(() -> hear(client), name);
        listener.start();
        listeners.add(listener);
        return client;
    }

    /** What is cut short by a kill was not said. */
    private void hear(ShopProcess client) {
        try {
            Optional<String> said = client.hear();
            while (said.isPresent()) {
                if (said.get().endsWith(".")) {
                    acknowledged.add(said.get().substring(0, said.get().length() - 1));
                }
                said = client.hear();
            }
        } catch (IOException gone) {
            // the same as its end
        }
    }

    @Test
    void the_outcome_is_that_of_the_acknowledged_changes_one_after_another() throws Exception {
        Store.create(home).close();
        List<ShopProcess> clients = new ArrayList<>();
        while (clients.size() < CLIENTS) {
            clients.add(client());
        }
        for (int kill = 0; kill < KILLS; kill++) {
            Thread.sleep(1 + random.nextInt(LONGEST_LIFE_MILLIS));
            int victim = random.nextInt(CLIENTS);
            clients.get(victim).kill();
            clients.set(victim, client());
        }
        for (ShopProcess client : clients) {
            client.kill();
        }
        for (Thread listener : listeners) {
            listener.join();
        }
        assertModel();
    }

    private void assertModel() {
        try (Store store = Store.open(home)) {
            assertTrue(acknowledged.size() > KILLS, acknowledged.size() + " changes");
            DeedModel.check(store, acknowledged);
            store.save(STAMP, "goes on", tx -> tx.saveSetting("a", "0"));
        }
    }
}
