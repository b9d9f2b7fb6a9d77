package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tenth of what {@link PowerCount} counts; {@code -Dproof.scale=10} for all of it. */
class PowerLossTest {
    private static final int CUTS = 20 * Integer.getInteger("proof.scale", 1);

    @TempDir
    private Path directory;

    @AfterEach
    void takeAway() {
        LyingDisk.takeAway();
    }

    @Test
    void no_change_that_was_shown_as_saved_is_lost_by_a_power_cut() throws Exception {
        PowerCount.Outcome outcome = PowerCount.run(directory, CUTS, 20261127);
        assertTrue(outcome.saved() > 0, outcome.toString());
        assertEquals(new PowerCount.Outcome(CUTS, outcome.saved(), 0, 0, 0), outcome);
    }

    /** Would be wrong of a layer that loses nothing. */
    @Test
    void the_disk_of_these_tests_does_lose_what_was_not_forced() throws Exception {
        Path home = Files.createDirectories(directory.resolve("home"));
        LyingDisk.beneath(home);
        int lost = 0;
        try (Store store = Store.create(home)) {
            ShopProcess.countOne(store, "loader0", 1);
        }
        Link owner = HomeDoor.to(Home.at(home).real(), new Schema(Migration.all()), Intent.WORK)
                .enter();
        for (int i = 2; i < 12; i++) {
            int number = i;
            // committed and not waited for
            owner.write(sql -> {
                new Tx(sql, Samples.MORNING).saveSetting("loader0", Integer.toString(number));
                return null;
            });
            Path left = directory.resolve("left" + i);
            LyingDisk.cutPower(left, new Random(i));
            lost += PowerCount.look(left, i).lost();
        }
        owner.close();
        assertTrue(lost > 0, "nothing was lost");
    }

    @Test
    void a_change_on_a_full_disk_is_not_shown_as_saved_and_the_next_one_is_once_there_is_room() throws Exception {
        Path home = Files.createDirectories(directory.resolve("home"));
        LyingDisk.beneath(home);
        try (Store store = Store.create(home)) {
            ShopProcess.countOne(store, "loader0", 1);
            LyingDisk.fill(true);
            StoreFailure failure = assertThrows(StoreFailure.class, () -> ShopProcess.countOne(store, "loader0", 2));
            assertEquals(StoreFailure.Kind.DISK_FULL, failure.kind(), failure.getMessage());
            LyingDisk.fill(false);
            ShopProcess.countOne(store, "loader0", 3);
            assertEquals(Optional.of("3"), store.read(reader -> reader.setting("loader0")));
        }
    }
}
