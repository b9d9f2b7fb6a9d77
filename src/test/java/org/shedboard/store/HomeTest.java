package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.store.StoreFailure.Kind;

class HomeTest {
    @TempDir
    private Path directory;

    private StoreFailure assertFails(Kind kind, Path home) {
        StoreFailure failure =
                assertThrows(StoreFailure.class, () -> Store.open(home).close());
        assertEquals(kind, failure.kind(), failure.getMessage());
        assertEquals(1, failure.getMessage().lines().count());
        return failure;
    }

    @Test
    void a_home_without_a_shop_is_refused_and_stays_empty() throws IOException {
        assertFails(Kind.NO_SHOP, directory);
        assertFails(Kind.NO_SHOP, directory.resolve("nowhere"));
        try (var files = Files.list(directory)) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void a_shop_is_not_made_twice() {
        Store.create(directory).close();
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.create(directory));
        assertEquals(Kind.SHOP_EXISTS, failure.kind());
        Store.openOrCreate(directory).close();
        assertTrue(Store.exists(directory));
    }

    @Test
    void a_home_may_have_an_odd_name_but_no_semicolon() {
        Path odd = directory.resolve("Ōtāne's \"shed\" %20 🚜 a:b #1");
        try (Store store = Store.create(odd)) {
            store.save(STAMP, "x", tx -> tx.saveSetting("a", "b"));
            try (Store guest = Store.open(odd)) {
                assertFalse(guest.isOwner());
                assertEquals(Optional.of("b"), guest.read(reader -> reader.setting("a")));
            }
        }
        assertTrue(Files.exists(odd.resolve("shop.mv.db")));
        Path injected = directory.resolve("x;INIT=DROP ALL OBJECTS");
        assertFails(Kind.BAD_HOME, injected);
        assertEquals(
                Kind.BAD_HOME,
                assertThrows(StoreFailure.class, () -> Store.create(injected)).kind());
    }

    @Test
    void a_new_home_and_the_notice_in_it_are_for_their_owner_only() throws IOException {
        Path home = directory.resolve("sub/home");
        Store store = Store.create(home);
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(home)));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve("owner"))));
        store.close();
        assertFalse(Files.exists(home.resolve("owner")));
    }

    @Test
    void a_damaged_file_is_told_apart() throws IOException {
        Store.create(directory).close();
        Path file = directory.resolve("shop.mv.db");
        byte[] noise = new byte[(int) Files.size(file)];
        Files.write(file, noise);
        assertFails(Kind.DAMAGED, directory);
        assertArrayEquals(noise, Files.readAllBytes(file));
        Files.write(file, new byte[0]);
        assertFails(Kind.DAMAGED, directory);
    }

    @Test
    void a_row_that_makes_no_value_is_told_by_table_and_key() throws SQLException {
        try (Store store = Store.create(directory)) {
            store.save(STAMP, "begin", Samples::base);
        }
        run("UPDATE place SET kind = 'TENT' WHERE id = 'h1'");
        try (Store store = Store.open(directory)) {
            StoreFailure failure = assertThrows(StoreFailure.class, () -> store.read(Reader::findShop));
            assertEquals(Kind.DAMAGED, failure.kind());
            assertTrue(failure.getMessage().startsWith("table place, row [h1] cannot be read: "), failure.getMessage());
            assertEquals(1, store.read(Reader::owners).size());
        }
    }

    @Test
    void a_file_left_by_a_killed_owner_misleads_nobody() throws IOException {
        Store.create(directory).close();
        for (String stale : new String[] {"", "nonsense\n", "1\n1\nabcdef\n", "99999\n99999\nab\n"}) {
            Files.writeString(directory.resolve("owner"), stale);
            try (Store store = Store.open(directory)) {
                assertTrue(store.isOwner());
            }
        }
    }

    @Test
    void nobody_is_left_connected() throws SQLException {
        try (Store store = Store.create(directory)) {
            long alone = sessions();
            Store.open(directory).close();
            assertEquals(alone, sessions());
            store.read(Reader::lastJournal);
        }
        assertEquals(1, sessions());
    }

    @Test
    void nothing_is_printed_and_no_other_file_appears() throws IOException {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try (Store store = Store.create(directory);
                Store guest = Store.open(directory)) {
            assertThrows(StoreFailure.class, () -> guest.save(STAMP, "x", tx -> tx.saveVisit(Samples.bareVisit("v"))));
            assertThrows(StoreFailure.class, () -> store.save(STAMP, "x", tx -> tx.saveVisit(Samples.bareVisit("v"))));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        assertEquals("", printed.toString(StandardCharsets.UTF_8));
        try (var files = Files.list(directory)) {
            assertEquals(
                    List.of("shop.mv.db"),
                    files.map(file -> file.getFileName().toString()).toList());
        }
    }

    private long sessions() throws SQLException {
        try (Connection connection = Home.at(directory).real().connect(false);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT COUNT(*) AS n FROM information_schema.sessions")) {
            rows.next();
            return rows.getLong("n");
        }
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = Home.at(directory).real().connect(false);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
