package org.shedboard.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Supplier;
import java.util.zip.ZipFile;
import org.shedboard.disk.OwnersEyes;

/**
 * Opens the file and brings it up to date. H2 cannot undo a step of the schema, so a database that holds anything is copied first,
 * and the copy is put back when a step fails.
 */
final class Migrator {
    private final Home home;
    private final Schema schema;

    Migrator(Home home, Schema schema) {
        this.home = home;
        this.schema = schema;
    }

    /** The open file, up to date; one that is newer than this program, or older and only looked at, is left as it is. */
    Sql open(Intent intent) throws SQLException {
        Sql sql = new Sql(home.connect(intent.mayMake()), Connection.TRANSACTION_READ_COMMITTED);
        List<Migration> missing = untouched(sql, () -> missing(sql, intent));
        if (schema.isNew(missing)) {
            apply(sql, missing);
        } else if (!missing.isEmpty()) {
            applyToCopied(sql, missing);
        }
        return sql;
    }

    /** Brings an open database that nobody works with yet up to date, without a copy. */
    void forward(Sql sql) {
        List<Migration> missing = untouched(sql, () -> sql.inOne(schema::missing));
        if (!missing.isEmpty()) {
            apply(sql, missing);
        }
    }

    private List<Migration> missing(Sql sql, Intent intent) {
        List<Migration> missing = sql.inOne(schema::missing);
        if (!missing.isEmpty()) {
            intent.expectToBringForward(missing.get(0).version());
        }
        return missing;
    }

    /** Lets go of a file that this program cannot work with, without writing to it. */
    private static List<Migration> untouched(Sql sql, Supplier<List<Migration>> look) {
        try {
            return look.get();
        } catch (StoreFailure failure) {
            sql.run("SHUTDOWN IMMEDIATELY");
            throw failure;
        }
    }

    private void apply(Sql sql, List<Migration> missing) {
        missing.forEach(migration -> schema.apply(sql, migration));
        Rights.grant(sql);
        sql.run("CHECKPOINT SYNC");
    }

    private void applyToCopied(Sql sql, List<Migration> missing) {
        String name = "before-V%s.zip".formatted(missing.get(0).version());
        Path copy = home.backups().resolve(name);
        home.createBackups();
        sql.run("BACKUP TO '%s'".formatted(copy.toString().replace("'", "''")));
        OwnersEyes.only(copy);
        BackupFile.expectSame(copy, home, sql);
        try {
            apply(sql, missing);
        } catch (StoreFailure failure) {
            sql.run("SHUTDOWN IMMEDIATELY");
            putBack(copy);
            throw failure;
        }
    }

    private void putBack(Path copy) {
        Path beside = home.directory().resolve("shop.mv.db.new");
        try (ZipFile zip = new ZipFile(copy.toFile());
                InputStream in = zip.getInputStream(
                        zip.getEntry(home.file().getFileName().toString()))) {
            Files.copy(in, beside, StandardCopyOption.REPLACE_EXISTING);
            Files.move(beside, home.file(), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }
}
