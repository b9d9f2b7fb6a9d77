package org.shedboard.store;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import java.util.stream.Stream;
import org.h2.Driver;
import org.shedboard.disk.OwnersEyes;

/** The directory that holds a shop's records, and the names of the files in it. */
record Home(Path directory) {
    /**
     * What the owner of the file connects with. Closing is our own business, done in order; a trace file would only grow; whoever
     * changes something may have to wait for an import to finish.
     */
    private static final String OWNERS_SETTINGS = ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;LOCK_TIMEOUT=10000";

    private static final String OWNER = "shop";

    private static volatile String layer = "file";

    /** Of each of the two headers that the database begins its file with. */
    private static final int HEADER_BYTES = 4096;

    /** Checks the path: a semicolon would let settings into the database's address, and H2 reads backslashes as slashes. */
    static Home at(Path path) {
        Path directory = path.toAbsolutePath().normalize();
        String text = directory.toString();
        if (text.contains(";") || (File.separatorChar == '/' && text.contains("\\"))) {
            throw new StoreFailure(
                    StoreFailure.Kind.BAD_HOME, "%s has a ; or \\ in it and cannot be a home".formatted(directory));
        }
        return new Home(directory);
    }

    /** The same home by its one true path. */
    Home real() {
        try {
            return new Home(directory.toRealPath());
        } catch (IOException problem) {
            throw unusable(problem);
        }
    }

    Path file() {
        return directory.resolve("shop.mv.db");
    }

    Path ownerFile() {
        return directory.resolve("owner");
    }

    /** There while the file has to be written anew when it is closed. */
    private Path toCompact() {
        return directory.resolve("compact");
    }

    void markToCompact() {
        try {
            Files.write(toCompact(), new byte[0]);
            OwnersEyes.only(toCompact());
        } catch (IOException problem) {
            throw unusable(problem);
        }
    }

    boolean isToCompact() {
        return Files.exists(toCompact());
    }

    void unmarkToCompact() {
        try {
            Files.deleteIfExists(toCompact());
        } catch (IOException problem) {
            throw unusable(problem);
        }
    }

    Path backups() {
        return directory.resolve("backups");
    }

    /** The days' files of changes. */
    Path changes() {
        return directory.resolve("changes");
    }

    void createChanges() {
        makeDirectory(changes());
    }

    boolean hasShop() {
        return Files.exists(file());
    }

    void expectShop() {
        if (!hasShop()) {
            throw new StoreFailure(StoreFailure.Kind.NO_SHOP, "there is no shop in %s".formatted(directory));
        }
        try {
            if (!hasHeader()) {
                throw new StoreFailure(
                        StoreFailure.Kind.DAMAGED,
                        "%s is empty or damaged; go back to a backup: shedboard restore newest".formatted(file()));
            }
        } catch (IOException problem) {
            throw unusable(problem);
        }
    }

    /** A file with neither of its two headers whole would be taken for a new one by the database, and be written over. */
    private boolean hasHeader() throws IOException {
        try (InputStream in = Files.newInputStream(file())) {
            return isHeader(in.readNBytes(HEADER_BYTES)) || isHeader(in.readNBytes(HEADER_BYTES));
        }
    }

    private static boolean isHeader(byte[] block) {
        return block.length == HEADER_BYTES && new String(block, StandardCharsets.ISO_8859_1).startsWith("H:2,");
    }

    /** Makes the directory, for its owner's eyes only. */
    void create() {
        makeDirectory(directory);
    }

    void remove() {
        try {
            Files.deleteIfExists(file());
        } catch (IOException problem) {
            throw unusable(problem);
        }
    }

    void createBackups() {
        makeDirectory(backups());
    }

    /** Takes the records, and copies of them, from everybody but their owner: the database makes its files by the umask. */
    void keepToOwner() {
        OwnersEyes.only(file());
        OwnersEyes.onlyAllIn(backups());
    }

    static void makeDirectory(Path wanted) {
        try {
            Files.createDirectories(wanted, OwnersEyes.ofDirectory());
            if (isEmpty(wanted)) {
                OwnersEyes.only(wanted);
            }
        } catch (IOException problem) {
            throw unusable(problem);
        }
    }

    /** An empty directory that is to be a home becomes nobody else's; one that others have something in is left as it is. */
    private static boolean isEmpty(Path directory) throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.findAny().isEmpty();
        }
    }

    /** Opens the file as its only owner; it must be there unless it may be made. */
    Connection connect(boolean mayMake) throws SQLException {
        String known = mayMake ? "" : ";IFEXISTS=TRUE";
        return connect("jdbc:h2:" + onLayer(database()) + known + OWNERS_SETTINGS, OWNER, "");
    }

    /** The driver is named: asking for one by the address would load those of other databases too, at every start. */
    static Connection connect(String url, String user, String password) throws SQLException {
        Properties who = new Properties();
        who.setProperty("user", user);
        who.setProperty("password", password);
        return new Driver().connect(url, who);
    }

    /** Lets the database and the files of changes be on another file layer of the database than that of usual disks. */
    static void putOn(String scheme) {
        layer = scheme;
    }

    static String onLayer(String path) {
        return layer + ":" + path;
    }

    /** The database's path as H2 counts it, without the ending of its file. */
    String database() {
        return directory.resolve("shop").toString();
    }

    static StoreFailure unusable(IOException problem) {
        if (StoreFailure.isForbidden(problem)) {
            return new StoreFailure(
                    StoreFailure.Kind.READ_ONLY,
                    "the home may not be written to (%s); make its disk writable, or start as its owner"
                            .formatted(problem.getMessage()),
                    problem);
        }
        return new StoreFailure(
                StoreFailure.Kind.BAD_HOME, "the home cannot be used: %s".formatted(problem.getMessage()), problem);
    }
}
