package org.shedboard.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.BackupCommand;
import org.shedboard.app.command.RestoreCommand;
import org.shedboard.store.Restore;

/** Backups made and gone back to on a command line. */
final class Safeguarding {
    private final Workshops workshops;

    Safeguarding(Workshops workshops) {
        this.workshops = workshops;
    }

    Answer backUp(BackupCommand asked) {
        Optional<Path> second = asked.secondPlace();
        try (Workshop workshop = workshops.open()) {
            Safekeeping keeping = workshop.safekeeping();
            second.ifPresent(
                    place -> keeping.copyBackupsTo(place, workshop.day().inCharge()));
            Path made = keeping.backUp(asked.directory());
            return BackupCommand.answer(made, asked.directory().isPresent() ? Optional.empty() : keeping.secondPlace());
        }
    }

    Answer restore(RestoreCommand asked) {
        workshops.expectToWork();
        Restore restore = new Restore(Homes.expectHome(workshops.place()), LocalDateTime.now(), asked.withChanges());
        Restore.Restored restored = asked.isNewest() ? restore.newest(asked.isTry()) : named(restore, asked);
        return asked.answer(new RestoreCommand.Outcome(
                restored.backup(),
                restored.skipped(),
                restored.redone(),
                restored.lost(),
                restored.kept().map(Path::toString).orElse("")));
    }

    private static Restore.Restored named(Restore restore, RestoreCommand asked) {
        Path place = asked.file().toAbsolutePath();
        return Files.isDirectory(place) ? restore.newestIn(place, asked.isTry()) : restore.from(place, asked.isTry());
    }
}
