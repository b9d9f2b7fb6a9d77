package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Span;

/**
 * A run of starting minutes from which a person's work on a task is the same shape: it is over {@code elapsed} minutes later, and its
 * overtime changes by {@code overtimeStep} a minute.
 *
 * @param from first starting minute
 * @param to last starting minute
 * @param overtime overtime minutes of the work that starts at {@code from}
 * @param breaks wall minutes that are not working minutes before all these starts
 */
record Piece(int from, int to, int elapsed, int overtime, int overtimeStep, int breaks) {

    int overtimeAt(int start) {
        return overtime + overtimeStep * (start - from);
    }

    int leastOvertime() {
        return Math.min(overtime, overtimeAt(to));
    }

    boolean holds(int start) {
        return from <= start && start <= to;
    }

    /** The pieces of the starts from {@code earliest} on with an end by {@code latestEnd}, no minute of them in {@code closed}. */
    static List<Piece> of(WorkCalendar calendar, int minutes, int earliest, int latestEnd, List<Span> closed) {
        List<Piece> pieces = new ArrayList<>();
        Piece open = null;
        for (int start = earliest; start < latestEnd; start++) {
            Piece one = at(calendar, minutes, start, latestEnd, closed);
            Piece longer = open == null || one == null ? null : open.with(one);
            if (longer == null && open != null) {
                pieces.add(open);
            }
            open = longer == null ? one : longer;
        }
        if (open != null) {
            pieces.add(open);
        }
        return pieces;
    }

    private static Piece at(WorkCalendar calendar, int minutes, int start, int latestEnd, List<Span> closed) {
        int end = calendar.isIn(start) ? calendar.end(start, minutes) : -1;
        if (end < 0 || end > latestEnd || calendar.touches(start, end, closed)) {
            return null;
        }
        int breaks = start - calendar.workedBefore(start);
        return new Piece(start, start, end - start, calendar.overtime(start, end), 0, breaks);
    }

    /** This piece and the next minute's, or null when they differ in shape. */
    private Piece with(Piece next) {
        int step = next.overtime - overtimeAt(to);
        boolean sameShape = next.from == to + 1 && next.elapsed == elapsed && next.breaks == breaks;
        boolean sameStep = from == to || step == overtimeStep;
        return sameShape && sameStep ? new Piece(from, next.to, elapsed, overtime, step, breaks) : null;
    }
}
