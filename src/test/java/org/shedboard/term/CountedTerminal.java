package org.shedboard.term;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.shedboard.grid.Size;

/** The program's own terminal with nothing behind it but a counter of the bytes that it sends, and what is typed into it. */
public final class CountedTerminal extends BoardTerminal {
    private final Size size;
    private final Counter counter;

    private CountedTerminal(Size size, InputStream typed, Counter counter) throws IOException {
        super(typed, counter, true);
        this.size = size;
        this.counter = counter;
    }

    /** A terminal of that size, on which nothing is ever typed. */
    public static CountedTerminal of(Size size) throws IOException {
        return of(size, InputStream.nullInputStream());
    }

    /** A terminal of that size, on which these bytes are typed. */
    public static CountedTerminal of(Size size, InputStream typed) throws IOException {
        return new CountedTerminal(size, typed, new Counter());
    }

    /** How many bytes were sent since this was asked last. */
    public long sent() {
        return counter.taken();
    }

    /** When the last byte was sent, by {@link System#nanoTime}. */
    public long lastSentAt() {
        return counter.lastAt();
    }

    /** There is no device to set. */
    @Override
    protected String runSTTYCommand(String... parameters) {
        return "";
    }

    /** Runs while the superclass is being made too, before there is a size. */
    @Override
    protected TerminalSize findTerminalSize() {
        return size == null ? new TerminalSize(80, 24) : new TerminalSize(size.columns(), size.rows());
    }

    /** Written by whoever paints, read by whoever measures. */
    private static final class Counter extends OutputStream {
        private long count;
        private long lastAt = System.nanoTime();

        @Override
        public void write(int single) {
            add(1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            add(length);
        }

        private synchronized void add(int length) {
            count += length;
            lastAt = System.nanoTime();
        }

        synchronized long taken() {
            long taken = count;
            count = 0;
            return taken;
        }

        synchronized long lastAt() {
            return lastAt;
        }
    }
}
