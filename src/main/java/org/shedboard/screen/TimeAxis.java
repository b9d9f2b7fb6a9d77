package org.shedboard.screen;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;

/**
 * Minutes of the day laid along a run of columns.
 *
 * @param columns where the axis lies, on the whole screen
 * @param from minute at the left edge of the first column
 * @param minutesPerColumn how many minutes one column stands for
 */
record TimeAxis(Region columns, int from, int minutesPerColumn) {
    private static final int[] STEPS = {1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30};

    /** What a foreman plans for: the rest of a working day. */
    private static final int AT_LEAST = 8 * 60;

    private static final int HALF_HOUR = 30;
    private static final int HOUR_DIGITS = 2;

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH", Locale.ROOT);

    /** An axis that begins a little before now, at night a little before the first shift, and shows at least eight hours. */
    static TimeAxis around(Region columns, int now, int firstShift) {
        int step = STEPS[STEPS.length - 1];
        for (int candidate = STEPS.length - 1; candidate >= 0; candidate--) {
            if (STEPS[candidate] * columns.width() >= AT_LEAST) {
                step = STEPS[candidate];
            }
        }
        int from = Math.floorDiv(Math.max(now, firstShift) - HALF_HOUR, HALF_HOUR) * HALF_HOUR;
        return new TimeAxis(columns, from, step);
    }

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

    Region columnAt(Region row, int minute) {
        int column = columnOf(minute);
        boolean shown = column >= 0 && column < columns.width();
        return new Region(columns.left() + Math.max(0, column), row.top(), shown ? 1 : 0, 1);
    }

    /** The hours over the axis, with a pointer at now. */
    void drawHours(Canvas canvas, Region row, int now) {
        int hour = Math.floorDiv(from + 59, 60) * 60;
        while (hour < to()) {
            Region at = new Region(columns.left() + columnOf(hour), row.top(), 5, 1).intersect(columns(row));
            if (at.width() >= HOUR_DIGITS) {
                canvas.text(at, HOUR.format(LocalTime.of(Math.floorMod(hour / 60, 24), 0)), Style.QUIET);
            }
            hour += 60;
        }
        canvas.fill(columnAt(row, now), Glyphs.DOWN, Style.NOW);
    }

    private Region columns(Region row) {
        return new Region(columns.left(), row.top(), columns.width(), 1);
    }
}
