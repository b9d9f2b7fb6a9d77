package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.shop.Owner;

class ChangeFilesTest {
    @TempDir
    private Path directory;

    private Path home;

    @BeforeEach
    void make() {
        home = directory.resolve("home");
        Store.create(home).close();
    }

    private static void change(Store store, int number) {
        ShopProcess.countOne(store, "count", number);
    }

    private ChangeFiles files() {
        return new ChangeFiles(Home.at(home));
    }

    private List<Long> ids() {
        return files().after(0).stream().map(ChangeLine::id).toList();
    }

    private List<Long> journal() {
        try (Store store = Store.open(home)) {
            return store.read(reader -> reader.journal(0)).stream()
                    .map(JournalRow::id)
                    .toList();
        }
    }

    static Map<String, String> digests(Path home) throws SQLException {
        Sql sql = new Sql(Home.at(home).connect(false), Connection.TRANSACTION_READ_COMMITTED);
        try {
            return Tables.of(sql).digests(sql);
        } finally {
            sql.run("SHUTDOWN");
        }
    }

    private Path file() {
        return files().files().get(0);
    }

    private Path keep(String name) throws IOException {
        return Files.copy(home.resolve("shop.mv.db"), directory.resolve(name));
    }

    /** The file after its first change. */
    private Path early() throws IOException {
        try (Store store = Store.open(home)) {
            change(store, 0);
        }
        return keep("first.mv.db");
    }

    private void putBack(Path kept) throws IOException {
        Files.copy(kept, home.resolve("shop.mv.db"), StandardCopyOption.REPLACE_EXISTING);
    }

    @Test
    void a_change_that_is_saved_is_a_line_in_the_file_of_its_day() throws IOException {
        try (Store store = Store.open(home)) {
            store.save(Samples.STAMP, "base", Samples::base);
            change(store, 1);
            String text = Files.readString(file());
            assertEquals("2026-11-25.jsonl", file().getFileName().toString(), "the day in the shop's zone");
            assertTrue(text.endsWith("\n") && text.contains("\"what\":\"count 1\""), text);
            assertTrue(text.contains("[\"+\",\"setting\",{\"name\":\"count\",\"text\":\"1\"}]"), text);
            change(store, 2);
            assertTrue(Files.readString(file()).contains("[\"=\",\"setting\",{\"name\":\"count\",\"text\":\"2\"}]"));
            assertEquals(
                    store.read(Reader::lastJournal),
                    files().newest().orElseThrow().id());
        }
    }

    @Test
    void nobody_else_may_read_the_files() throws IOException {
        try (Store store = Store.open(home)) {
            change(store, 1);
        }
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
    }

    @Test
    void a_guests_change_is_in_the_file_when_it_is_saved() throws Exception {
        try (ShopProcess owner = ShopProcess.at(home);
                Store guest = Store.open(home)) {
            assertEquals("true", owner.ask("owner?"));
            change(guest, 1);
            assertEquals(
                    guest.read(Reader::lastJournal),
                    files().newest().orElseThrow().id());
        }
    }

    @Test
    void every_change_made_again_gives_the_same_to_the_last_row() throws Exception {
        Path early = early();
        try (Store store = Store.open(home)) {
            WholeShop.save(store);
            WholeShop.alter(store);
        }
        Map<String, String> before = digests(home);
        putBack(early);
        Store.open(home).close();
        assertEquals(before, digests(home));
        assertEquals(ids(), journal());
    }

    @Test
    void what_a_database_lost_that_stepped_back_is_made_again_when_it_is_opened() throws Exception {
        try (Store store = Store.open(home)) {
            change(store, 1);
        }
        Path early = keep("early.mv.db");
        try (Store store = Store.open(home)) {
            change(store, 2);
            change(store, 3);
        }
        putBack(early);
        try (Store store = Store.open(home)) {
            assertEquals("3", store.read(reader -> reader.setting("count")).orElseThrow());
            change(store, 4);
        }
        assertEquals(ids(), journal());
        assertEquals(4, ids().size());
    }

    @Test
    void a_line_that_was_cut_short_is_written_again_from_the_records() throws Exception {
        try (Store store = Store.open(home)) {
            change(store, 1);
            change(store, 2);
        }
        String text = Files.readString(file());
        for (int cut : List.of(1, 2, 40, text.lines().toList().get(1).length() + 1)) {
            Files.writeString(file(), text.substring(0, text.length() - cut));
            Store.open(home).close();
            assertEquals(text, Files.readString(file()), "cut by " + cut);
        }
    }

    @Test
    void zeros_at_the_end_that_a_power_cut_left_are_taken_away() throws Exception {
        try (Store store = Store.open(home)) {
            change(store, 1);
        }
        String text = Files.readString(file());
        Files.write(file(), new byte[5000], StandardOpenOption.APPEND);
        try (Store store = Store.open(home)) {
            change(store, 2);
        }
        assertTrue(Files.readString(file()).startsWith(text + "{\"crc\""));
        assertEquals(ids(), journal());
    }

    @Test
    void files_of_other_records_are_put_aside_whole() throws Exception {
        try (Store store = Store.open(home)) {
            change(store, 1);
            change(store, 2);
        }
        String old = Files.readString(file());
        Path name = file().getFileName();
        Files.delete(home.resolve("shop.mv.db"));
        try (Store store = Store.create(home)) {
            change(store, 7);
        }
        assertEquals(ids(), journal());
        Path aside = home.resolve("changes-of-other-records").resolve(name);
        assertEquals(old, Files.readString(aside));
    }

    @Test
    void a_line_with_one_letter_changed_is_none() throws Exception {
        try (Store store = Store.open(home)) {
            change(store, 1);
        }
        String line = Files.readString(file(), StandardCharsets.UTF_8).strip();
        assertEquals(line, ChangeLine.parse(line).orElseThrow().text());
        for (int i = 0; i < line.length(); i++) {
            char other = line.charAt(i) == 'x' ? 'y' : 'x';
            String changed = line.substring(0, i) + other + line.substring(i + 1);
            assertTrue(ChangeLine.parse(changed).isEmpty(), changed);
            assertTrue(ChangeLine.parse(line.substring(0, i)).isEmpty());
        }
    }

    @Test
    void a_very_long_change_goes_through_whole() throws Exception {
        Path early = early();
        String name = "\u00e4".repeat(400_000);
        try (Store store = Store.open(home)) {
            store.save(Samples.STAMP, "long", tx -> {
                for (int i = 0; i < 5; i++) {
                    tx.saveOwner(new Owner("o" + i, name + i, ""));
                }
            });
        }
        Map<String, String> before = digests(home);
        putBack(early);
        Store.open(home).close();
        assertEquals(before, digests(home));
    }

    @Test
    void an_owner_who_was_forgotten_stays_so_when_changes_are_made_again() throws Exception {
        Path early = early();
        try (Store store = Store.open(home)) {
            store.save(Samples.STAMP, "base", Samples::base);
            store.save(Samples.STAMP, "forget", tx -> tx.forget(new Owner("o1", "o1", "")));
        }
        Map<String, String> before = digests(home);
        putBack(early);
        Store.open(home).close();
        assertEquals(before, digests(home));
        try (Store store = Store.open(home)) {
            assertFalse(store.read(Reader::owners).toString().contains("Wiremu"));
        }
    }
}
