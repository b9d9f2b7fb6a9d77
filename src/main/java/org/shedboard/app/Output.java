package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.shedboard.app.command.CannotDo;
import org.shedboard.words.Words;

/** Files that are written for people. */
final class Output {
    private Output() {}

    /** Written beside and moved over, so that nobody ever opens half a file. */
    static void write(Path file, String text) {
        Path whole = file.toAbsolutePath();
        if (Files.isDirectory(whole)) {
            throw new CannotDo("command.file_unwritable", file, Words.say("command.is_a_folder"));
        }
        try {
            Files.createDirectories(whole.getParent());
            Path beside = Files.createTempFile(whole.getParent(), ".", ".part");
            try {
                Files.writeString(beside, text);
                Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException unwritable) {
            throw new CannotDo("command.file_unwritable", file, unwritable.getMessage());
        }
    }
}
