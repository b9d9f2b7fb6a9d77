package org.shedboard.board;

import java.util.Optional;

/** How much of time is seen at once on the axis of the places and of the crew. */
public enum Zoom {
    TWO_HOURS(2 * 60, 15, 15, 30),
    FOUR_HOURS(4 * 60, 30, 30, 60),
    /** What a foreman plans for: the rest of a working day. */
    WORKDAY(8 * 60, 30, 30, 2 * 60),
    DAY(24 * 60, 60, 60, 6 * 60),
    TWO_DAYS(2 * 24 * 60, 0, 24 * 60, 24 * 60),
    FIVE_DAYS(5 * 24 * 60, 0, 24 * 60, 24 * 60);

    private final int minutes;
    private final int lead;
    private final int grid;
    private final int stride;

    /**
     * @param lead minutes that are seen before the present one
     * @param grid the axis begins on a multiple of so many minutes, so that it does not creep
     * @param stride minutes that one key goes earlier or later
     */
    Zoom(int minutes, int lead, int grid, int stride) {
        this.minutes = minutes;
        this.lead = lead;
        this.grid = grid;
        this.stride = stride;
    }

    /** Minutes that are seen at least. */
    public int minutes() {
        return minutes;
    }

    int stride() {
        return stride;
    }

    /** Where an axis begins that has this minute near its start. */
    int beginFor(int minute) {
        return onGrid(minute - lead);
    }

    int onGrid(int minute) {
        return Math.floorDiv(minute, grid) * grid;
    }

    /** So many steps nearer; further where that is negative. Empty beyond the last one. */
    Optional<Zoom> closer(int steps) {
        int index = ordinal() - steps;
        return index < 0 || index >= values().length ? Optional.empty() : Optional.of(values()[index]);
    }
}
