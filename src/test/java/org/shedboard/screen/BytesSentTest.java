package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.grid.Size;

/**
 * What the board costs on a slow line. The bounds are ours: what was counted, and about half as much again. 80 by 24 takes 4,654 bytes for all
 * of the screen, 241 for a cursor and 350 for a minute; 200 by 60 takes 16,487, 479 and 557.
 */
class BytesSentTest {
    /** Bytes a cell: most are one character in the colours of the one before. */
    private static final int MOST_WHOLE = 4;

    /** Bytes a column of the window, for a row or two that change and the mark of the present. */
    private static final int MOST_A_COLUMN = 7;

    static Stream<Size> sizes() {
        return BytesSent.SIZES.stream();
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void a_cursor_and_an_idle_minute_cost_a_small_part_of_the_screen(Size size) throws IOException {
        BytesSent sent = BytesSent.at(size);
        int cells = size.columns() * size.rows();
        assertTrue(sent.whole() > cells, () -> "all of the screen, and no cell left out: " + sent);
        assertTrue(sent.whole() < MOST_WHOLE * cells, () -> "all of the screen: " + sent);
        assertTrue(sent.cursor() > 0 && sent.cursor() < MOST_A_COLUMN * size.columns(), () -> "a cursor: " + sent);
        assertTrue(sent.minute() > 0 && sent.minute() < MOST_A_COLUMN * size.columns(), () -> "a minute: " + sent);
    }
}
