package org.shedboard.shop;

import java.time.Instant;

/**
 * How a machine came in, or is expected to.
 *
 * @param arrives when it came; for a booking, when it is expected
 * @param note what the owner said, as typed
 */
public record Intake(Instant arrives, Mud mud, Depth depth, Condition condition, String note) {
    public Intake withArrives(Instant at) {
        return new Intake(at, mud, depth, condition, note);
    }

    public Intake withMud(Mud grade) {
        return new Intake(arrives, grade, depth, condition, note);
    }
}
