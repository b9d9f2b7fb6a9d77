package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files as each released schema left them, one for each, which {@link ReleasedSchemas} wrote once. */
class ReleasedSchemasTest {
    /** The newest that was ever given to anybody. */
    private static final int RELEASED = 9;

    @TempDir
    private Path directory;

    static List<Integer> released() {
        return Migration.all().stream()
                .map(Migration::version)
                .filter(version -> version <= RELEASED)
                .toList();
    }

    private Home home(int version) throws Exception {
        Home home = Home.at(directory.resolve("at" + version));
        home.create();
        String name = String.format(Locale.ROOT, "/schemas/V%03d.zip", version);
        try (InputStream in = ReleasedSchemasTest.class.getResourceAsStream(name);
                ZipInputStream zip = new ZipInputStream(in)) {
            zip.getNextEntry();
            Files.copy(zip, home.file());
        }
        return home;
    }

    private static Sql open(Home home) throws Exception {
        return new Sql(home.connect(false), Connection.TRANSACTION_READ_COMMITTED);
    }

    @ParameterizedTest
    @MethodSource("released")
    void every_row_of_a_released_file_is_there_after_its_way_forward(int version) throws Exception {
        Home home = home(version);
        Sql old = open(home);
        assertEquals(version, Schema.version(old));
        Tables tables = Tables.of(old);
        Map<String, String> before = tables.digests(old);
        old.run("SHUTDOWN");
        try (Store store = Store.open(home.directory())) {
            assertEquals(
                    "Tussock Flat Machinery",
                    store.read(Reader::findShop).orElseThrow().name());
            assertEquals(2, store.read(Reader::machines).size());
            assertTrue(store.read(reader -> reader.findVisit("v1")).isPresent());
        }
        Sql now = open(home);
        assertEquals(Migration.NEWEST, Schema.version(now));
        assertEquals(before, tables.digests(now));
        now.run("SHUTDOWN");
    }

    @ParameterizedTest
    @MethodSource("released")
    void the_copy_from_before_can_be_gone_back_to(int version) throws Exception {
        Home home = home(version);
        Store.open(home.directory()).close();
        List<Path> copies;
        try (var files = Files.list(home.backups())) {
            copies = files.toList();
        }
        assertEquals(1, copies.size());
        Restore restore = new Restore(home.directory(), LocalDateTime.of(2026, 11, 27, 9, 0), true);
        assertEquals(0, restore.from(copies.get(0), false).redone());
        try (Store store = Store.open(home.directory())) {
            assertEquals(2, store.read(Reader::machines).size());
        }
    }

    @ParameterizedTest
    @MethodSource("released")
    void an_older_program_refuses_it_and_leaves_every_byte(int version) throws Exception {
        if (version == 1) {
            return;
        }
        Home home = home(version);
        byte[] before = Files.readAllBytes(home.file());
        Schema older = new Schema(Migration.all()).upTo(version - 1);
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.open(home.directory(), older));
        assertEquals(StoreFailure.Kind.NEWER, failure.kind());
        assertArrayEquals(before, Files.readAllBytes(home.file()));
    }

    @ParameterizedTest
    @MethodSource("released")
    void a_terminal_that_only_looks_leaves_every_byte_of_it(int version) throws Exception {
        Home home = home(version);
        byte[] before = Files.readAllBytes(home.file());
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.openToLook(home.directory()));
        assertEquals(StoreFailure.Kind.OLDER, failure.kind());
        assertArrayEquals(before, Files.readAllBytes(home.file()));
        assertFalse(Files.exists(home.backups()));
    }

    @Test
    void what_was_exported_in_an_older_schema_is_loaded_and_brought_forward() throws Exception {
        Home home = home(3);
        Sql old = open(home);
        Map<String, String> before = new LinkedHashMap<>(Tables.of(old).digests(old));
        Tables tables = Tables.of(old);
        Path file = directory.resolve("v3.json");
        try (var out = Files.newOutputStream(file)) {
            old.inOne(sql -> RecordsFile.write(sql, out));
        }
        old.run("SHUTDOWN");
        try (InputStream in = Files.newInputStream(file)) {
            Store.load(directory.resolve("loaded"), in);
        }
        Sql now = open(Home.at(directory.resolve("loaded")));
        assertEquals(before, tables.digests(now));
        now.run("SHUTDOWN");
    }
}
