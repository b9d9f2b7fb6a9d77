package org.shedboard.tally;

import java.util.List;
import org.shedboard.shop.Visit;

/**
 * A visit that took longer than was estimated when it came.
 *
 * @param estimated catalogue minutes of what was wanted then
 * @param worked minutes worked on all of it
 * @param causes what the minutes went into, the largest first
 */
public record Overrun(Visit visit, int estimated, int worked, List<Cause> causes) {
    /** Why, and how many minutes of it. */
    public record Cause(Kind kind, int minutes) {
        /** The sorts of cause; the bundle has their sentence under {@code cause.NAME}. */
        public enum Kind {
            /** Cleaning beyond its estimate. */
            MUD,
            /** Cleaning beyond its estimate on a machine that came muddier or cleaner than it was booked. */
            MUD_CHANGED,
            /** Work on lines that were added on the way. */
            ADD_ON,
            /** Work on lines on our own account. */
            REWORK,
            /** What is left: the work wanted took longer. */
            WORK,
            /** Not worked, but held: wall-clock minutes. */
            WAITING
        }
    }

    public Overrun {
        causes = List.copyOf(causes);
    }

    public int over() {
        return worked - estimated;
    }
}
