package org.shedboard.grid;

/** How large a screen is; never negative. */
public record Size(int columns, int rows) {
    public Size {
        columns = Math.max(0, columns);
        rows = Math.max(0, rows);
    }

    /** Whether something of the other size can be drawn here whole. */
    public boolean fits(Size other) {
        return other.columns <= columns && other.rows <= rows;
    }

    /** All of it, as a region. */
    public Region region() {
        return new Region(0, 0, columns, rows);
    }
}
