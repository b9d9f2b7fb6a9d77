package org.shedboard.disk;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Files and directories that nobody but their owner may read, whatever the umask says. Where the file system knows no such thing (as
 * on Windows, where a user's own directories are theirs anyway) nothing is done.
 */
public final class OwnersEyes {
    private static final String FILE = "rw-------";
    private static final String DIRECTORY = "rwx------";

    private OwnersEyes() {}

    private static boolean isPosix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    /** For a file about to be made. */
    public static FileAttribute<?>[] ofFile() {
        return attributes(FILE);
    }

    /** For a directory about to be made. */
    public static FileAttribute<?>[] ofDirectory() {
        return attributes(DIRECTORY);
    }

    private static FileAttribute<?>[] attributes(String permissions) {
        return isPosix()
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    /** Takes what is there from everybody else; what is not there, or is somebody else's, is left. */
    public static void only(Path path) {
        try {
            if (isPosix() && !isOnly(path)) {
                Files.setPosixFilePermissions(
                        path, PosixFilePermissions.fromString(Files.isDirectory(path) ? DIRECTORY : FILE));
            }
        } catch (IOException | SecurityException goneOrNotOurs) {
            // the check of the home tells of whatever others can read
        }
    }

    /** The same of a directory and of the files in it. */
    public static void onlyAllIn(Path directory) {
        if (Files.isDirectory(directory)) {
            only(directory);
            try (DirectoryStream<Path> files = Files.newDirectoryStream(directory, Files::isRegularFile)) {
                files.forEach(OwnersEyes::only);
            } catch (IOException unreadable) {
                // the check of the home tells of it
            }
        }
    }

    /** Whether nobody else may read or change it; true where the file system cannot tell. */
    public static boolean isOnly(Path path) throws IOException {
        return !isPosix()
                || Set.of(
                                PosixFilePermission.OWNER_READ,
                                PosixFilePermission.OWNER_WRITE,
                                PosixFilePermission.OWNER_EXECUTE)
                        .containsAll(Files.getPosixFilePermissions(path));
    }
}
