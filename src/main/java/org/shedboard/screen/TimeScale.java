package org.shedboard.screen;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.BitSet;
import java.util.List;
import org.shedboard.day.Day;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.When;
import org.shedboard.words.Words;

/**
 * What stands over a time axis: the hours, the date at each midnight, and where now is.
 *
 * @param date the day whose midnight is minute 0
 */
record TimeScale(TimeAxis axis, LocalDate date, ZoneId zone, int now) {
    /** The date, the fullest that fits. */
    private static final List<When> DATES = List.of(When.WEEKDAY_DATE, When.WEEKDAY_NUMBER, When.WEEKDAY);

    private static final int HOUR_MINUTES = 60;
    private static final int DAY_MINUTES = 24 * HOUR_MINUTES;
    /** From one label to the next, in minutes that divide a day, the finest first. */
    private static final int[] STEPS = {15, 30, 60, 120, 180, 360, DAY_MINUTES};
    /** Columns that a label and what parts it from the next one take; parts of an hour stand only where there is plenty. */
    private static final int HOUR_COLUMNS = 3;

    private static final int PART_COLUMNS = 10;
    /** No date is longer. */
    private static final int DATE_COLUMNS = 12;

    static TimeScale of(TimeAxis axis, Day day, int now) {
        return new TimeScale(axis, day.date(), day.zone(), now);
    }

    /** The hours and dates, with a pointer at now where that is shown. */
    void draw(Canvas canvas, Region row) {
        labels(canvas, axis.columns(row));
        canvas.fill(axis.columnAt(row, now), Glyphs.DOWN, Style.NOW);
    }

    /** The same; where now is not shown, it is said on which side it lies. */
    void drawWithNow(Canvas canvas, Region row) {
        labels(canvas, aside(canvas, axis.columns(row)));
        canvas.fill(axis.columnAt(row, now), Glyphs.DOWN, Style.NOW);
    }

    /** A line down the rows at each midnight. */
    void drawMidnights(Canvas canvas, Region row) {
        for (LocalDate each = firstDate().plusDays(1); midnight(each) < axis.to(); each = each.plusDays(1)) {
            canvas.fill(axis.columnAt(row, midnight(each)), Glyphs.DASHED, Style.FRAME);
        }
    }

    /** What is left of the row for labels. */
    private Region aside(Canvas canvas, Region row) {
        if (now < axis.from()) {
            return canvas.text(row, Words.say("axis.now_before"), Style.NOW).rightOf(1);
        }
        return axis.shows(now)
                ? row
                : canvas.textRight(row, Words.say("axis.now_after"), Style.NOW).leftOf(1);
    }

    private void labels(Canvas canvas, Region room) {
        BitSet taken = new BitSet();
        // the last column before the room is the blank behind what stands there
        taken.set(0, Math.max(0, room.left() - axis.columns().left() - 1));
        taken.set(room.rightEdge() - axis.columns().left(), axis.columns().width() + DATE_COLUMNS);
        dates(canvas, room, taken);
        hours(canvas, room, taken);
    }

    /** At the left edge only where it is not plain which day it is. */
    private void dates(Canvas canvas, Region room, BitSet taken) {
        LocalDate first = firstDate();
        if (!first.equals(date)) {
            date(canvas, room, taken, first, room.left() - axis.columns().left());
        }
        for (LocalDate each = first.plusDays(1); midnight(each) < axis.to(); each = each.plusDays(1)) {
            date(canvas, room, taken, each, axis.columnOf(midnight(each)));
        }
        if (midnight(first) == axis.from() && first.equals(date)) {
            date(canvas, room, taken, first, 0);
        }
    }

    private void date(Canvas canvas, Region row, BitSet taken, LocalDate each, int column) {
        int room = axis.columnOf(midnight(each.plusDays(1))) - column;
        for (When format : DATES) {
            String text = format.say(each);
            // the month is left away before the hours are
            int most = format == DATES.get(0) ? room / 2 : room - 1;
            if (TextWidth.of(text) <= most && isFree(taken, column, text)) {
                put(canvas, row, taken, column, text, Style.STRONG);
                return;
            }
        }
    }

    private void hours(Canvas canvas, Region room, BitSet taken) {
        for (LocalDate each = firstDate(); midnight(each) < axis.to(); each = each.plusDays(1)) {
            for (int minute = 0; minute < DAY_MINUTES; minute += step()) {
                LocalTime time = LocalTime.ofSecondOfDay(60L * minute);
                String text = (minute % HOUR_MINUTES == 0 ? When.HOUR : When.PART).say(time);
                int column =
                        axis.columnOf(minuteOf(each.atTime(time).atZone(zone).toInstant()));
                if (column >= 0 && isFree(taken, column, text)) {
                    put(canvas, room, taken, column, text, Style.QUIET);
                }
            }
        }
    }

    private void put(Canvas canvas, Region room, BitSet taken, int column, String text, Style style) {
        taken.set(column, column + TextWidth.of(text));
        canvas.text(new Region(axis.columns().left() + column, room.top(), TextWidth.of(text), 1), text, style);
    }

    /** Whether nothing stands there or ends just before, and now would not cut it in two. */
    private boolean isFree(BitSet taken, int column, String text) {
        int end = column + TextWidth.of(text);
        int next = taken.nextSetBit(Math.max(0, column - 1));
        boolean isNow = axis.shows(now) && axis.columnOf(now) >= column && axis.columnOf(now) < end;
        return !isNow && (next < 0 || next >= end);
    }

    /** The finest step whose labels do not run into each other; a whole day, for which its date stands, where none is. */
    private int step() {
        for (int step : STEPS) {
            int columns = step < HOUR_MINUTES ? PART_COLUMNS : HOUR_COLUMNS;
            if (step >= columns * axis.minutesPerColumn()) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    private LocalDate firstDate() {
        return LocalDate.ofInstant(origin().plusSeconds(60L * axis.from()), zone);
    }

    private int midnight(LocalDate each) {
        return minuteOf(each.atStartOfDay(zone).toInstant());
    }

    private int minuteOf(Instant at) {
        return (int) Duration.between(origin(), at).toMinutes();
    }

    private Instant origin() {
        return date.atStartOfDay(zone).toInstant();
    }
}
