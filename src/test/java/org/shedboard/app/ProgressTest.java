package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final String BLANK = " ".repeat(79);

    private final ByteArrayOutputStream written = new ByteArrayOutputStream();

    private Progress progress(boolean watched) {
        PrintStream err = new PrintStream(written, true, StandardCharsets.UTF_8);
        return new Progress(new Voice(System.out, err, false), watched, 0);
    }

    private String shown() {
        return written.toString(StandardCharsets.UTF_8);
    }

    private static String filled(String line) {
        return line + " ".repeat(79 - line.length());
    }

    @Test
    void each_line_covers_the_one_before_and_nothing_is_left_of_the_last() {
        Progress progress = progress(true);
        progress.show(() -> "a long line");
        progress.show(() -> "short");
        progress.end();
        progress.show(() -> "late");
        assertEquals("\r" + filled("a long line") + "\r\r" + filled("short") + "\r\r" + BLANK + "\r", shown());
    }

    @Test
    void a_line_never_wraps_and_never_steers_the_terminal() {
        progress(true).show(() -> "\u001b[2J" + "x".repeat(100));
        assertEquals("\r·[2J" + "x".repeat(74) + "…\r", shown());
    }

    @Test
    void where_nobody_watches_nothing_is_written() {
        Progress progress = progress(false);
        progress.show(() -> "a line");
        progress.end();
        assertEquals("", shown());
    }

    @Test
    void nothing_is_wiped_where_nothing_was_shown() {
        progress(true).end();
        assertEquals("", shown());
    }

    @Test
    void what_was_shown_a_moment_ago_stays_a_moment() {
        PrintStream err = new PrintStream(written, true, StandardCharsets.UTF_8);
        Progress progress = new Progress(new Voice(System.out, err, false), true, Long.MAX_VALUE);
        progress.show(() -> "never");
        assertEquals("", shown());
    }
}
