package org.shedboard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * Whether the file that is written to is still the one in the home. A file that was deleted, or whose disk was taken away, can be written to
 * for as long as it is open, and nobody would ever find again what was saved in it.
 */
record Presence(Path file, Optional<Object> key) {
    static Presence of(Home home) {
        return new Presence(home.file(), keyOf(home.file()));
    }

    /** What tells a file from another that takes its name; empty where the file is gone, or the system has no such thing. */
    private static Optional<Object> keyOf(Path file) {
        try {
            return Optional.ofNullable(
                    Files.readAttributes(file, BasicFileAttributes.class).fileKey());
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    void expect() {
        if (!Files.exists(file) || !keyOf(file).equals(key)) {
            throw new StoreFailure(
                    StoreFailure.Kind.VANISHED,
                    "%s is gone while it was open; bring its disk back and start again, what was shown as saved is on it"
                            .formatted(file));
        }
    }
}
