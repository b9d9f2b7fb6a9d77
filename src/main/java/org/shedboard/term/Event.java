package org.shedboard.term;

import org.shedboard.board.Key;
import org.shedboard.grid.Size;

/** What a terminal tells the program. */
public sealed interface Event {
    /** A key was pressed. */
    record Pressed(Key key) implements Event {}

    /** The finger or the mouse's first button went down on a cell, counted from 0. */
    record Pointed(int column, int row) implements Event {}

    /** The window has another size now. */
    record Resized(Size size) implements Event {}

    /** The program was stopped and goes on; what the window shows is no longer ours. */
    record Continued() implements Event {}

    /** The window is closed or the line is cut: no key will come any more. */
    record Gone() implements Event {}
}
