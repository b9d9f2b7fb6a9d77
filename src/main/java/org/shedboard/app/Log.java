package org.shedboard.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import org.shedboard.disk.OwnersEyes;
import org.shedboard.store.Store;

/**
 * The files in a home to which faults of the program go, and whatever libraries print under the full screen: where in the program that
 * was, and nothing that anybody typed ({@link LogLine}). A file that is full becomes the first of the old ones, of which a few are
 * kept.
 */
final class Log {
    /** Of one file; some hundred faults with all their frames. */
    static final long FULL_BYTES = 512 * 1024L;

    /** Old files that are kept. */
    static final int OLD = 3;

    private final Path home;

    Log(Path home) {
        this.home = home;
    }

    Path file() {
        return directory().resolve("shedboard.log");
    }

    /** @param age from 1, the youngest */
    Path old(int age) {
        return directory().resolve("shedboard.log." + age);
    }

    private Path directory() {
        return home.resolve("log");
    }

    /** A stream to the log's end; the file is made when something is first written. */
    PrintStream stream() {
        return new PrintStream(new Lines(), true, StandardCharsets.UTF_8);
    }

    /** Appends when and how the program failed; whether that could be written. */
    boolean append(Throwable fault) {
        try (PrintStream stream = stream()) {
            fault.printStackTrace(stream);
            return !stream.checkError();
        }
    }

    private void write(String text) throws IOException {
        Store.makeHome(home);
        Files.createDirectories(directory(), OwnersEyes.ofDirectory());
        if (Files.exists(file()) && Files.size(file()) >= FULL_BYTES) {
            turn();
        }
        if (!Files.exists(file())) {
            Files.createFile(file(), OwnersEyes.ofFile());
        }
        OwnersEyes.only(file());
        Files.writeString(file(), text, StandardOpenOption.APPEND);
    }

    /** Each file becomes one older, and the oldest goes. */
    private void turn() throws IOException {
        for (int age = OLD - 1; age >= 1; age--) {
            if (Files.exists(old(age))) {
                Files.move(old(age), old(age + 1), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.move(file(), old(1), StandardCopyOption.REPLACE_EXISTING);
    }

    /** Takes what is printed line by line; what is not of the log is told by its length alone. */
    private final class Lines extends OutputStream {
        private final StringBuilder line = new StringBuilder();
        /** Characters of the line that were not held, for it is longer than any line of a trace. */
        private int dropped;

        @Override
        public void write(int single) throws IOException {
            write(new byte[] {(byte) single}, 0, 1);
        }

        @Override
        public synchronized void write(byte[] bytes, int from, int count) throws IOException {
            StringBuilder whole = new StringBuilder();
            for (int i = from; i < from + count; i++) {
                if (bytes[i] == '\n') {
                    whole.append(taken());
                } else if (line.length() < LogLine.LONGEST) {
                    // what is kept is ASCII; of anything else only the length counts
                    line.append((char) (bytes[i] & 0xff));
                } else {
                    dropped++;
                }
            }
            if (!whole.isEmpty()) {
                Log.this.write(whole.toString());
            }
        }

        private String taken() {
            String kept = LogLine.of(line.toString(), dropped, Instant.now());
            line.setLength(0);
            dropped = 0;
            return kept + "\n";
        }

        @Override
        public synchronized void close() throws IOException {
            if (!line.isEmpty()) {
                Log.this.write(taken());
            }
        }
    }
}
