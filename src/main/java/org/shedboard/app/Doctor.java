package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.CheckUp;
import org.shedboard.app.command.CheckUp.Looked;
import org.shedboard.app.command.CheckUp.Part;
import org.shedboard.disk.OwnersEyes;
import org.shedboard.grid.Size;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;
import org.shedboard.term.Display;
import org.shedboard.term.TerminalKind;
import org.shedboard.words.Words;

/**
 * Looks at all that the program stands on, and changes nothing. Each part is looked at whatever became of the others, so that it is of
 * use where the records cannot be opened; where another terminal has them open it works through that.
 */
final class Doctor {
    /** What the program is started with at least, and the heap it was measured with. */
    private static final long LEAST_MEMORY = 64L << 20;

    private static final int OLDEST_JAVA = 17;
    /** Room for some backups and for the file to be written anew beside itself; invented. */
    private static final long LEAST_ROOM = 200L << 20;

    private static final Size SMALLEST = new Size(80, 24);

    private final Surroundings around;
    private final Workshops workshops;
    private final Path place;

    Doctor(Surroundings around, Workshops workshops) {
        this.around = around;
        this.workshops = workshops;
        this.place = workshops.lookAt().home();
    }

    CheckUp look() {
        List<Looked> parts = new ArrayList<>();
        parts.add(java());
        parts.add(terminal());
        parts.add(home());
        parts.add(disk());
        parts.addAll(records());
        return new CheckUp(parts);
    }

    private static Looked java() {
        int version = Runtime.version().feature();
        long memory = Runtime.getRuntime().maxMemory();
        String said = Words.say("doctor.java", version, megabytes(memory));
        if (version < OLDEST_JAVA) {
            return Looked.wrong(Part.JAVA, said, Words.say("doctor.java.todo", OLDEST_JAVA));
        }
        return memory < LEAST_MEMORY
                ? Looked.wrong(Part.JAVA, said, Words.say("doctor.memory.todo", megabytes(LEAST_MEMORY)))
                : Looked.sound(Part.JAVA, "doctor.java", version, megabytes(memory));
    }

    private static long megabytes(long bytes) {
        return bytes >> 20;
    }

    private Looked terminal() {
        TerminalKind kind = new TerminalKind(around.environment());
        if (!around.hasScreen()) {
            return Looked.not(Part.TERMINAL, Words.say("doctor.terminal.none"));
        }
        Optional<Size> size = Display.measured();
        String letters = Words.say(kind.isUtf8() ? "doctor.letters.all" : "doctor.letters.plain");
        String said = Words.say(
                "doctor.terminal",
                kind.name(),
                size.map(each -> each.columns() + "x" + each.rows()).orElse("?"),
                Words.say("doctor.colours." + kind.colours()),
                letters);
        if (size.filter(each -> each.columns() < SMALLEST.columns() || each.rows() < SMALLEST.rows())
                .isPresent()) {
            return Looked.noted(
                    Part.TERMINAL, said, Words.say("doctor.terminal.small", SMALLEST.columns(), SMALLEST.rows()));
        }
        return kind.isUtf8()
                ? new Looked(Part.TERMINAL, CheckUp.State.SOUND, said, "")
                : Looked.noted(Part.TERMINAL, said, Words.say("doctor.letters.todo"));
    }

    private Looked home() {
        if (!Files.isDirectory(place)) {
            return Looked.wrong(Part.HOME, Words.say("doctor.home.none", place), Words.say("doctor.home.none.todo"));
        }
        try {
            return OwnersEyes.isOnly(place)
                    ? Looked.sound(Part.HOME, "doctor.home", place)
                    : Looked.wrong(
                            Part.HOME, Words.say("doctor.home.open", place), Words.say("doctor.home.todo", place));
        } catch (IOException unreadable) {
            return Looked.wrong(
                    Part.HOME, Words.say("doctor.home.unreadable", place), Words.say("doctor.home.unreadable.todo"));
        }
    }

    private Looked disk() {
        if (!Files.isDirectory(place)) {
            return Looked.not(Part.DISK, Words.say("doctor.home.none", place));
        }
        try {
            long room = Files.getFileStore(place).getUsableSpace();
            Files.delete(Files.createTempFile(place, "doctor", ".tmp", OwnersEyes.ofFile()));
            return room < LEAST_ROOM
                    ? Looked.wrong(
                            Part.DISK,
                            Words.say("doctor.disk", megabytes(room)),
                            Words.say("doctor.disk.todo", megabytes(LEAST_ROOM)))
                    : Looked.sound(Part.DISK, "doctor.disk", megabytes(room));
        } catch (IOException unwritable) {
            return Looked.wrong(Part.DISK, Words.say("doctor.disk.closed"), Words.say("doctor.disk.closed.todo"));
        }
    }

    /** Where the records cannot be opened, nothing in them is looked at. */
    private List<Looked> records() {
        if (!Store.exists(workshops.lookAt())) {
            return unopened(
                    Looked.not(Part.BACKUPS, Words.say("doctor.shop.none", place)),
                    Words.say("doctor.shop.none", place),
                    Words.say("doctor.shop.none.todo"));
        }
        try (Workshop workshop = workshops.openToLook()) {
            return new RecordsDoctor(workshop, place).look();
        } catch (StoreFailure failure) {
            Looked backups = new BackupsDoctor(place).look(Optional.empty(), false);
            return unopened(backups, failure.getMessage(), Words.say(todo(failure.kind())));
        }
    }

    private static String todo(StoreFailure.Kind kind) {
        return switch (kind) {
            case NEWER -> "doctor.database.todo.newer";
            case OLDER -> "doctor.database.todo.older";
            case UNREACHABLE, BUSY -> "doctor.database.todo.busy";
            case DISK_FULL, DISK_FAILS, READ_ONLY, VANISHED -> "doctor.database.todo.disk";
            case BAD_HOME -> "doctor.database.todo.home";
            case DAMAGED -> "doctor.database.todo.damaged";
            default -> "doctor.database.todo.other";
        };
    }

    private static List<Looked> unopened(Looked backups, String why, String todo) {
        List<Looked> parts = new ArrayList<>();
        parts.add(backups);
        parts.add(Looked.wrong(Part.DATABASE, why, todo));
        for (Part part : List.of(Part.TIME, Part.JOURNAL, Part.CLOCK, Part.PLAN)) {
            parts.add(Looked.not(part, Words.say("doctor.unopened")));
        }
        return parts;
    }
}
