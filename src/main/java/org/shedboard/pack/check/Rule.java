package org.shedboard.pack.check;

/** The rules of the day file, by its numbers; 0 stands for what the file says outside the numbered list. */
public enum Rule {
    /** Every task of a placed job is listed once, every other job once as unplaced, and nothing else. */
    LISTED(0),
    /** The plan's cost is what it really costs. */
    COST(0),
    /** Nobody does a task that names in notBy another they do. */
    NOT_BY(0),
    CREW(1),
    HOURS(2),
    COMPLETION(3),
    EARLIEST(4),
    PLACE(5),
    STAY_ORDER(6),
    KEPT(7),
    HORIZON(8);

    private final int number;

    Rule(int number) {
        this.number = number;
    }

    public int number() {
        return number;
    }
}
