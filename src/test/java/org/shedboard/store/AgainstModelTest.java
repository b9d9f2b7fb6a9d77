package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
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
            List<JournalRow> journal = store.read(reader -> reader.journal(1)).stream()
                    .filter(row -> row.what().startsWith("client"))
                    .toList();
            assertAcknowledged(journal);
            Map<String, String> model = new HashMap<>();
            for (JournalRow row : journal) {
                Map<String, String> changes = Deed.parse(row.what()).on(name -> model.getOrDefault(name, ""));
                assertTold(row, changes, model);
                model.putAll(changes);
            }
            assertTrue(model.size() > 4, model::toString);
            model.forEach(
                    (name, text) -> assertEquals(Optional.of(text), store.read(reader -> reader.setting(name)), name));
            store.save(STAMP, "goes on", tx -> tx.saveSetting("a", "0"));
        }
    }

    private void assertAcknowledged(List<JournalRow> journal) {
        List<String> made =
                journal.stream().map(row -> Deed.parse(row.what()).id()).toList();
        Set<String> once = new HashSet<>(made);
        assertEquals(made.size(), once.size(), "a change was made twice");
        assertTrue(acknowledged.size() > KILLS, acknowledged.size() + " changes");
        Set<String> lost =
                acknowledged.stream().filter(id -> !once.contains(id)).collect(Collectors.toSet());
        assertEquals(Set.of(), lost);
    }

    /** The journal tells what really changed: a line for each text that is another, with what it was. */
    private static void assertTold(JournalRow row, Map<String, String> changes, Map<String, String> model) {
        Set<String> after = new HashSet<>();
        Set<String> before = new HashSet<>();
        changes.forEach((name, text) -> {
            if (!text.equals(model.get(name))) {
                after.add("setting %s; text %s".formatted(name, text));
                if (model.containsKey(name)) {
                    before.add("setting %s; text %s".formatted(name, model.get(name)));
                }
            }
        });
        assertEquals(after, row.after().lines().collect(Collectors.toSet()), row.what());
        assertEquals(before, row.before().lines().collect(Collectors.toSet()), row.what());
    }
}
