package org.shedboard.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.shedboard.disk.OwnersFile;

/**
 * Where the process that has the file open can be reached on this machine. It stands in the home in a file that only its owner can
 * read, and is out of date when that process was killed.
 *
 * @param port where the database answers
 * @param syncPort where commits are made durable
 * @param secret what a guest must know; also the name under which the database answers, so that nobody else finds one
 */
record Notice(int port, int syncPort, String secret) {
    private static final int SECRET_BYTES = 32;

    static String newSecret() {
        byte[] bytes = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** Puts the notice up in one go, so that nobody reads half of it. */
    void post(Home home) {
        String text = "%s\n%s\n%s\n".formatted(Integer.toString(port), Integer.toString(syncPort), secret);
        try {
            OwnersFile.write(home.ownerFile(), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    static void takeDown(Home home) {
        try {
            Files.deleteIfExists(home.ownerFile());
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    /** The notice in this home; empty when there is none that can be understood. */
    static Optional<Notice> find(Home home) {
        try {
            return parse(Files.readAllLines(home.ownerFile(), StandardCharsets.UTF_8));
        } catch (NoSuchFileException absent) {
            return Optional.empty();
        } catch (IOException problem) {
            throw Home.unusable(problem);
        }
    }

    private static Optional<Notice> parse(List<String> lines) {
        boolean isWhole = lines.size() == 3
                && lines.get(0).matches("[0-9]{1,5}")
                && lines.get(1).matches("[0-9]{1,5}")
                && lines.get(2).matches("[0-9a-f]+");
        return isWhole
                ? Optional.of(new Notice(Integer.parseInt(lines.get(0)), Integer.parseInt(lines.get(1)), lines.get(2)))
                : Optional.empty();
    }
}
