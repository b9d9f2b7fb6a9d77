package org.shedboard.app;

import java.util.function.Supplier;
import org.shedboard.grid.TextWidth;

/** One line on the terminal that is written over while something takes long, and gone at the end; nothing where nobody watches. */
final class Progress {
    /** Five times a second. */
    private static final long BETWEEN_NANOSECONDS = 200_000_000;

    /** A line that wraps cannot be written over. */
    private static final int WIDTH = 79;

    private final Voice voice;
    private boolean watched;
    private boolean isShown;
    private final long betweenNanoseconds;
    private long lastNanoseconds = System.nanoTime();

    Progress(Voice voice, boolean watched) {
        this(voice, watched, BETWEEN_NANOSECONDS);
    }

    Progress(Voice voice, boolean watched, long betweenNanoseconds) {
        this.voice = voice;
        this.watched = watched;
        this.betweenNanoseconds = betweenNanoseconds;
    }

    /** Shows how far it is, unless that was shown a moment ago. */
    synchronized void show(Supplier<String> line) {
        if (watched && System.nanoTime() - lastNanoseconds >= betweenNanoseconds) {
            lastNanoseconds = System.nanoTime();
            write(line.get());
            isShown = true;
        }
    }

    /** Makes room for something that is to stay. */
    synchronized void wipe() {
        if (isShown) {
            write("");
            isShown = false;
        }
    }

    /** Wipes, and shows nothing any more. */
    synchronized void end() {
        wipe();
        watched = false;
    }

    private void write(String line) {
        String cut = TextWidth.clip(line, WIDTH);
        voice.writeOver(cut + " ".repeat(WIDTH - TextWidth.of(cut)));
    }
}
