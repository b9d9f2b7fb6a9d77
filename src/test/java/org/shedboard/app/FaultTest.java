package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultTest {
    @TempDir
    Path home;

    private static final InputStream BROKEN = new InputStream() {
        @Override
        public int read() {
            throw new IllegalStateException("the pipe is bewitched");
        }
    };

    @Test
    void a_fault_of_the_program_is_one_sentence_and_a_trace_in_the_log() throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                BROKEN,
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Map.of(),
                home,
                false,
                Optional.empty(),
                false,
                1);
        int status = Shedboard.run(List.of("pack", "-", "--home", home.toString()), around);
        assertEquals(1, status);
        Path log = home.resolve("log").resolve("shedboard.log");
        assertEquals(
                "The program has failed; what was saved is safe. What happened is written down in " + log + ".\n",
                err.toString(StandardCharsets.UTF_8));
        String written = Files.readString(log);
        assertTrue(
                written.contains("java.lang.IllegalStateException (a message of 21 characters that is not kept)"),
                written);
        assertFalse(written.contains("bewitched"), written);
        assertTrue(written.contains("\tat org.shedboard.app."), written);
    }
}
