package org.shedboard.term;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.shedboard.grid.Size;

/** The program's own terminal with nothing behind it but a counter of the bytes that it sends. */
public final class CountedTerminal extends BoardTerminal {
    private final Size size;
    private final Counter counter;

    private CountedTerminal(Size size, Counter counter) throws IOException {
        super(InputStream.nullInputStream(), counter, true);
        this.size = size;
        this.counter = counter;
    }

    /** A terminal of that size, on which nothing is ever typed. */
    public static CountedTerminal of(Size size) throws IOException {
        return new CountedTerminal(size, new Counter());
    }

    /** How many bytes were sent since this was asked last. */
    public long sent() {
        long sent = counter.count;
        counter.count = 0;
        return sent;
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

    private static final class Counter extends OutputStream {
        private long count;

        @Override
        public void write(int single) {
            count++;
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            count += length;
        }
    }
}
