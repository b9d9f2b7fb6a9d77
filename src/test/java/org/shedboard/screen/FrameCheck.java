package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.shedboard.board.Board;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.grid.TextWidth;

/** What has to hold of every screen that is drawn. */
final class FrameCheck {
    private final Board board;
    private final Grid grid;
    private final Size size;

    FrameCheck(Board board, Grid grid, Size size) {
        this.board = board;
        this.grid = grid;
        this.size = size;
    }

    void all() {
        assertEquals(size, grid.size());
        grid.cursor().ifPresent(cell -> assertTrue(size.region().contains(cell.column(), cell.row()), cell::toString));
        for (int row = 0; row < size.rows(); row++) {
            for (int column = 0; column < size.columns(); column++) {
                cell(column, row);
            }
        }
        new TotalsCheck(board, grid).all();
    }

    /** Every glyph is one that a cell can hold, and a wide one has both of its cells. */
    private void cell(int column, int row) {
        int width = TextWidth.of(grid.glyph(column, row));
        boolean isSound = grid.isTail(column, row)
                ? column > 0 && TextWidth.of(grid.glyph(column - 1, row)) == 2
                : width == 1 || width == 2 && column + 1 < size.columns() && grid.isTail(column + 1, row);
        assertTrue(isSound, () -> "U+%04x at %d,%d".formatted((int) grid.glyph(column, row), column, row));
    }
}
