package org.shedboard.term;

import java.io.IOException;
import java.io.InputStream;

/**
 * Input in which an escape byte at the end waits a little for the rest of its sequence, so that an arrow key that comes
 * in two pieces over a slow line is not taken for the escape key and two letters.
 */
final class EscapeGrace extends InputStream {
    private static final int ESCAPE = 27;
    private static final int POLL_MILLISECONDS = 2;

    private final InputStream input;
    private final int milliseconds;
    /** Whether the last byte that was read is an escape. */
    private boolean afterEscape;

    EscapeGrace(InputStream input, int milliseconds) {
        this.input = input;
        this.milliseconds = milliseconds;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        int count = input.read(bytes, offset, Math.min(length, Math.max(1, input.available())));
        afterEscape = count > 0 && bytes[offset + count - 1] == ESCAPE;
        return count;
    }

    @Override
    public int available() throws IOException {
        int count = input.available();
        if (count > 0 || !afterEscape) return count;
        count = awaitMore();
        if (count == 0) afterEscape = false;
        return count;
    }

    private int awaitMore() throws IOException {
        long end = System.nanoTime() + milliseconds * 1_000_000L;
        while (input.available() == 0 && System.nanoTime() < end) {
            try {
                Thread.sleep(POLL_MILLISECONDS);
            } catch (InterruptedException interrupt) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        return input.available();
    }
}
