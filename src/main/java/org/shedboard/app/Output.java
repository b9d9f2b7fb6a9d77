package org.shedboard.app;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
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
        write(file, out -> {
            out.write(text.getBytes(StandardCharsets.UTF_8));
            return 0L;
        });
    }

    /** What is written piece by piece, and what there is to say of it. */
    interface Content {
        long writeTo(OutputStream out) throws IOException;
    }

    static long write(Path file, Content content) {
        Path whole = file.toAbsolutePath();
        if (Files.isDirectory(whole)) {
            throw new CannotDo("command.file_unwritable", file, Words.say("command.is_a_folder"));
        }
        try {
            Files.createDirectories(whole.getParent());
            Path beside = Files.createTempFile(whole.getParent(), ".", ".part");
            try {
                long said = fill(beside, content);
                Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
                return said;
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException unwritable) {
            throw new CannotDo("command.file_unwritable", file, unwritable.getMessage());
        }
    }

    private static long fill(Path beside, Content content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside))) {
            return content.writeTo(out);
        }
    }
}
