package org.shedboard.store;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.shedboard.disk.AtMost;
import org.shedboard.disk.OwnersEyes;

/**
 * A backup: all records as {@link RecordsFile} writes them, in a zip. It gets its name only once a copy made of it was found to hold
 * what the records held.
 */
final class BackupFile {
    private static final String RECORDS = "records.json";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);

    private BackupFile() {}

    /** As a part of names, so that names sort by it. */
    static String stamp(LocalDateTime at) {
        return STAMP.format(at);
    }

    /** Writes what this transaction sees into a directory, checked by a copy that is made in the home meanwhile. */
    static Path make(Sql sql, Home home, Path directory, LocalDateTime at) {
        Path whole = directory.resolve("shop-%s.zip".formatted(stamp(at)));
        Path part = directory.resolve(whole.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            Files.createFile(part, OwnersEyes.ofFile());
            RecordsFile.Contents written = sql.inOne(one -> write(one, part));
            Arrival.force(part);
            check(part, home, written);
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
            Arrival.force(directory);
            return whole;
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        } finally {
            part.toFile().delete();
        }
    }

    private static RecordsFile.Contents write(Sql sql, Path part) {
        try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(part));
                ZipOutputStream zip = new ZipOutputStream(file)) {
            zip.putNextEntry(new ZipEntry(RECORDS));
            RecordsFile.Contents written = RecordsFile.write(sql, zip);
            zip.closeEntry();
            return written;
        } catch (IOException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** The rows of the copy are boiled down by the database and laid beside what was written. */
    private static void check(Path part, Home home, RecordsFile.Contents written) {
        try (Arrival copy = Arrival.in(home.directory(), "checking")) {
            unpack(part, copy.home());
            Sql sql = new Sql(copy.home().connect(false), Connection.TRANSACTION_READ_COMMITTED);
            try {
                long journal = sql.inOne(Journal::newest);
                if (journal != written.journal()) {
                    throw new StoreFailure(
                            StoreFailure.Kind.BAD_FILE,
                            "the backup ends at change %s and not at %s".formatted(journal, written.journal()));
                }
            } finally {
                sql.run("SHUTDOWN IMMEDIATELY");
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Opens a copy of this backup and lays what it holds beside what the records hold, which nobody changes meanwhile. */
    static void expectSame(Path file, Home home, Sql records) {
        try (Arrival copy = Arrival.in(home.directory(), "checking")) {
            unpack(file, copy.home());
            Sql sql = new Sql(copy.home().connect(false), Connection.TRANSACTION_READ_COMMITTED);
            try {
                if (!sql.inOne(BackupFile::digests).equals(records.inOne(BackupFile::digests))) {
                    throw new StoreFailure(
                            StoreFailure.Kind.BAD_FILE,
                            "the copy %s does not hold what the records hold".formatted(file));
                }
            } finally {
                sql.run("SHUTDOWN IMMEDIATELY");
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private static Map<String, String> digests(Sql sql) {
        return Tables.of(sql).digests(sql);
    }

    /** Makes a database of a backup of any kind in a home that has none; it has the schema that the backup has. */
    static void unpack(Path file, Home home) {
        try {
            unpack(file, home, Files.getFileStore(home.directory()).getUsableSpace());
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** @param room bytes that it may take when it is unpacked: a small file may unpack to more than the disk holds */
    static void unpack(Path file, Home home, long room) {
        try {
            if (beginsWith(file, "PK")) {
                unzip(file, home, room);
            } else if (beginsWith(file, "H:2")) {
                Files.copy(file, home.file());
            } else {
                try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
                    RecordsFile.read(in, home, new Schema(Migration.all()));
                }
            }
        } catch (ZipException broken) {
            throw new StoreFailure(
                    StoreFailure.Kind.BAD_FILE,
                    "%s is no whole backup: %s".formatted(file, broken.getMessage()),
                    broken);
        } catch (IOException problem) {
            throw new StoreFailure(
                    StoreFailure.Kind.BAD_FILE, "%s cannot be read: %s".formatted(file, problem.getMessage()), problem);
        }
    }

    private static boolean beginsWith(Path file, String letters) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(letters.length()), StandardCharsets.ISO_8859_1).equals(letters);
        }
    }

    private static void unzip(Path file, Home home, long room) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            boolean hasRecords = zip.getEntry(RECORDS) != null;
            String name = hasRecords ? RECORDS : home.file().getFileName().toString();
            try (InputStream in = new BufferedInputStream(AtMost.unpacked(zip, name, room))) {
                if (hasRecords) {
                    RecordsFile.read(in, home, new Schema(Migration.all()));
                } else {
                    Files.copy(in, home.file());
                }
            }
        }
    }
}
