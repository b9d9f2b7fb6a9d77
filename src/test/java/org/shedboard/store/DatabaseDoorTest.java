package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.shop.Owner;
import org.shedboard.store.StoreFailure.Kind;
import org.shedboard.testing.PostgresServer;
import org.shedboard.testing.Records;

/** What is only true of records in a PostgreSQL database. */
class DatabaseDoorTest {
    @TempDir
    private Path home;

    private Address address;
    private DatabaseUrl url;

    @BeforeEach
    void demand() {
        PostgresServer.demand();
        address = Records.onPostgres(home);
        url = urlOf(address);
    }

    private static DatabaseUrl urlOf(Address address) {
        return DatabaseUrl.parse(((Address.AtDatabase) address).url());
    }

    private void assertRefused(Kind kind, Address wrong) {
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.open(wrong));
        assertEquals(kind, failure.kind(), failure.getMessage());
        assertEquals(1, failure.getMessage().lines().count());
    }

    private Address at(String text) {
        return new Address.AtDatabase(home, text);
    }

    @Test
    void a_shop_is_made_at_its_first_use_and_not_twice() {
        assertFalse(Store.exists(address));
        assertRefused(Kind.NO_SHOP, address);
        Store.create(address).close();
        assertTrue(Store.exists(address));
        assertEquals(
                Kind.SHOP_EXISTS,
                assertThrows(StoreFailure.class, () -> Store.create(address)).kind());
    }

    @Test
    void a_schema_that_somebody_made_for_the_shop_is_taken() {
        PostgresServer.run("CREATE SCHEMA " + url.schema());
        assertFalse(Store.exists(address));
        Store.create(address).close();
        assertTrue(Store.exists(address));
    }

    @Test
    void shops_in_one_database_do_not_see_one_another() {
        Address other = Records.onPostgres(home.resolve("other"));
        try (Store first = Store.create(address);
                Store second = Store.create(other)) {
            first.save(STAMP, "first", tx -> tx.saveSetting("where", "here"));
            second.save(STAMP, "second", tx -> tx.saveSetting("where", "there"));
            assertEquals(Optional.of("here"), first.read(reader -> reader.setting("where")));
            assertEquals(1, first.read(Reader::lastJournal));
        }
    }

    @Test
    void terminals_that_make_a_shop_at_the_same_moment_share_it() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(4);
        List<Future<Link>> links = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            links.add(hands.submit(() ->
                    Door.to(address, new Schema(Migration.all()), Intent.MAKE).enter()));
        }
        for (Future<Link> link : links) {
            link.get().close();
        }
        hands.shutdown();
        Store.open(address).close();
    }

    @Test
    void of_a_step_that_fails_nothing_stays_in_the_database() {
        List<Migration> steps = new ArrayList<>(Migration.all());
        steps.add(
                Migration.of("V999__bad.sql", "CREATE TABLE extra (id INTEGER);\nCREATE TABLE extra (id INTEGER);\n"));
        Store.create(address).close();
        Door newer = Door.to(address, new Schema(steps), Intent.WORK);
        assertThrows(StoreFailure.class, newer::enter);
        try (Sql sql = DatabaseDoor.open(url, Connection.TRANSACTION_READ_COMMITTED)) {
            assertEquals(
                    Optional.empty(),
                    sql.inOne(one -> one.findNumber("SELECT 1 WHERE to_regclass('extra') IS NOT NULL")));
        }
        Store.open(address).close();
    }

    @Test
    void records_of_a_newer_program_are_left_alone() {
        Store.create(address).close();
        PostgresServer.run("INSERT INTO %s.schema_history (version, name, checksum) VALUES (999, 'newer', 'x')"
                .formatted(url.schema()));
        assertRefused(Kind.NEWER, address);
    }

    /** A server that does not force anything, which is what it can be told while it runs. */
    @Test
    void a_database_that_does_not_force_what_it_saves_is_refused() throws InterruptedException {
        Store.create(address).close();
        try {
            setFsync("off");
            assertRefused(Kind.UNSAFE, address);
        } finally {
            setFsync("on");
        }
        Store.open(address).close();
    }

    private void setFsync(String value) throws InterruptedException {
        PostgresServer.run("ALTER SYSTEM SET fsync = " + value);
        PostgresServer.run("SELECT pg_reload_conf()");
        boolean isSet = false;
        while (!isSet) {
            Thread.sleep(10);
            try (Sql sql = DatabaseDoor.open(url, Connection.TRANSACTION_READ_COMMITTED)) {
                isSet = sql.inOne(
                        one -> one.texts("SELECT current_setting('fsync')").equals(List.of(value)));
            }
        }
    }

    @Test
    void a_terminal_whose_connections_were_ended_goes_on_by_itself() {
        try (Store store = Store.create(address)) {
            store.save(STAMP, "before", tx -> tx.saveSetting("a", "b"));
            endConnections();
            assertEquals(Optional.of("b"), store.read(reader -> reader.setting("a")));
            endConnections();
            store.save(STAMP, "after", tx -> tx.saveSetting("a", "c"));
            assertEquals(Optional.of("c"), store.read(reader -> reader.setting("a")));
            assertEquals(2, store.read(reader -> reader.journal(0)).size());
        }
    }

    private static void endConnections() {
        PostgresServer.run("SELECT pg_terminate_backend(pid, 10000) FROM pg_stat_activity "
                + "WHERE application_name = 'shedboard' AND pid <> pg_backend_pid()");
    }

    @Test
    void a_change_that_was_cut_off_before_it_was_made_is_made_once() {
        try (Store store = Store.create(address)) {
            List<String> tries = new ArrayList<>();
            store.save(STAMP, "cut off", tx -> {
                tries.add("try");
                tx.saveSetting("a", "b");
                if (tries.size() == 1) {
                    endConnections();
                }
                tx.saveSetting("c", "d");
            });
            assertEquals(2, tries.size());
            assertEquals(1, store.read(reader -> reader.journal(0)).size());
        }
    }

    @Test
    void a_commit_waits_for_the_disk_even_where_the_server_would_not() {
        DatabaseUrl hasty = DatabaseUrl.parse(url.text() + "&options=-c%20synchronous_commit=off");
        try (Sql sql = DatabaseDoor.open(hasty, Connection.TRANSACTION_READ_COMMITTED)) {
            assertTrue(sql.inOne(one -> one.findNumber("SELECT 1 WHERE current_setting('synchronous_commit') = 'on'"))
                    .isPresent());
        }
    }

    @Test
    void rows_come_in_the_order_of_their_letters_codes_as_from_a_file() {
        List<Owner> owners = List.of(new Owner("B", "b", ""), new Owner("a", "a", ""), new Owner("é", "e", ""));
        try (Store store = Store.create(address)) {
            store.save(STAMP, "owners", tx -> tx.saveOwners(List.of(owners.get(2), owners.get(1), owners.get(0))));
            assertEquals(owners, store.read(Reader::owners));
        }
    }

    @Test
    void who_cannot_get_in_is_told_why_in_a_line() {
        assertRefused(Kind.UNREACHABLE, at("jdbc:postgresql://127.0.0.1:1/shops?user=shed"));
        assertRefused(Kind.REFUSED, at(PostgresServer.url().replace("/shops", "/nowhere")));
        assertRefused(Kind.REFUSED, at(PostgresServer.url().replace("user=shed", "user=stranger")));
    }

    @Test
    void what_was_forgotten_is_in_no_table_of_the_closed_shop() {
        Store store = Store.create(address);
        store.save(STAMP, "came", tx -> tx.saveOwner(new Owner("o1", "Zanderwick", "0977")));
        long before = fileOf("owner");
        store.compactWhenClosed();
        store.close();
        assertTrue(fileOf("owner") != before, "the table is the same file as before");
    }

    private long fileOf(String table) {
        try (Sql sql = DatabaseDoor.open(url, Connection.TRANSACTION_READ_COMMITTED)) {
            return sql.inOne(one ->
                            one.findNumber("SELECT pg_relation_filenode(to_regclass(?))", url.schema() + "." + table))
                    .orElseThrow();
        }
    }
}
