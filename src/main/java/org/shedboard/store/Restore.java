package org.shedboard.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Going back to a backup and on from there by the files of changes: a copy is made of it, checked and brought up to now beside the file
 * that is there, and takes its place only when all of that went well. The file that was there is kept.
 */
public final class Restore {
    /**
     * What came of it.
     *
     * @param backup what it was made of
     * @param skipped newer ones that could not be used
     * @param journal number of the last change in the backup
     * @param redone how many changes were made again after it
     * @param lost how many more stand in the files and could not be made, since one before them is damaged
     * @param kept where the file that was there is now; empty where there was none, and when it was only tried
     */
    public record Restored(Path backup, List<Path> skipped, long journal, int redone, int lost, Optional<Path> kept) {}

    private final Home home;
    private final LocalDateTime now;
    private final boolean withChanges;

    /**
     * @param withChanges whether the changes since the backup are to be made again
     */
    public Restore(Path home, LocalDateTime now, boolean withChanges) {
        Store.makeHome(home);
        this.home = Home.at(home).real();
        this.now = now;
        this.withChanges = withChanges;
    }

    /** The newest backup of the home that is whole. */
    public Restored newest(boolean isTry) {
        return newestIn(home.backups(), isTry);
    }

    /** The newest backup that is whole in a directory, such as a second place for them. */
    public Restored newestIn(Path directory, boolean isTry) {
        List<Path> skipped = new ArrayList<>();
        for (Path file : Backups.in(directory).all()) {
            try {
                Restored restored = from(file, isTry);
                return new Restored(
                        file, skipped, restored.journal(), restored.redone(), restored.lost(), restored.kept());
            } catch (StoreFailure failure) {
                if (!failure.is(StoreFailure.Kind.BAD_FILE) && !failure.is(StoreFailure.Kind.DAMAGED)) {
                    throw failure;
                }
                skipped.add(file);
            }
        }
        throw new StoreFailure(
                StoreFailure.Kind.NO_BACKUP,
                skipped.isEmpty()
                        ? "there is no backup in %s; name one, or where they are: shedboard restore FILE or DIR"
                                .formatted(directory)
                        : "none of the %s backups in %s is whole; name another place: shedboard restore DIR"
                                .formatted(skipped.size(), directory));
    }

    /**
     * @param isTry whether everything is to be done but the last step, and nothing in the home touched
     */
    public Restored from(Path file, boolean isTry) {
        if (isTry) {
            Path elsewhere = elsewhere();
            try (Arrival copy = Arrival.in(elsewhere, "shop")) {
                return ready(file, copy);
            } finally {
                Arrival.clear(elsewhere);
            }
        }
        try (InUse alone = InUse.byUs(home);
                Arrival copy = Arrival.in(home.directory(), "restoring")) {
            Restored restored = ready(file, copy);
            Optional<Path> kept = alone.held().map(there -> keep());
            if (!withChanges || restored.lost() > 0) {
                new ChangeFiles(home).setAside("changes-left-out-" + BackupFile.stamp(now));
            }
            copy.take(home);
            return new Restored(file, restored.skipped(), restored.journal(), restored.redone(), restored.lost(), kept);
        }
    }

    private static Path elsewhere() {
        try {
            return Files.createTempDirectory("shedboard-restore");
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private Restored ready(Path file, Arrival copy) {
        if (!Files.isRegularFile(file)) {
            throw new StoreFailure(StoreFailure.Kind.NO_BACKUP, "there is no file %s".formatted(file));
        }
        BackupFile.unpack(file, copy.home());
        Restored restored = bringUpToNow(file, copy.home());
        copy.expectSound();
        return restored;
    }

    private Restored bringUpToNow(Path file, Home copy) {
        try {
            Sql sql = new Sql(copy.connect(false), Connection.TRANSACTION_READ_COMMITTED);
            try {
                Schema schema = new Schema(Migration.all());
                sql.inOne(schema::missing);
                long journal = sql.inOne(Journal::newest);
                List<ChangeLine> lines = withChanges ? new ChangeFiles(home).after(journal) : List.of();
                int redone = redo(sql, copy, lines, ofSameRecords(sql, journal));
                new Migrator(copy, schema).forward(sql);
                return new Restored(file, List.of(), journal, redone, lines.size() - redone, Optional.empty());
            } finally {
                sql.run("SHUTDOWN");
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Whether the files of changes are of the records that this backup was made of. */
    private boolean ofSameRecords(Sql sql, long journal) {
        Optional<ChangeLine> same = new ChangeFiles(home).find(journal);
        return same.isEmpty()
                || sql.inOne(one -> Journal.has(one, journal, same.get().changeId()));
    }

    /** Each change in the schema in which it was made. */
    private int redo(Sql sql, Home copy, List<ChangeLine> lines, boolean sameRecords) {
        int redone = 0;
        while (sameRecords && redone < lines.size()) {
            int from = redone;
            int schema = lines.get(from).schema();
            new Migrator(copy, new Schema(Migration.all()).upTo(schema)).forward(sql);
            List<ChangeLine> alike = lines.stream()
                    .skip(from)
                    .takeWhile(line -> line.schema() == schema)
                    .toList();
            long last = sql.inOne(one -> new Replay(one).all(alike));
            redone += (int) alike.stream().filter(line -> line.id() <= last).count();
            if (redone < from + alike.size()) {
                break;
            }
        }
        sql.inOne(one -> {
            new Replay(one).goOnNumbering();
            return null;
        });
        return redone;
    }

    /** Gives the file that is there a second name, which the one that takes its place does not touch. */
    private Path keep() {
        Path kept = home.directory().resolve("shop-before-restore-%s.mv.db".formatted(BackupFile.stamp(now)));
        try {
            Files.createLink(kept, home.file());
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            copy(kept);
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        }
        return kept;
    }

    private void copy(Path kept) {
        try {
            Files.copy(home.file(), kept);
            Arrival.force(kept);
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Holding a file that nobody may have open meanwhile, by the lock that the database takes itself. */
    private record InUse(Optional<FileChannel> held) implements AutoCloseable {
        static InUse byUs(Home home) {
            if (!home.hasShop()) {
                return new InUse(Optional.empty());
            }
            try {
                FileChannel channel = FileChannel.open(home.file(), StandardOpenOption.WRITE);
                if (isFree(channel)) {
                    return new InUse(Optional.of(channel));
                }
                channel.close();
            } catch (IOException problem) {
                throw StoreFailure.from(problem);
            }
            throw new StoreFailure(
                    StoreFailure.Kind.UNREACHABLE,
                    "a program has the records in %s open; close it, then restore".formatted(home.directory()));
        }

        private static boolean isFree(FileChannel channel) throws IOException {
            try {
                FileLock lock = channel.tryLock();
                return lock != null;
            } catch (OverlappingFileLockException ours) {
                return false;
            }
        }

        @Override
        public void close() {
            if (held.isPresent()) {
                try {
                    held.get().close();
                } catch (IOException problem) {
                    throw StoreFailure.from(problem);
                }
            }
        }
    }
}
