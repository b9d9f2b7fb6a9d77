package org.shedboard.screen;

import org.shedboard.grid.Region;

/**
 * Minutes of the day laid along a run of columns.
 *
 * @param columns where the axis lies, on the whole screen
 * @param from minute at the left edge of the first column
 * @param minutesPerColumn how many minutes one column stands for
 */
record TimeAxis(Region columns, int from, int minutesPerColumn) {
    private static final int[] STEPS = {1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 40, 60, 90, 120, 180, 240, 360};

    /** An axis from one minute that reaches another, in the finest steps that do. */
    static TimeAxis over(Region columns, int from, int to) {
        int step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            if (STEPS[i] * columns.width() >= to - from) {
                step = STEPS[i];
            }
        }
        return new TimeAxis(columns, from, step);
    }

    int to() {
        return from + columns.width() * minutesPerColumn;
    }

    /** Column of a minute, counted from the axis's left edge; beyond its ends for minutes that are not on it. */
    int columnOf(int minute) {
        return Math.floorDiv(minute - from, minutesPerColumn);
    }

    int minuteAt(int column) {
        return from + column * minutesPerColumn;
    }

    /** The part of one row between two minutes; at least one column wide where any of it is on the axis. */
    Region between(Region row, int begin, int end) {
        int left = Math.max(0, columnOf(begin));
        int right = Math.min(columns.width(), Math.max(columnOf(begin) + 1, columnOf(end + minutesPerColumn - 1)));
        return new Region(columns.left() + left, row.top(), Math.max(0, right - left), 1);
    }

    boolean shows(int minute) {
        return minute >= from && minute < to();
    }

    Region columnAt(Region row, int minute) {
        int column = columnOf(minute);
        boolean shown = column >= 0 && column < columns.width();
        return new Region(columns.left() + Math.max(0, column), row.top(), shown ? 1 : 0, 1);
    }

    /** The columns of the axis in one row. */
    Region columns(Region row) {
        return new Region(columns.left(), row.top(), columns.width(), 1);
    }
}
