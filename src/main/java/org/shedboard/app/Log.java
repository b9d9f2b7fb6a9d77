package org.shedboard.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import org.shedboard.store.Store;

/** The file in a home to which faults of the program go, and whatever libraries print under the full screen. */
final class Log {
    private final Path home;

    Log(Path home) {
        this.home = home;
    }

    Path file() {
        return home.resolve("log").resolve("shedboard.log");
    }

    /** A stream to the log's end; the file is made when something is first written. */
    PrintStream stream() {
        return new PrintStream(new Appending(), true, StandardCharsets.UTF_8);
    }

    /** Appends when and how the program failed; whether that could be written. */
    boolean append(Throwable fault) {
        try (PrintStream stream = stream()) {
            stream.println(Instant.now());
            fault.printStackTrace(stream);
            return !stream.checkError();
        }
    }

    private final class Appending extends OutputStream {
        private OutputStream open;

        @Override
        public void write(int single) throws IOException {
            write(new byte[] {(byte) single}, 0, 1);
        }

        @Override
        public synchronized void write(byte[] bytes, int from, int count) throws IOException {
            if (open == null) {
                Store.makeHome(home);
                Files.createDirectories(file().getParent());
                open = Files.newOutputStream(file(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            }
            open.write(bytes, from, count);
        }

        @Override
        public synchronized void close() throws IOException {
            if (open != null) {
                open.close();
            }
        }
    }
}
