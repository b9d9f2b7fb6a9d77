package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.store.StoreFailure.Kind;

/** What can befall a home; {@code -Dproof.scale=10} damages the file ten times as often. */
class DamageTest {
    private static final int TIMES = 6 * Integer.getInteger("proof.scale", 1);
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 27, 9, 0);
    private static final int LAST = 30;
    private static final Path FULL = Path.of("/dev/full");

    @TempDir
    private Path directory;

    private Path home;
    private Path file;

    @BeforeEach
    void make() {
        home = directory.resolve("home");
        file = home.resolve("shop.mv.db");
        try (Store store = Store.create(home)) {
            WholeShop.save(store);
            store.backup(home.resolve("backups"), NOW);
            for (int i = 1; i <= LAST; i++) {
                ShopProcess.countOne(store, "count", i);
            }
        }
    }

    private static String count(Store store) {
        return store.read(reader -> {
            reader.journal(0);
            return reader.setting("count").orElse("none");
        });
    }

    /** Either it opens and everything shown as saved is there, or one line names the way and the way leads there. */
    private void assertNothingLost(String what) {
        try (Store store = Store.open(home)) {
            assertEquals(Integer.toString(LAST), count(store), what);
            return;
        } catch (StoreFailure failure) {
            assertEquals(Kind.DAMAGED, failure.kind(), what + ": " + failure.getMessage());
            assertTrue(failure.getMessage().contains("shedboard restore newest"), failure.getMessage());
            assertEquals(1, failure.getMessage().lines().count());
        }
        new Restore(home, NOW, true).newest(false);
        try (Store store = Store.open(home)) {
            assertEquals(Integer.toString(LAST), count(store), what);
        }
    }

    private void repeat(byte[] damaged, String what) throws IOException {
        Files.write(file, damaged);
        assertNothingLost(what);
        try (Stream<Path> all = Files.list(home)) {
            all.filter(each -> each.getFileName().toString().startsWith("shop-before"))
                    .forEach(each -> each.toFile().delete());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_file_that_was_cut_short_costs_no_change(long seed) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(seed);
        for (int i = 0; i < TIMES; i++) {
            int length = random.nextInt(whole.length);
            repeat(Arrays.copyOf(whole, length), "cut to " + length);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void a_file_with_flipped_bytes_costs_no_change(long seed) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(seed);
        for (int i = 0; i < TIMES; i++) {
            byte[] flipped = whole.clone();
            int from = random.nextInt(whole.length - 4096);
            for (int bit = 0; bit < 100; bit++) {
                flipped[from + random.nextInt(4096)] ^= (byte) (1 << random.nextInt(8));
            }
            repeat(flipped, "flipped from " + from);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 512, 4096, 8192, 100_000})
    void a_file_of_nothing_but_zeros_is_never_taken_for_a_new_one(int length) throws IOException {
        repeat(new byte[length], "zeros " + length);
    }

    @Test
    void a_home_that_goes_away_while_it_is_open_is_told_at_the_next_change_and_goes_on_when_it_is_back()
            throws IOException {
        Path away = directory.resolve("away");
        try (Store store = Store.open(home)) {
            Files.move(home, away);
            StoreFailure failure =
                    assertThrows(StoreFailure.class, () -> ShopProcess.countOne(store, "count", LAST + 1));
            assertEquals(Kind.VANISHED, failure.kind());
            assertEquals(1, failure.getMessage().lines().count());
            assertFalse(Files.exists(home));
            assertThrows(StoreFailure.class, () -> ShopProcess.countOne(store, "count", LAST + 2));
            Files.move(away, home);
            ShopProcess.countOne(store, "count", LAST + 3);
            assertEquals(Integer.toString(LAST + 3), count(store));
        }
    }

    @Test
    void a_file_that_was_deleted_and_another_in_its_place_are_told() throws IOException {
        try (Store store = Store.open(home)) {
            Path copy = Files.copy(file, directory.resolve("copy"));
            Files.delete(file);
            Files.move(copy, file);
            assertEquals(
                    Kind.VANISHED,
                    assertThrows(StoreFailure.class, () -> ShopProcess.countOne(store, "count", LAST + 1))
                            .kind());
        }
    }

    @Test
    void a_home_that_may_only_be_read_is_told_in_one_line() throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--------"));
        Assumptions.assumeFalse(Files.isWritable(file), "whoever may do anything is not refused");
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.open(home));
        assertEquals(Kind.READ_ONLY, failure.kind());
    }

    /** A device that is always full stands for the disk. */
    private static void expectFullDevice() {
        Assumptions.assumeTrue(Files.exists(FULL), "there is no device that is always full");
    }

    @Test
    void what_is_exported_to_a_full_disk_is_told_in_one_line() throws IOException {
        expectFullDevice();
        try (Store store = Store.open(home);
                OutputStream full = Files.newOutputStream(FULL)) {
            StoreFailure failure = assertThrows(StoreFailure.class, () -> store.export(full));
            assertEquals(Kind.DISK_FULL, failure.kind(), failure.getMessage());
        }
    }

    @Test
    void a_change_whose_line_finds_no_room_is_not_shown_as_saved_and_the_next_one_is_once_there_is_room()
            throws IOException {
        expectFullDevice();
        Path lines = new ChangeFiles(Home.at(home)).files().get(0);
        Path aside = directory.resolve("aside");
        Files.move(lines, aside);
        Files.createSymbolicLink(lines, FULL);
        try (Store store = Store.open(home)) {
            StoreFailure failure =
                    assertThrows(StoreFailure.class, () -> ShopProcess.countOne(store, "count", LAST + 1));
            assertEquals(Kind.DISK_FULL, failure.kind());
            Files.delete(lines);
            Files.move(aside, lines);
            ShopProcess.countOne(store, "count", LAST + 2);
            assertEquals(Integer.toString(LAST + 2), count(store));
            assertEquals(
                    store.read(Reader::lastJournal),
                    new ChangeFiles(Home.at(home)).newest().orElseThrow().id());
        }
    }
}
