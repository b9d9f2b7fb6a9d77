package org.shedboard.shop;

import java.time.Instant;

/**
 * How a machine came in, or is expected to.
 *
 * @param arrives when it came; for a booking, when it is expected
 * @param note what the owner said, as typed
 * @param washDownFirst whether it is washed down, and that is signed, before it comes into any bay
 */
public record Intake(Instant arrives, Mud mud, Depth depth, Condition condition, String note, boolean washDownFirst) {
    /** One that comes in as it is. */
    public Intake(Instant arrives, Mud mud, Depth depth, Condition condition, String note) {
        this(arrives, mud, depth, condition, note, false);
    }

    public Intake withWashDownFirst(boolean isFirst) {
        return new Intake(arrives, mud, depth, condition, note, isFirst);
    }

    public Intake withArrives(Instant at) {
        return new Intake(at, mud, depth, condition, note, washDownFirst);
    }

    public Intake withMud(Mud grade) {
        return new Intake(arrives, grade, depth, condition, note, washDownFirst);
    }
}
