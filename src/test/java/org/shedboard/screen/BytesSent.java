package org.shedboard.screen;

import java.io.IOException;
import java.util.List;
import org.shedboard.board.Key;
import org.shedboard.grid.Size;
import org.shedboard.look.Scheme;
import org.shedboard.term.CountedTerminal;
import org.shedboard.term.Display;
import org.shedboard.term.Palette;

/**
 * How many bytes the board of the demonstration sends to a terminal of 256 colours: for all of the screen, for a cursor that moves by a
 * row, and for a minute in which nothing but the time changes. The same numbers come at each run.
 *
 * @param minute the mean of ten, since the mark of the present moves only every few of them
 */
record BytesSent(Size size, long whole, long cursor, long minute) {
    static final List<Size> SIZES = List.of(new Size(80, 24), new Size(120, 36), new Size(200, 60));

    private static final int MINUTES = 10;

    /** Prints one line a size. */
    public static void main(String[] arguments) throws IOException {
        System.out.println("columns rows whole cursor minute");
        for (Size size : SIZES) {
            BytesSent sent = at(size);
            System.out.printf(
                    "%d %d %d %d %d%n", size.columns(), size.rows(), sent.whole(), sent.cursor(), sent.minute());
        }
    }

    static BytesSent at(Size size) throws IOException {
        CountedTerminal terminal = CountedTerminal.of(size);
        try (Display display = new Display(terminal, Palette.fixed(Scheme.DARK))) {
            Rehearsal rehearsal = Rehearsal.atTheDemonstration();
            display.show(rehearsal.drawn(size));
            terminal.sent();
            display.repaint();
            display.show(rehearsal.drawn(size));
            long whole = terminal.sent();
            display.show(rehearsal.press(Key.DOWN).drawn(size));
            long cursor = terminal.sent();
            for (int minute = 0; minute < MINUTES; minute++) {
                display.show(rehearsal.later(1).drawn(size));
            }
            return new BytesSent(size, whole, cursor, terminal.sent() / MINUTES);
        }
    }
}
