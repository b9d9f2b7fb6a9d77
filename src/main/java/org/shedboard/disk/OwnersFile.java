package org.shedboard.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that is for its owner alone from before the first byte is in it, and is never there by half. */
public final class OwnersFile {
    private OwnersFile() {}

    /** Makes it, or puts it in place of what was there; its directory is made where there is none. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path directory = file.toAbsolutePath().getParent();
        Files.createDirectories(directory, OwnersEyes.ofDirectory());
        Path beside = Files.createTempFile(directory, file.getFileName().toString(), ".new", OwnersEyes.ofFile());
        try {
            Files.write(beside, bytes);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
