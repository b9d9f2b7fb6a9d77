package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.testing.Records;

class RecordsFileTest {
    @TempDir
    private Path directory;

    /** What is left of what was being made. */
    private List<Path> arriving() {
        if (!Files.exists(home("refused"))) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(home("refused"))) {
            return all.filter(file -> file.getFileName().toString().startsWith("arriving"))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Address at(String name) {
        return Records.at(home(name));
    }

    private Path home(String name) {
        return directory.resolve(name);
    }

    private String exported(String name) {
        try (Store store = Store.create(at(name))) {
            WholeShop.save(store);
            return export(store);
        }
    }

    static String export(Store store) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        store.export(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private long load(String name, String text) {
        return Store.load(at(name), new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private StoreFailure assertRefused(StoreFailure.Kind kind, String text) {
        StoreFailure failure = assertThrows(StoreFailure.class, () -> load("refused", text));
        assertEquals(kind, failure.kind(), failure.getMessage());
        assertEquals(1, failure.getMessage().lines().count());
        assertFalse(Store.exists(at("refused")));
        assertEquals(List.of(), arriving());
        return failure;
    }

    /** With what each table boils down to in it. */
    @Test
    @Tag("records")
    void what_was_exported_comes_back_to_the_last_row_and_is_exported_the_same() {
        String first = exported("first");
        assertTrue(first.contains("\"digests\""));
        assertTrue(load("second", first) > 100);
        try (Store store = Store.open(at("second"))) {
            assertEquals(first, export(store));
        }
    }

    @Test
    void a_guest_exports_what_the_owner_would() {
        String before = exported("home");
        try (Store owner = Store.open(home("home"))) {
            assertEquals(before, export(owner));
            Link guest = Guest.join(
                    new Loopback(Notice.find(Home.at(home("home")).real()).orElseThrow()), new Schema(Migration.all()));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            guest.read(sql -> RecordsFile.write(sql, out));
            guest.close();
            assertEquals(before, out.toString(StandardCharsets.UTF_8));
        }
    }

    @Test
    @Tag("records")
    void a_shop_that_was_loaded_goes_on_with_its_numbers() {
        String text = exported("first");
        load("second", text);
        try (Store store = Store.open(at("second"))) {
            long newest = store.read(Reader::lastJournal);
            store.save(Samples.STAMP, "one more", tx -> tx.saveSetting("x", "y"));
            assertEquals(newest + 1, store.read(Reader::lastJournal));
        }
    }

    @Test
    @Tag("records")
    void nothing_is_loaded_over_a_shop() {
        String text = exported("first");
        StoreFailure failure = assertThrows(StoreFailure.class, () -> load("first", text));
        assertEquals(StoreFailure.Kind.SHOP_EXISTS, failure.kind());
    }

    @Test
    void records_of_a_newer_program_are_refused() {
        String text = exported("first");
        String schema = "\"schema\":" + Migration.NEWEST;
        assertTrue(text.contains(schema));
        assertRefused(StoreFailure.Kind.NEWER, text.replace(schema, "\"schema\":999"));
    }

    @Test
    @Tag("records")
    void a_file_that_was_changed_is_told_by_its_digests_and_loaded_without_them() {
        String changed = exported("first").replace("\"label\":\"Drover 450\"", "\"label\":\"Drover 451\"");
        StoreFailure failure = assertRefused(StoreFailure.Kind.BAD_FILE, changed);
        assertTrue(failure.getMessage().contains("machine"), failure.getMessage());
        String without = changed.replaceAll("(?s),\\s*\"digests\":\\{.*?\\}", "");
        assertTrue(load("second", without) > 100);
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "30", "200", "5000"})
    void a_file_that_was_cut_short_is_refused(int length) {
        assertRefused(StoreFailure.Kind.BAD_FILE, exported("first").substring(0, length));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    "tables":{                  | "tables":{"extra":[],
                    "id":"m1"                   | "idd":"m1"
                    "id":"m1"                   | "id":"m1","id":"m1"
                    "mass_kg":310               | "mass_kg":"310"
                    "mass_kg":310               | "mass_kg":310.5
                    "mass_kg":310               | "mass_kg":99999999999999999999
                    "mass_kg":310               | "mass_kg":{}
                    "mass_kg":310,              |
                    "owner_id":"o1","class_id"  | "owner_id":"nobody","class_id"
                    "owner_id":"o1","class_id"  | "owner_id":null,"class_id"
                    "wash_down_first":false     | "wash_down_first":0
                    "opened_on":"2026-11-25"    | "opened_on":"2026-02-30"
                    "zone":"Pacific/Auckland"   | "zone":"Nowhere/Land"
                    """)
    void one_line_says_what_is_wrong_with_a_file(String right, String wrong) {
        String text = exported("first").replaceAll("(?s),\\s*\"digests\":\\{.*?\\}", "");
        assertTrue(text.contains(right), right);
        StoreFailure failure = assertThrows(
                StoreFailure.class, () -> load("refused", text.replace(right, wrong == null ? "" : wrong)));
        assertEquals(1, failure.getMessage().lines().count());
        assertFalse(Store.exists(home("refused")));
    }

    @Test
    void a_file_that_is_very_deep_is_refused() {
        String text = exported("first");
        assertRefused(
                StoreFailure.Kind.BAD_FILE,
                text.replaceFirst("\"mass_kg\":310", "\"mass_kg\":" + "[".repeat(1_000_000)));
    }

    @Test
    void a_text_that_nobody_typed_is_refused_before_it_fills_the_memory() {
        String text = exported("first");
        StoreFailure failure =
                assertRefused(StoreFailure.Kind.BAD_FILE, text.replaceFirst("Drover 450", "x".repeat(60_000_000)));
        assertTrue(failure.getMessage().length() < 500, failure.getMessage());
    }
}
