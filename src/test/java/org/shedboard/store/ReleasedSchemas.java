package org.shedboard.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a shop's file as each schema that was released would have it, zipped, into a folder: {@code src/test/resources/schemas}. What is
 * there already stays as it is, since nobody can make an old file anew. Argument: the folder.
 */
public final class ReleasedSchemas {
    private ReleasedSchemas() {}

    public static void main(String[] arguments) throws Exception {
        Path directory = Files.createTempDirectory("schemas");
        try (Store store = Store.create(directory.resolve("full"))) {
            WholeShop.save(store);
        }
        for (Migration migration : Migration.all()) {
            Path zip = Path.of(arguments[0]).resolve(String.format(Locale.ROOT, "V%03d.zip", migration.version()));
            if (!Files.exists(zip)) {
                write(directory, migration.version(), zip);
            }
        }
    }

    private static void write(Path directory, int version, Path zip) throws Exception {
        Home home = Home.at(directory.resolve("at" + version));
        home.create();
        Sql old = new Migrator(home, new Schema(Migration.all()).upTo(version)).open(Intent.MAKE);
        Sql full = new Sql(Home.at(directory.resolve("full")).connect(false), Connection.TRANSACTION_READ_COMMITTED);
        Tables tables = Tables.of(old);
        old.inOne(sql -> {
            tables.copy(full, sql);
            return null;
        });
        tables.goOnNumbering(old);
        full.run("SHUTDOWN");
        old.run("SHUTDOWN COMPACT");
        zip(home.file(), zip);
    }

    private static void zip(Path file, Path zip) throws IOException {
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream zipped = new ZipOutputStream(out)) {
            zipped.putNextEntry(new ZipEntry("shop.mv.db"));
            Files.copy(file, zipped);
            zipped.closeEntry();
        }
    }
}
