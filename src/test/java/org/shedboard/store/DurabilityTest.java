package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Timer;
import java.util.TimerTask;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a change returned from is there whatever is killed, once; {@code -Dproof.scale=10} kills ten times as often. */
class DurabilityTest {
    private static final int KILLS = 3 * Integer.getInteger("proof.scale", 1);
    private static final long SEED = 20261125;

    private final Random random = new Random(SEED);

    @TempDir
    private Path home;

    @TempDir
    private Path away;

    @BeforeEach
    void make() {
        Store.create(home).close();
    }

    /** The numbers the journal has for changes of that name, as often and in the order in which it has them. */
    private static List<Integer> numbersIn(Store store, String name) {
        return store.read(reader -> reader.journal(0)).stream()
                .map(row -> row.what().split(" "))
                .filter(words -> words[0].equals(name))
                .map(words -> Integer.valueOf(words[1]))
                .toList();
    }

    /** Everything acknowledged, and perhaps the one change that was under way. */
    private static void assertAllThere(int acknowledged, List<Integer> numbers) {
        List<Integer> expected =
                IntStream.rangeClosed(1, numbers.size()).boxed().toList();
        assertEquals(expected, numbers);
        assertTrue(
                numbers.size() == acknowledged || numbers.size() == acknowledged + 1,
                "%d acknowledged, %d there".formatted(acknowledged, numbers.size()));
    }

    private void killSoon(ShopProcess process) {
        Timer timer = new Timer(true);
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        try {
                            process.kill();
                        } catch (InterruptedException interrupt) {
                            Thread.currentThread().interrupt();
                        }
                        timer.cancel();
                    }
                },
                50 + random.nextInt(400));
    }

    /** The highest number it said before it was killed; the last one may be cut short. */
    private static int hearAll(ShopProcess process) throws IOException {
        int last = 0;
        Optional<String> heard = process.hear();
        while (heard.isPresent()) {
            last = Math.max(last, Integer.parseInt(heard.get()));
            heard = process.hear();
        }
        return last;
    }

    @Test
    void no_acknowledged_change_is_lost_when_the_owner_is_killed() throws Exception {
        for (int i = 0; i < KILLS; i++) {
            String name = "owner" + i;
            ShopProcess owner = ShopProcess.at(home);
            owner.tell("count " + name);
            owner.expect("1");
            killSoon(owner);
            int acknowledged = Math.max(1, hearAll(owner));
            try (Store store = Store.open(home)) {
                assertAllThere(acknowledged, numbersIn(store, name));
            }
        }
    }

    /** From 45 seconds after opening on, or from the start where it keeps nothing; H2 2.5.252 loses more than half of these. */
    @Test
    void no_acknowledged_change_is_lost_when_the_file_uses_its_space_again() throws Exception {
        try (Store store = Store.open(home);
                Connection same = Home.at(home).connect(false);
                Statement statement = same.createStatement()) {
            statement.execute("SET RETENTION_TIME 0");
            for (int i = 1; i <= 30; i++) {
                ShopProcess.countOne(store, "count", i);
                assertEquals(Integer.toString(i), ShopProcess.numberAfterKill(home, "count"));
            }
        }
    }

    @Test
    void no_acknowledged_change_of_a_guest_is_lost_or_made_twice_when_the_owner_is_killed() throws Exception {
        for (int i = 0; i < KILLS; i++) {
            String name = "guest" + i;
            int acknowledged = 0;
            ShopProcess owner = ShopProcess.at(home);
            try (Store guest = Store.open(home)) {
                killSoon(owner);
                while (!guest.isOwner()) {
                    ShopProcess.countOne(guest, name, ++acknowledged);
                }
                ShopProcess.countOne(guest, name, ++acknowledged);
                List<Integer> numbers = numbersIn(guest, name);
                assertEquals(acknowledged, numbers.size());
                assertAllThere(acknowledged, numbers);
            }
        }
    }

    @Test
    void no_change_of_a_guest_is_lost_or_made_twice_when_the_owner_leaves_in_order() throws Exception {
        int acknowledged = 0;
        ShopProcess owner = ShopProcess.at(home);
        try (Store guest = Store.open(home)) {
            ShopProcess.countOne(guest, "guest", ++acknowledged);
            owner.tell("close");
            while (!guest.isOwner()) {
                ShopProcess.countOne(guest, "guest", ++acknowledged);
            }
            assertEquals(acknowledged, numbersIn(guest, "guest").size());
            assertAllThere(acknowledged, numbersIn(guest, "guest"));
        }
    }

    @Test
    @Timeout(120)
    void two_guests_go_on_together_when_the_owner_is_killed_and_then_one_of_them() throws Exception {
        ShopProcess owner = ShopProcess.at(home);
        ShopProcess other = ShopProcess.at(home);
        int ours = 0;
        int theirs;
        try (Store guest = Store.open(home)) {
            other.tell("count other");
            other.expect("1");
            ShopProcess.countOne(guest, "ours", ++ours);
            owner.kill();
            int before = numbersIn(guest, "other").size();
            // which of the two is faster is the machine's affair: ours go on until the other's do too
            while (numbersIn(guest, "other").size() <= before + 1) {
                ShopProcess.countOne(guest, "ours", ++ours);
            }
            other.kill();
            theirs = Math.max(1, hearAll(other));
            ShopProcess.countOne(guest, "ours", ++ours);
            assertAllThere(theirs, numbersIn(guest, "other"));
            assertEquals(ours, numbersIn(guest, "ours").size());
            assertTrue(guest.isOwner());
        } finally {
            other.kill();
        }
    }

    @Test
    void no_acknowledged_change_of_a_terminal_is_lost_or_made_twice_when_its_server_is_killed() throws Exception {
        try (ServedKills served = new ServedKills(home, away, random)) {
            for (int i = 0; i < KILLS; i++) {
                ServedKills.Count count = served.kill("served" + i);
                assertEquals(
                        IntStream.rangeClosed(1, count.acknowledged()).boxed().toList(), count.there());
            }
        }
    }
}
