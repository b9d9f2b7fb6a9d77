package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Style;

/**
 * Cells side by side that are drawn as one text: of one style, read in one direction, and either all narrow or one wide glyph. So each
 * begins in its own cell, whatever a viewer makes of the texts before it.
 *
 * @param from the column of its first cell
 * @param until the column after its last
 * @param text one glyph for each cell, or one for both cells of a wide one
 */
record ScreenRun(int row, int from, int until, Style style, String text) {
    static List<ScreenRun> of(Grid grid) {
        List<ScreenRun> runs = new ArrayList<>();
        for (int row = 0; row < grid.size().rows(); row++) {
            int from = 0;
            while (from < grid.size().columns()) {
                int until = endOf(grid, row, from);
                runs.add(new ScreenRun(row, from, until, grid.style(from, row), textOf(grid, row, from, until)));
                from = until;
            }
        }
        return List.copyOf(runs);
    }

    private static int endOf(Grid grid, int row, int from) {
        int columns = grid.size().columns();
        int until = from + 1;
        if (isWide(grid, from, row)) return until + 1;
        while (until < columns
                && grid.style(until, row) == grid.style(from, row)
                && !isWide(grid, until, row)
                && isLeftwards(grid, until, row) == isLeftwards(grid, from, row)) {
            until++;
        }
        return until;
    }

    private static boolean isWide(Grid grid, int column, int row) {
        return column + 1 < grid.size().columns() && grid.isTail(column + 1, row);
    }

    private static boolean isLeftwards(Grid grid, int column, int row) {
        byte direction = Character.getDirectionality(grid.glyph(column, row));
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    private static String textOf(Grid grid, int row, int from, int until) {
        StringBuilder text = new StringBuilder();
        for (int column = from; column < until; column++) {
            if (!grid.isTail(column, row)) text.append(grid.glyph(column, row));
        }
        return text.toString();
    }

    boolean isBlank() {
        return text.isBlank();
    }

    /** Without the blanks around its text, which need no drawing. */
    ScreenRun trimmed() {
        int before = text.length() - text.stripLeading().length();
        int after = text.length() - text.stripTrailing().length();
        return new ScreenRun(row, from + before, until - after, style, text.strip());
    }

    int columns() {
        return until - from;
    }
}
