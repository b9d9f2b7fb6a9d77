package org.shedboard.wire;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shedboard.disk.OwnersFile;

/** What a terminal keeps of a server it has joined: the key it knows it by, and by what it is let in. */
public record Ticket(Fingerprint pinned, Credentials credentials) {
    private static final int LINES = 3;

    /** The one in this file; empty where there is none. */
    public static Optional<Ticket> in(Path file) {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(parse(Files.readAllLines(file, StandardCharsets.UTF_8)));
        } catch (IOException | IllegalArgumentException problem) {
            throw unusable(file, problem);
        }
    }

    private static Ticket parse(List<String> lines) {
        if (lines.size() != LINES) {
            throw new IllegalArgumentException("it has not three lines");
        }
        return new Ticket(new Fingerprint(lines.get(0)), new Credentials(lines.get(1), lines.get(2)));
    }

    public void keepIn(Path file) {
        String lines = "%s%n%s%n%s%n".formatted(pinned.hex(), credentials.name(), credentials.password());
        try {
            OwnersFile.write(file, lines.getBytes(StandardCharsets.UTF_8));
        } catch (IOException problem) {
            throw unusable(file, problem);
        }
    }

    private static WireFailure unusable(Path file, Exception problem) {
        return new WireFailure(
                WireFailure.Kind.FILE,
                "what is known of the server, in %s, cannot be used (%s); remove it and join again"
                        .formatted(file, problem.getMessage()),
                problem);
    }
}
