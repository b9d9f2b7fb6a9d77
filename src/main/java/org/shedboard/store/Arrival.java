package org.shedboard.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A database that is made ready in a directory of its own and only then takes its place: nobody ever meets half of one, and what goes
 * wrong before leaves nothing behind.
 */
final class Arrival implements AutoCloseable {
    private final Home home;

    private Arrival(Home home) {
        this.home = home;
    }

    /** In an empty directory of that name in this one, for its owner's eyes only. */
    static Arrival in(Path directory, String name) {
        Home home = new Home(directory.resolve(name));
        clear(home.directory());
        home.create();
        return new Arrival(home);
    }

    /** As {@link #in}, beside whatever another process makes there; what one that was killed left behind is cleared. */
    static Arrival ofThisProcess(Path directory, String name) {
        leftIn(directory, name).forEach(Arrival::clear);
        return in(directory, name + "-" + ProcessHandle.current().pid());
    }

    private static List<Path> leftIn(Path directory, String name) {
        try (Stream<Path> all = Files.list(directory)) {
            return all.filter(each -> isLeft(each.getFileName().toString(), name + "-"))
                    .toList();
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    private static boolean isLeft(String file, String prefix) {
        String process = file.startsWith(prefix) ? file.substring(prefix.length()) : "";
        return process.matches("\\d{1,18}")
                && ProcessHandle.of(Long.parseLong(process)).isEmpty();
    }

    /** Where it is made. */
    Home home() {
        return home;
    }

    /** Brings it to the schema of this program. */
    void bringForward() {
        try {
            Sql sql = new Sql(home.connect(false), Connection.TRANSACTION_READ_COMMITTED);
            try {
                new Migrator(home, new Schema(Migration.all())).forward(sql);
            } finally {
                sql.run("SHUTDOWN");
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Reads every value that the rows make; fails as damaged where one makes none. */
    void expectSound() {
        try (Store store = Store.open(home.directory())) {
            store.read(reader -> {
                reader.findShop();
                reader.findCatalogue();
                reader.owners();
                reader.machines();
                reader.merged();
                reader.carried();
                reader.visitsDuring(Instant.EPOCH, Instant.parse("9999-01-01T00:00:00Z"));
                reader.entries(Instant.EPOCH, Instant.parse("9999-01-01T00:00:00Z"));
                reader.logbook();
                reader.notices();
                reader.loans();
                reader.shelf();
                reader.hoursRules();
                return reader.posted();
            });
        }
    }

    /** Puts it where that home has its file, in one go; it is on disk before and after. */
    void take(Home place) {
        try {
            force(home.file());
            Files.move(home.file(), place.file(), StandardCopyOption.ATOMIC_MOVE);
            force(place.directory());
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** Returns when a file, or what a directory lists, would survive a power cut. */
    static void force(Path path) throws IOException {
        boolean isDirectory = Files.isDirectory(path);
        if (isDirectory && System.getProperty("os.name").startsWith("Windows")) {
            return;
        }
        try (FileChannel channel =
                FileChannel.open(path, isDirectory ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void close() {
        clear(home.directory());
    }

    static void clear(Path directory) {
        if (!Files.exists(directory)) {
            return;
        }
        try (Stream<Path> all = Files.walk(directory)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.delete(each);
            }
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }
}
