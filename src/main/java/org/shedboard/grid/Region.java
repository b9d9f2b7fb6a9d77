package org.shedboard.grid;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of the screen, in the screen's own columns and rows. Its arithmetic gives smaller regions that always lie
 * inside it, down to empty ones: a region asked for more than it has gives all it has.
 */
public record Region(int left, int top, int width, int height) {
    public Region {
        width = Math.max(0, width);
        height = Math.max(0, height);
    }

    /** The column just right of it. */
    public int rightEdge() {
        return left + width;
    }

    /** The row just below it. */
    public int bottomEdge() {
        return top + height;
    }

    public boolean isEmpty() {
        return width == 0 || height == 0;
    }

    public boolean contains(int column, int row) {
        return column >= left && column < rightEdge() && row >= top && row < bottomEdge();
    }

    /** What is left after a margin on all four sides. */
    public Region inside(int margin) {
        return inside(margin, margin);
    }

    /** What is left after a margin of columns left and right, and of rows above and below. */
    public Region inside(int columns, int rows) {
        return rightOf(columns).leftOf(columns).below(rows).above(rows);
    }

    /** Its first rows. */
    public Region top(int rows) {
        return new Region(left, top, width, clamp(rows, height));
    }

    /** Its last rows. */
    public Region bottom(int rows) {
        int taken = clamp(rows, height);
        return new Region(left, bottomEdge() - taken, width, taken);
    }

    /** Its first columns. */
    public Region left(int columns) {
        return new Region(left, top, clamp(columns, width), height);
    }

    /** Its last columns. */
    public Region right(int columns) {
        int taken = clamp(columns, width);
        return new Region(rightEdge() - taken, top, taken, height);
    }

    /** All but its first rows. */
    public Region below(int rows) {
        return bottom(height - clamp(rows, height));
    }

    /** All but its last rows. */
    public Region above(int rows) {
        return top(height - clamp(rows, height));
    }

    /** All but its first columns. */
    public Region rightOf(int columns) {
        return right(width - clamp(columns, width));
    }

    /** All but its last columns. */
    public Region leftOf(int columns) {
        return left(width - clamp(columns, width));
    }

    /** One of its rows, counted from its top; an empty region when it has no such row. */
    public Region row(int index) {
        return index < 0 ? top(0) : below(index).top(1);
    }

    /** A region of that size in its middle, or as much of it as there is room for. */
    public Region centred(int columns, int rows) {
        int wide = clamp(columns, width);
        int high = clamp(rows, height);
        return new Region(left + (width - wide) / 2, top + (height - high) / 2, wide, high);
    }

    /** What both have. */
    public Region intersect(Region other) {
        int from = Math.max(left, other.left);
        int above = Math.max(top, other.top);
        int to = Math.min(rightEdge(), other.rightEdge());
        int below = Math.min(bottomEdge(), other.bottomEdge());
        return new Region(from, above, to - from, below - above);
    }

    /**
     * Regions one below the other with these heights, where 0 means an equal share of the rows that the others leave.
     * When there are too few rows, the last ones go short.
     */
    public List<Region> splitRows(int... heights) {
        List<Region> parts = new ArrayList<>();
        Region rest = this;
        for (int rows : shares(height, heights)) {
            parts.add(rest.top(rows));
            rest = rest.below(rows);
        }
        return List.copyOf(parts);
    }

    /** Regions side by side with these widths, where 0 means an equal share of the columns that the others leave. */
    public List<Region> splitColumns(int... widths) {
        List<Region> parts = new ArrayList<>();
        Region rest = this;
        for (int columns : shares(width, widths)) {
            parts.add(rest.left(columns));
            rest = rest.rightOf(columns);
        }
        return List.copyOf(parts);
    }

    /** What each one gets of a total; the odd ones of the shared rest go to the first that share. */
    static int[] shares(int total, int... wanted) {
        int fixed = 0;
        int sharing = 0;
        for (int one : wanted) {
            fixed += Math.max(0, one);
            sharing += one <= 0 ? 1 : 0;
        }
        int rest = Math.max(0, total - fixed);
        int[] given = new int[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            given[i] = wanted[i];
            if (wanted[i] <= 0) {
                given[i] = (rest + sharing - 1) / sharing;
                rest -= given[i];
                sharing--;
            }
        }
        return given;
    }

    private static int clamp(int value, int most) {
        return Math.max(0, Math.min(value, most));
    }
}
