package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.testing.Records;

/** A shop is there whole, with its first change in it, or not at all. */
@Tag("records")
class MakingTest {
    /** No process has it: Linux gives none above 2^22. */
    private static final String NOBODYS = "99999999";

    @TempDir
    private Path home;

    private void make() {
        Store.make(Records.at(home), STAMP, "begin", tx -> tx.saveSetting("x", "y"));
    }

    @Test
    void whoever_looks_while_it_is_made_finds_none() {
        Store.make(Records.at(home), STAMP, "begin", tx -> {
            assertFalse(Store.exists(Records.at(home)));
            tx.saveSetting("x", "y");
        });
        try (Store store = Store.open(Records.at(home))) {
            assertEquals(Optional.of("y"), store.read(reader -> reader.setting("x")));
            assertEquals(1, store.read(Reader::lastJournal));
        }
    }

    @Test
    void what_fails_leaves_nothing() throws IOException {
        assertThrows(
                IllegalStateException.class,
                () -> Store.make(Records.at(home), STAMP, "begin", tx -> {
                    throw new IllegalStateException("on the way");
                }));
        assertFalse(Store.exists(Records.at(home)));
        try (Stream<Path> left = Files.list(home)) {
            assertEquals(0, left.count());
        }
        make();
    }

    @Test
    void none_is_made_over_another_nor_over_one_that_came_meanwhile() {
        StoreFailure late = assertThrows(
                StoreFailure.class,
                () -> Store.make(
                        Records.at(home),
                        STAMP,
                        "begin",
                        tx -> Store.openOrCreate(Records.at(home)).close()));
        assertEquals(StoreFailure.Kind.SHOP_EXISTS, late.kind());
        assertEquals(
                StoreFailure.Kind.SHOP_EXISTS,
                assertThrows(StoreFailure.class, this::make).kind());
    }

    @Test
    void what_a_process_that_is_gone_left_half_made_is_cleared() throws IOException {
        Path left = Files.createDirectories(home.resolve("arriving-" + NOBODYS));
        Files.writeString(left.resolve("shop.mv.db"), "half");
        make();
        assertFalse(Files.exists(left));
        assertTrue(Store.exists(Records.at(home)));
    }
}
