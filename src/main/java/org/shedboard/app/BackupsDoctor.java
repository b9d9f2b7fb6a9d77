package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.shedboard.app.command.CheckUp.Looked;
import org.shedboard.app.command.CheckUp.Part;
import org.shedboard.store.Backups;
import org.shedboard.store.StoreFailure;
import org.shedboard.words.Words;

/** Looks how old the newest backup in a home is. */
final class BackupsDoctor {
    /** What was done since the newest backup would be lost with the disk; more than this is too much. Invented. */
    private static final Duration MOST_WITHOUT = Duration.ofHours(36);

    private final Path backups;

    BackupsDoctor(Path home) {
        this.backups = home.resolve("backups");
    }

    /**
     * @param worked since when changes are in the records; empty where nobody could look
     * @param isDemonstration whose loss nobody would mind
     */
    Looked look(Optional<Instant> worked, boolean isDemonstration) {
        try {
            Optional<Instant> newest = newest();
            if (newest.isEmpty()) {
                boolean isYoung = worked.filter(since -> !isTooLong(since)).isPresent();
                String said = Words.say("doctor.backups.none", backups);
                String todo = Words.say("doctor.backups.todo");
                return isDemonstration || isYoung
                        ? Looked.noted(Part.BACKUPS, said, isDemonstration ? "" : todo)
                        : Looked.wrong(Part.BACKUPS, said, todo);
            }
            long hours = Duration.between(newest.get(), Instant.now()).toHours();
            String said = Words.say("doctor.backups", hours, backups);
            return isDemonstration || !isTooLong(newest.get())
                    ? Looked.sound(Part.BACKUPS, "doctor.backups", hours, backups)
                    : Looked.wrong(Part.BACKUPS, said, Words.say("doctor.backups.todo"));
        } catch (IOException | StoreFailure unreadable) {
            return Looked.wrong(
                    Part.BACKUPS,
                    Words.say("doctor.backups.unreadable", backups),
                    Words.say("doctor.home.unreadable.todo"));
        }
    }

    private static boolean isTooLong(Instant since) {
        return since.isBefore(Instant.now().minus(MOST_WITHOUT));
    }

    private Optional<Instant> newest() throws IOException {
        Optional<Path> file = Backups.in(backups).all().stream().findFirst();
        return file.isEmpty()
                ? Optional.empty()
                : Optional.of(Files.getLastModifiedTime(file.get()).toInstant());
    }
}
