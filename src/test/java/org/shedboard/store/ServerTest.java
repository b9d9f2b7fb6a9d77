package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.shop.Visit;
import org.shedboard.wire.Credentials;
import org.shedboard.wire.Fingerprint;
import org.shedboard.wire.Ticket;

@Timeout(60)
class ServerTest {
    @TempDir
    private Path home;

    @TempDir
    private Path away;

    private Served served;

    @BeforeEach
    void serve() {
        Store.create(home).close();
        served = Served.at(home);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private static Optional<String> get(Store store, String name) {
        return store.read(reader -> reader.setting(name));
    }

    private StoreFailure refusal(Ticket ticket) {
        Address.AtServer address = served.address(away);
        ticket.keepIn(address.ticketFile());
        return assertThrows(StoreFailure.class, () -> Store.open(address).close());
    }

    @Test
    void what_a_terminal_saves_is_there_for_all() {
        try (Store terminal = Store.open(served.joined(away))) {
            terminal.save(STAMP, "set", tx -> tx.saveSetting("a", "theirs"));
            assertEquals(Optional.of("theirs"), get(served.owner(), "a"));
            served.owner().save(STAMP, "set", tx -> tx.saveSetting("a", "ours"));
            assertEquals(Optional.of("ours"), get(terminal, "a"));
            assertFalse(terminal.isOwner());
        }
    }

    @Test
    void a_terminal_keeps_everything_an_owner_keeps() {
        List<Visit> visits = Samples.visits(3);
        try (Store terminal = Store.open(served.joined(away))) {
            terminal.save(STAMP, "begin", tx -> {
                Samples.base(tx);
                tx.saveVisits(visits);
                tx.savePosted(Samples.plan(), Samples.at(0));
            });
            assertEquals(Optional.of(Samples.shop()), terminal.read(Reader::findShop));
            assertEquals(Optional.of(Samples.catalogue()), terminal.read(Reader::findCatalogue));
        }
    }

    @Test
    void what_a_terminal_saved_is_on_the_disk() {
        try (Store terminal = Store.open(served.joined(away))) {
            for (int i = 1; i <= 20; i++) {
                ShopProcess.countOne(terminal, "count", i);
                assertEquals(Integer.toString(i), ShopProcess.numberAfterKill(home, "count"));
            }
        }
    }

    @Test
    void a_terminal_that_has_not_joined_is_told_how() {
        StoreFailure failure = assertThrows(
                StoreFailure.class, () -> Store.open(served.address(away)).close());
        assertTrue(failure.getMessage().contains("shedboard join 127.0.0.1"), failure.getMessage());
    }

    @Test
    void a_wrong_password_is_refused() {
        Credentials wrong = new Credentials(served.ticket().credentials().name(), "wrong");
        StoreFailure failure = refusal(new Ticket(served.ticket().pinned(), wrong));
        assertEquals(StoreFailure.Kind.NOT_LET_IN, failure.kind());
    }

    @Test
    void a_server_with_another_key_is_not_spoken_to() {
        StoreFailure failure = refusal(
                new Ticket(new Fingerprint("0".repeat(64)), served.ticket().credentials()));
        assertEquals(StoreFailure.Kind.NOT_LET_IN, failure.kind());
        assertTrue(failure.getMessage().contains(served.ticket().pinned().toString()), failure.getMessage());
    }

    @Test
    void no_shop_is_made_from_a_terminal() {
        assertThrows(StoreFailure.class, () -> Store.create(served.joined(away)));
    }

    @Test
    void nobody_is_forgotten_from_a_terminal() {
        try (Store terminal = Store.open(served.joined(away))) {
            StoreFailure failure = assertThrows(StoreFailure.class, terminal::compactWhenClosed);
            assertTrue(failure.getMessage().contains("do it at the machine that has the records"));
        }
    }

    @Test
    void a_terminal_says_that_its_server_is_gone_and_comes_back_with_it() {
        try (Store terminal = Store.open(served.joined(away))) {
            terminal.save(STAMP, "set", tx -> tx.saveSetting("a", "b"));
            served.close();
            StoreFailure failure = assertThrows(StoreFailure.class, () -> terminal.glance(Reader::lastJournal));
            assertEquals(StoreFailure.Kind.UNREACHABLE, failure.kind());
            served = served.again(home);
            assertEquals(Optional.of("b"), get(terminal, "a"));
        }
    }

    @Test
    void a_terminal_goes_on_when_another_program_of_the_servers_machine_takes_over() throws Exception {
        served.close();
        try (ShopProcess other = ShopProcess.at(home)) {
            served = served.again(home);
            try (Store terminal = Store.open(served.joined(away))) {
                terminal.save(STAMP, "set", tx -> tx.saveSetting("a", "b"));
                assertEquals("b", other.ask("get a"));
                other.kill();
                assertEquals(Optional.of("b"), get(served.owner(), "a"));
                assertTrue(served.owner().isOwner());
                terminal.save(STAMP, "set", tx -> tx.saveSetting("a", "c"));
                assertEquals(Optional.of("c"), get(served.owner(), "a"));
            }
        }
    }

    @Test
    void only_one_is_the_first_at_each_hoist() throws Exception {
        int things = 60;
        try (Store terminal = Store.open(served.joined(away))) {
            Thread theirs = new Thread(() -> ShopProcess.race(terminal, "theirs", things));
            theirs.start();
            ShopProcess.race(served.owner(), "ours", things);
            theirs.join();
            assertEquals(
                    2 * things, served.owner().read(reader -> reader.journal(0)).size());
            for (int i = 0; i < things; i++) {
                String winner = get(terminal, "hoist " + i).orElseThrow();
                assertTrue(List.of("ours", "theirs").contains(winner));
            }
        }
    }
}
