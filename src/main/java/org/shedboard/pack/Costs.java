package org.shedboard.pack;

/** What each kind of trouble in a plan costs, in whole points. */
public record Costs(long late, long overtime, long flow, long handover, long makespan, long moved, long swapped) {
    /** The weights of a file that names none. */
    public static final Costs STANDARD = new Costs(100, 5, 1, 10, 0, 0, 0);

    /** Only the latest finish counts, as in the published shop problems. */
    public static final Costs MAKESPAN_ONLY = new Costs(0, 0, 0, 0, 1, 0, 0);

    public Costs withStability(long movedPoints, long swappedPoints) {
        return new Costs(late, overtime, flow, handover, makespan, movedPoints, swappedPoints);
    }
}
