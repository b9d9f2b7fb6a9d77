package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class EscapeGraceTest {
    private static final int PATIENT_MILLISECONDS = 10_000;

    @Test
    void an_escape_waits_for_the_rest_of_its_sequence() throws IOException {
        PipedInputStream pipe = new PipedInputStream();
        try (PipedOutputStream keyboard = new PipedOutputStream(pipe);
                EscapeGrace input = new EscapeGrace(pipe, PATIENT_MILLISECONDS)) {
            keyboard.write(27);
            assertEquals(27, input.read());
            CompletableFuture.delayedExecutor(20, TimeUnit.MILLISECONDS).execute(() -> write(keyboard));
            assertEquals(1, input.available());
        }
    }

    @Test
    void an_escape_alone_does_not_wait_for_ever() throws IOException {
        PipedInputStream pipe = new PipedInputStream();
        try (PipedOutputStream keyboard = new PipedOutputStream(pipe);
                EscapeGrace input = new EscapeGrace(pipe, 5)) {
            keyboard.write(27);
            assertEquals(27, input.read());
            assertEquals(0, input.available());
        }
    }

    @Test
    void other_keys_do_not_wait_at_all() throws IOException {
        PipedInputStream pipe = new PipedInputStream();
        try (PipedOutputStream keyboard = new PipedOutputStream(pipe);
                EscapeGrace input = new EscapeGrace(pipe, PATIENT_MILLISECONDS)) {
            keyboard.write('x');
            assertEquals('x', input.read());
            long before = System.nanoTime();
            assertEquals(0, input.available());
            assertTrue(System.nanoTime() - before < TimeUnit.MILLISECONDS.toNanos(PATIENT_MILLISECONDS) / 2);
        }
    }

    private static void write(PipedOutputStream keyboard) {
        try {
            keyboard.write('[');
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
