package org.shedboard.pack.lab;

import java.util.List;

/**
 * How the plans of one day, one from each seed, stand to the best one kept of it.
 *
 * @param missing so many of the plans miss a promise that the best keeps
 */
record Standing(String day, Score best, List<Score> found, int missing) {
    Standing {
        found = List.copyOf(found);
    }

    double percentOver() {
        return Score.median(found).percentOver(best);
    }

    boolean isWithin(double percent) {
        return percentOver() <= percent;
    }
}
