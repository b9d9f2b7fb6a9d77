package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.shop.Visit;

@Timeout(60)
class TwoProcessesTest {
    @TempDir
    private Path home;

    @BeforeEach
    void make() {
        Store.create(home).close();
    }

    private static Optional<String> get(Store store, String name) {
        return store.read(reader -> reader.setting(name));
    }

    @Test
    void a_second_process_reads_and_writes_through_the_first() throws Exception {
        try (Store owner = Store.open(home);
                ShopProcess guest = ShopProcess.at(home)) {
            assertEquals("false", guest.ask("owner?"));
            owner.save(STAMP, "set", tx -> tx.saveSetting("a", "ours"));
            assertEquals("ours", guest.ask("get a"));
            assertEquals("set", guest.ask("set a theirs"));
            assertEquals(Optional.of("theirs"), get(owner, "a"));
            assertTrue(owner.isOwner());
        }
    }

    @Test
    void a_guest_keeps_everything_an_owner_keeps() throws Exception {
        try (ShopProcess owner = ShopProcess.at(home);
                Store guest = Store.open(home)) {
            assertEquals("true", owner.ask("owner?"));
            List<Visit> visits = Samples.visits(3);
            guest.save(STAMP, "begin", tx -> {
                Samples.base(tx);
                tx.saveVisits(visits);
                tx.savePosted(Samples.plan(), Samples.at(0));
            });
            assertEquals(
                    visits,
                    guest.read(reader -> reader.visitsOpenOrEndedSince(Samples.at(0))).stream()
                            .sorted(java.util.Comparator.comparing(Visit::id))
                            .toList());
            assertEquals(Optional.of(Samples.shop()), guest.read(Reader::findShop));
            assertEquals(Optional.of(Samples.catalogue()), guest.read(Reader::findCatalogue));
            assertEquals(
                    Samples.plan(), guest.read(Reader::posted).orElseThrow().plan());
            assertFalse(guest.isOwner());
        }
    }

    @Test
    void a_guest_takes_over_when_the_owner_leaves() throws Exception {
        ShopProcess first = ShopProcess.at(home);
        try (Store guest = Store.open(home);
                ShopProcess other = ShopProcess.at(home)) {
            first.ask("set a b");
            first.close();
            assertEquals(Optional.of("b"), get(guest, "a"));
            assertTrue(guest.isOwner());
            assertEquals("b", other.ask("get a"));
            assertEquals("false", other.ask("owner?"));
            other.ask("set a c");
            assertEquals(Optional.of("c"), get(guest, "a"));
        }
    }

    @Test
    void a_change_goes_on_when_the_owner_is_killed() throws Exception {
        ShopProcess first = ShopProcess.at(home);
        try (Store guest = Store.open(home)) {
            first.ask("set a b");
            first.kill();
            assertTrue(Files.exists(home.resolve("owner")));
            guest.save(STAMP, "after", tx -> tx.saveSetting("a", tx.setting("a").orElse("") + "c"));
            assertEquals(Optional.of("bc"), get(guest, "a"));
            assertTrue(guest.isOwner());
        }
    }

    @Test
    void a_guest_that_is_killed_holds_nobody_up() throws Exception {
        try (Store owner = Store.open(home)) {
            ShopProcess guest = ShopProcess.at(home);
            guest.tell("count guest");
            guest.hear();
            guest.kill();
            owner.save(STAMP, "after", tx -> tx.saveSetting("a", "b"));
            assertEquals(Optional.of("b"), get(owner, "a"));
        }
    }

    @Test
    void only_one_is_the_first_at_each_hoist() throws Exception {
        int things = 60;
        try (Store owner = Store.open(home);
                ShopProcess guest = ShopProcess.at(home)) {
            guest.tell("race guest " + things);
            for (int i = 0; i < things; i++) {
                String thing = "hoist " + i;
                boolean isOurs = owner.change(STAMP, "start", tx -> ShopProcess.isFirst(tx, thing, "owner"));
                boolean isTheirs = guest.hear().orElseThrow().equals("first");
                assertEquals(isOurs ? "owner" : "guest", get(owner, thing).orElseThrow());
                assertTrue(isOurs != isTheirs, thing);
            }
            assertEquals(2 * things, owner.read(reader -> reader.journal(0)).size());
        }
    }

    @Test
    void nobody_gets_in_without_the_secret() throws Exception {
        try (Store owner = Store.open(home)) {
            Notice notice = Notice.find(Home.at(home)).orElseThrow();
            for (String name :
                    new String[] {"shop", "./shop", home.resolve("shop").toString(), "mem:x"}) {
                String url = "jdbc:h2:tcp://127.0.0.1:%s/%s".formatted(notice.port(), name);
                assertThrows(SQLException.class, () -> DriverManager.getConnection(url, "shop", ""), name);
            }
            Notice wrong = new Notice(notice.port(), notice.syncPort(), "00");
            assertThrows(StoreFailure.class, () -> Guest.join(new Loopback(wrong), new Schema(Migration.all())));
            assertTrue(owner.isOwner());
        }
    }

    @Test
    void nobody_gets_in_from_another_machine() throws Exception {
        try (Store owner = Store.open(home)) {
            Notice notice = Notice.find(Home.at(home)).orElseThrow();
            List<InetAddress> outside = NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> !address.isLoopbackAddress())
                    .toList();
            for (InetAddress address : outside) {
                assertRefused(address, notice.port());
                assertRefused(address, notice.syncPort());
            }
            assertTrue(owner.isOwner());
        }
    }

    private static void assertRefused(InetAddress address, int port) throws IOException {
        try (Socket socket = new Socket()) {
            assertThrows(IOException.class, () -> socket.connect(new InetSocketAddress(address, port), 500));
        }
    }
}
