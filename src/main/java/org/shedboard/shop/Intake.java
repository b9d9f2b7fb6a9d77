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
 * @param washDownFirst whether it is washed down, and that is signed, before it comes into any bay
 */
public record Intake(
        Instant arrives,
        Mud mud,
        Depth depth,
        Condition condition,
        String note,
        List<String> alsoLookAt,
        OptionalInt meterHours,
        boolean washDownFirst) {
    public Intake {
        alsoLookAt = List.copyOf(alsoLookAt);
    }

    /** One that comes in as it is, with nothing to look at again and the meter not read. */
    public Intake(Instant arrives, Mud mud, Depth depth, Condition condition, String note) {
        this(arrives, mud, depth, condition, note, List.of(), OptionalInt.empty(), false);
    }

    public Intake withWashDownFirst(boolean isFirst) {
        return new Intake(arrives, mud, depth, condition, note, alsoLookAt, meterHours, isFirst);
    }

    public Intake withArrives(Instant at) {
        return new Intake(at, mud, depth, condition, note, alsoLookAt, meterHours, washDownFirst);
    }

    public Intake withMud(Mud grade) {
        return new Intake(arrives, grade, depth, condition, note, alsoLookAt, meterHours, washDownFirst);
    }

    public Intake withDepth(Depth look) {
        return new Intake(arrives, mud, look, condition, note, alsoLookAt, meterHours, washDownFirst);
    }

    public Intake alsoLookingAt(List<String> pointIds) {
        return new Intake(arrives, mud, depth, condition, note, pointIds, meterHours, washDownFirst);
    }

    public Intake withMeterHours(OptionalInt hours) {
        return new Intake(arrives, mud, depth, condition, note, alsoLookAt, hours, washDownFirst);
    }
}
