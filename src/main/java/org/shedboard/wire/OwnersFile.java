package org.shedboard.wire;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** A file with something secret in it: its owner's only, from before the first byte is in it, and never there by half. */
final class OwnersFile {
    private OwnersFile() {}

    static void write(Path file, byte[] bytes) throws IOException {
        Path directory = file.toAbsolutePath().getParent();
        Files.createDirectories(directory, ownersOnly("rwx------"));
        Path beside = Files.createTempFile(directory, file.getFileName().toString(), ".new", ownersOnly("rw-------"));
        try {
            Files.write(beside, bytes);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static FileAttribute<?>[] ownersOnly(String permissions) {
        boolean isPosix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return isPosix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
