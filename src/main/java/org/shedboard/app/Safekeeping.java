package org.shedboard.app;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.CannotDo;
import org.shedboard.store.Address;
import org.shedboard.store.Stamp;
import org.shedboard.store.Store;

/** What is done with the records of one shop so that nothing of them is lost: copies of them, and where these go. */
final class Safekeeping {
    private final Store store;
    private final Address address;
    private final Clock clock;
    private final String terminal;

    Safekeeping(Store store, Address address, Clock clock, String terminal) {
        this.store = store;
        this.address = address;
        this.clock = clock;
        this.terminal = terminal;
    }

    /** Writes all records; returns how many rows they have. */
    long export(OutputStream out) {
        return store.export(out);
    }

    /** Makes a backup where it is wanted; in the home, and with a copy in the second place, where nothing was said. */
    Path backUp(Optional<Path> directory) {
        if (directory.isPresent()) {
            return store.backup(directory.get(), LocalDateTime.now(clock));
        }
        Path made = store.backup(address.home().resolve("backups"), LocalDateTime.now(clock));
        store.copyToSecondPlace(made);
        return made;
    }

    /** Makes the day's backup where there is none, in the process that has the file; a demonstration needs none. */
    void backUpOfDay() {
        if (store.isOwner() && !store.read(ShopClock::isDemonstration)) {
            store.backupOfDay(LocalDateTime.now(clock));
        }
    }

    Optional<Path> secondPlace() {
        return store.secondPlace();
    }

    /**
     * From now on; nowhere where the path is empty.
     *
     * @param who says so, for the journal
     */
    void copyBackupsTo(Path place, String who) {
        Homes.expectHome(address);
        String text = place.toString().isEmpty()
                ? ""
                : place.toAbsolutePath().normalize().toString();
        if (!text.isEmpty() && !Files.isDirectory(place)) {
            throw new CannotDo("command.backup.no_second_place", place);
        }
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        store.save(
                new Stamp(now, who, terminal),
                "the second place for backups",
                tx -> tx.saveSetting(Store.SECOND_PLACE, text));
    }

    /** What is not as it should be with the clock, a sentence each. */
    List<String> warningsOfClock() {
        return SafeWarnings.ofClock(store, clock.instant(), clock.getZone());
    }

    /** What is not as it should be with the backups and the clock, a sentence each. */
    List<String> warnings() {
        return SafeWarnings.of(store, clock.instant(), clock.getZone());
    }
}
