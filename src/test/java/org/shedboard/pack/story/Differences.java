package org.shedboard.pack.story;

import java.util.List;
import java.util.OptionalInt;

/** Differences of plans, for tests of those who show them. All numbers are invented. */
public final class Differences {
    private Differences() {}

    /** Two jobs are finished earlier, one of them by its promise now, and one is later. */
    public static Difference of(String promised, String earlier, String later) {
        return new Difference(
                List.of(
                        changed(promised, 660, 600, Difference.Promise.NOW_KEPT, 4800),
                        changed(earlier, 720, 690, Difference.Promise.NONE, 900),
                        changed(later, 600, 640, Difference.Promise.STILL_KEPT, -1200)),
                0);
    }

    private static Difference.Changed changed(
            String job, int before, int after, Difference.Promise promise, long gain) {
        return new Difference.Changed(job, List.of(), OptionalInt.of(before), OptionalInt.of(after), promise, gain);
    }
}
