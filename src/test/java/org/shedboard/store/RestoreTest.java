package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.store.StoreFailure.Kind;

class RestoreTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 26, 14, 22, 33);

    @TempDir
    private Path directory;

    private Path home;

    @BeforeEach
    void make() {
        home = directory.resolve("home");
        try (Store store = Store.create(home)) {
            WholeShop.save(store);
        }
    }

    private Path backUp(LocalDateTime at) {
        try (Store store = Store.open(home)) {
            return store.backup(home.resolve("backups"), at);
        }
    }

    private void change(int number) {
        try (Store store = Store.open(home)) {
            ShopProcess.countOne(store, "count", number);
        }
    }

    private Optional<String> count() {
        try (Store store = Store.open(home)) {
            return store.read(reader -> reader.setting("count"));
        }
    }

    private Restore restore() {
        return new Restore(home, NOW, true);
    }

    private void spoil(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
    }

    /** Every file of the home and what is in it. */
    private Map<String, Integer> everything() throws IOException {
        Map<String, Integer> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(home)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(home.relativize(file).toString(), java.util.Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return all;
    }

    @Test
    void a_backup_is_owners_only_and_holds_all() throws Exception {
        Path file = backUp(NOW);
        assertEquals("shop-2026-11-26-142233.zip", file.getFileName().toString());
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        Map<String, String> before = ChangeFilesTest.digests(home);
        Files.delete(home.resolve("shop.mv.db"));
        restore().from(file, false);
        assertEquals(before, ChangeFilesTest.digests(home));
    }

    @Test
    void a_database_that_was_destroyed_costs_no_change() throws Exception {
        backUp(NOW);
        change(1);
        change(2);
        Map<String, String> before = ChangeFilesTest.digests(home);
        Files.write(home.resolve("shop.mv.db"), new byte[4096]);
        assertEquals(
                Kind.DAMAGED,
                assertThrows(StoreFailure.class, () -> Store.open(home)).kind());
        Restore.Restored restored = restore().newest(false);
        assertEquals(2, restored.redone());
        assertEquals(0, restored.lost());
        assertEquals(before, ChangeFilesTest.digests(home));
        change(3);
        assertEquals(Optional.of("3"), count());
    }

    @Test
    void what_was_there_is_kept_beside() throws Exception {
        backUp(NOW);
        byte[] there = Files.readAllBytes(home.resolve("shop.mv.db"));
        Path kept = restore().newest(false).kept().orElseThrow();
        assertEquals(
                "shop-before-restore-2026-11-26-142233.mv.db",
                kept.getFileName().toString());
        assertEquals(-1, Files.mismatch(kept, Files.write(directory.resolve("there"), there)));
    }

    @Test
    void a_rehearsal_says_the_same_and_touches_nothing() throws Exception {
        backUp(NOW);
        change(1);
        Map<String, Integer> before = everything();
        Restore.Restored tried = restore().newest(true);
        assertEquals(before, everything());
        assertEquals(1, tried.redone());
        assertEquals(Optional.empty(), tried.kept());
    }

    @Test
    void a_rehearsal_can_be_had_while_the_shop_is_open_and_the_real_thing_cannot() {
        backUp(NOW);
        try (Store open = Store.open(home)) {
            assertEquals(0, restore().newest(true).redone());
            StoreFailure failure =
                    assertThrows(StoreFailure.class, () -> restore().newest(false));
            assertEquals(Kind.UNREACHABLE, failure.kind());
            ShopProcess.countOne(open, "count", 1);
        }
        assertEquals(Optional.of("1"), count());
    }

    @Test
    void another_program_that_has_it_open_is_in_the_way() throws Exception {
        backUp(NOW);
        try (ShopProcess owner = ShopProcess.at(home)) {
            assertEquals("true", owner.ask("owner?"));
            StoreFailure failure =
                    assertThrows(StoreFailure.class, () -> restore().newest(false));
            assertEquals(Kind.UNREACHABLE, failure.kind());
            assertTrue(failure.getMessage().contains("close it"), failure.getMessage());
        }
    }

    @Test
    void a_backup_that_is_spoiled_is_passed_over_for_the_one_before() throws Exception {
        Path older = backUp(NOW.minusDays(1));
        change(1);
        Path newer = backUp(NOW);
        change(2);
        spoil(newer);
        Restore.Restored restored = restore().newest(false);
        assertEquals(older, restored.backup());
        assertEquals(List.of(newer), restored.skipped());
        assertEquals(2, restored.redone());
        assertEquals(Optional.of("2"), count());
    }

    @Test
    void without_any_whole_backup_it_says_so_and_leaves_all() throws Exception {
        Path only = backUp(NOW);
        spoil(only);
        Map<String, Integer> before = everything();
        assertEquals(
                Kind.NO_BACKUP,
                assertThrows(StoreFailure.class, () -> restore().newest(false)).kind());
        assertEquals(before, everything());
    }

    @Test
    void changes_after_a_damaged_line_are_kept_aside_and_counted() throws Exception {
        backUp(NOW);
        change(1);
        change(2);
        change(3);
        Path file = new ChangeFiles(Home.at(home)).files().get(0);
        Files.writeString(file, Files.readString(file).replace("\"what\":\"count 2\"", "\"what\":\"count 9\""));
        Restore.Restored restored = restore().newest(false);
        assertEquals(1, restored.redone());
        assertEquals(1, restored.lost(), "the damaged line itself cannot be counted");
        assertEquals(Optional.of("1"), count());
        assertTrue(Files.isDirectory(home.resolve("changes-left-out-2026-11-26-142233")));
        change(4);
        assertEquals(Optional.of("4"), count());
    }

    @Test
    void without_changes_it_is_as_it_was_then() {
        change(1);
        backUp(NOW);
        change(2);
        Restore.Restored restored = new Restore(home, NOW, false).newest(false);
        assertEquals(0, restored.redone());
        assertEquals(Optional.of("1"), count());
        assertEquals(Optional.of("1"), count());
    }

    @Test
    void a_copy_of_the_database_and_an_export_can_be_gone_back_to_as_well() throws Exception {
        change(1);
        Path copy = Files.copy(home.resolve("shop.mv.db"), directory.resolve("copy.mv.db"));
        Path json = directory.resolve("all.json");
        try (Store store = Store.open(home)) {
            Files.writeString(json, RecordsFileTest.export(store));
        }
        change(2);
        assertEquals(1, restore().from(copy, false).redone());
        assertEquals(Optional.of("2"), count());
        assertEquals(
                1, new Restore(home, NOW.plusSeconds(1), true).from(json, false).redone());
        assertEquals(Optional.of("2"), count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "no backup at all", "PK and nothing more", "{\"format\":\"shedboard-records\"}", "H:2"})
    void what_is_no_backup_is_refused_in_one_line(String content) throws IOException {
        Path file = Files.writeString(directory.resolve("odd"), content);
        Map<String, Integer> before = everything();
        StoreFailure failure = assertThrows(StoreFailure.class, () -> restore().from(file, false));
        assertEquals(1, failure.getMessage().lines().count());
        assertEquals(before, everything());
    }

    @Test
    void a_small_file_that_unpacks_to_more_than_there_is_room_for_is_refused() throws Exception {
        Path bomb = directory.resolve("bomb.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(bomb))) {
            zip.putNextEntry(new ZipEntry("shop.mv.db"));
            zip.write(new byte[1 << 20]);
        }
        assertTrue(Files.size(bomb) < 1 << 12);
        Home empty = Home.at(Files.createDirectory(directory.resolve("empty")));
        StoreFailure refused = assertThrows(StoreFailure.class, () -> BackupFile.unpack(bomb, empty, 1 << 16));
        assertEquals(Kind.BAD_FILE, refused.kind());
        assertEquals(1, refused.getMessage().lines().count());
    }

    @Test
    void the_backup_of_another_shop_takes_none_of_these_changes() {
        Path others = directory.resolve("others");
        Path file;
        try (Store store = Store.create(others)) {
            ShopProcess.countOne(store, "count", 77);
            file = store.backup(directory, NOW);
        }
        change(1);
        Restore.Restored restored = restore().from(file, false);
        assertEquals(0, restored.redone());
        assertEquals(Optional.of("77"), count());
    }

    @Test
    void a_day_has_one_backup_by_itself_and_the_second_place_a_copy() throws Exception {
        Path second = Files.createDirectory(directory.resolve("stick"));
        try (Store store = Store.open(home)) {
            store.save(Samples.STAMP, "x", tx -> tx.saveSetting(Store.SECOND_PLACE, second.toString()));
            assertTrue(store.backupOfDay(NOW));
            assertFalse(store.backupOfDay(NOW.plusHours(3)));
            assertTrue(store.backupOfDay(NOW.plusDays(1)));
            assertEquals(2, store.backups().all().size());
            List<Path> copies = Backups.in(second).all();
            assertEquals(2, copies.size());
            assertEquals(-1, Files.mismatch(copies.get(0), store.backups().all().get(0)));
            Files.walk(second)
                    .filter(Files::isRegularFile)
                    .forEach(file -> file.toFile().delete());
            Files.delete(second);
            StoreFailure failure = assertThrows(StoreFailure.class, () -> store.backupOfDay(NOW.plusDays(2)));
            assertEquals(Kind.NO_SECOND_PLACE, failure.kind());
            assertEquals(3, store.backups().all().size(), "the one in the home is made all the same");
        }
    }

    @Test
    void fourteen_days_and_twelve_months_are_kept() {
        List<Path> all = new ArrayList<>();
        for (LocalDateTime at = NOW; at.isAfter(NOW.minusDays(500)); at = at.minusDays(1)) {
            all.add(Path.of("shop-%s.zip".formatted(BackupFile.stamp(at))));
            all.add(Path.of("shop-%s.zip".formatted(BackupFile.stamp(at.minusHours(2)))));
        }
        List<Path> kept = new ArrayList<>(all);
        kept.removeAll(Backups.superfluous(all));
        // 14 days with two each, 2026-11-26 back to 11-13; then the last one of each of eleven months before
        assertEquals(28 + 11, kept.size(), kept.toString());
        assertEquals(all.subList(0, 28), kept.subList(0, 28));
        assertEquals("shop-2026-10-31-142233.zip", kept.get(28).toString());
        assertEquals("shop-2025-12-31-142233.zip", kept.get(38).toString());
    }
}
