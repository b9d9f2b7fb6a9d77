package org.shedboard.shop;

import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;

/**
 * How a machine came in, or is expected to.
 *
 * @param arrives when it came; for a booking, when it is expected
 * @param note what the owner said, as typed
 * @param alsoLookAt ids of the points to look at again whatever the depth, since something was left there last time
 * @param meterHours what its meter showed when it came, where that was read
 */
public record Intake(
        Instant arrives,
        Mud mud,
        Depth depth,
        Condition condition,
        String note,
        List<String> alsoLookAt,
        OptionalInt meterHours) {
    public Intake {
        alsoLookAt = List.copyOf(alsoLookAt);
    }

    /** One with nothing to look at again and the meter not read. */
    public Intake(Instant arrives, Mud mud, Depth depth, Condition condition, String note) {
        this(arrives, mud, depth, condition, note, List.of(), OptionalInt.empty());
    }

    public Intake withArrives(Instant at) {
        return new Intake(at, mud, depth, condition, note, alsoLookAt, meterHours);
    }

    public Intake withMud(Mud grade) {
        return new Intake(arrives, grade, depth, condition, note, alsoLookAt, meterHours);
    }

    public Intake alsoLookingAt(List<String> pointIds) {
        return new Intake(arrives, mud, depth, condition, note, pointIds, meterHours);
    }

    public Intake withMeterHours(OptionalInt hours) {
        return new Intake(arrives, mud, depth, condition, note, alsoLookAt, hours);
    }
}
