package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.WrongTries;
import org.shedboard.store.StoreFailure.Kind;

class MigratorTest {
    private static final int NEXT_VERSION = Migration.NEWEST + 1;
    private static final Migration NEXT = Migration.of(
            String.format(Locale.ROOT, "V%03d__bell.sql", NEXT_VERSION),
            "-- a comment; with a semicolon\nCREATE TABLE bell (id INTEGER NOT NULL);\nINSERT INTO bell (id) VALUES (1);\n");
    private static final Migration WRONG = Migration.of(
            String.format(Locale.ROOT, "V%03d__wrong.sql", NEXT_VERSION),
            "CREATE TABLE IF NOT EXISTS bell (id INTEGER NOT NULL);\nNONSENSE;\n");

    @TempDir
    private Path home;

    @BeforeEach
    void make() {
        try (Store store = Store.create(home)) {
            store.save(STAMP, "x", tx -> tx.saveSetting("a", "b"));
        }
    }

    private static Schema with(Migration more) {
        List<Migration> all = new ArrayList<>(Migration.all());
        all.add(more);
        return new Schema(all);
    }

    private void assertFails(Kind kind, Schema schema) throws IOException {
        byte[] before = Files.readAllBytes(home.resolve("shop.mv.db"));
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.open(home, schema));
        assertEquals(kind, failure.kind(), failure.getMessage());
        assertArrayEquals(before, Files.readAllBytes(home.resolve("shop.mv.db")));
    }

    private void assertHolds(Schema schema) {
        try (Store store = Store.open(home, schema)) {
            assertEquals(Optional.of("b"), store.read(reader -> reader.setting("a")));
        }
    }

    @Test
    void every_step_in_the_directory_is_known() throws IOException, URISyntaxException {
        Path directory = Path.of(Migration.class.getResource("/db").toURI());
        try (var files = Files.list(directory)) {
            assertEquals(
                    Migration.FILES,
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void a_new_shop_is_not_copied_and_an_old_one_is_before_it_changes() {
        assertFalse(Files.exists(home.resolve("backups")));
        assertHolds(with(NEXT));
        assertTrue(Files.exists(home.resolve("backups/before-V%s.zip".formatted(NEXT_VERSION))));
        assertHolds(with(NEXT));
    }

    @Test
    void a_shop_from_before_there_were_pins_takes_one() throws SQLException {
        Home old = Home.at(home.resolve("old"));
        old.create();
        Schema first = new Schema(Migration.all().subList(0, 1));
        new Migrator(old, first).open(Intent.MAKE).run("SHUTDOWN");
        try (Store store = Store.open(old.directory())) {
            KeptPin pin = new KeptPin("kea", new PinHash("5a17", "4a54", 1), WrongTries.NONE);
            store.save(STAMP, "x", tx -> {
                Samples.base(tx);
                tx.savePin(pin);
            });
            assertEquals(Optional.of(pin), store.read(reader -> reader.findPin("kea")));
        }
        assertTrue(Files.exists(old.backups().resolve("before-V2.zip")));
    }

    @Test
    void a_newer_shop_is_refused_and_left_as_it_is() throws IOException {
        assertHolds(with(NEXT));
        assertFails(Kind.NEWER, new Schema(Migration.all()));
        assertHolds(with(NEXT));
    }

    @Test
    void an_altered_step_is_refused() throws IOException {
        Migration first = Migration.all().get(0);
        assertFails(Kind.ALTERED, new Schema(List.of(new Migration(1, first.name(), first.text() + "-- and more\n"))));
        assertHolds(new Schema(Migration.all()));
    }

    @Test
    void a_step_that_fails_leaves_the_shop_as_it_was() {
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.open(home, with(WRONG)));
        assertEquals(Kind.OTHER, failure.kind());
        assertHolds(new Schema(Migration.all()));
        // would fail if the table of the failed step were still there
        assertHolds(with(NEXT));
    }

    @Test
    void an_older_program_at_work_is_not_joined() {
        try (Store older = Store.open(home)) {
            StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.open(home, with(NEXT)));
            assertEquals(Kind.UNREACHABLE, failure.kind());
            assertTrue(older.isOwner());
        }
    }
}
