package org.shedboard.estimate;

import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;

/**
 * Something to inspect on a class of machine.
 *
 * @param where the place on the machine, as said in the shed
 * @param step the part of the visit in which it is looked at
 * @param due the shallowest depth at which it is looked at
 * @param inspectMinutes minutes to look at it
 * @param uncoverMinutes minutes to clean it free at each mud grade, four of them
 * @param caution what to mind, may be empty
 * @param stopsRiding whether a fix found here marks the machine not to be ridden (brakes, steering, frame, fuel)
 * @param measure the value to read off, where there is one
 * @param fixedBy id of the work that puts right what is found here, where the catalogue has one
 * @param renewedWith id of the item that is renewed, never cleaned, when it is found dirty here
 */
public record Point(
        String id,
        String name,
        String where,
        Step step,
        Depth due,
        int inspectMinutes,
        List<Integer> uncoverMinutes,
        String caution,
        boolean stopsRiding,
        Optional<Measure> measure,
        Optional<String> fixedBy,
        Optional<String> renewedWith) {
    /** A value read off at a point: good from low to high, both inclusive. */
    public record Measure(String unit, double low, double high) {
        public boolean isWithin(double value) {
            return value >= low && value <= high;
        }
    }

    /** A point for which there is no line of work, and at which nothing is renewed by rule. */
    public Point(
            String id,
            String name,
            String where,
            Step step,
            Depth due,
            int inspectMinutes,
            List<Integer> uncoverMinutes,
            String caution,
            boolean stopsRiding,
            Optional<Measure> measure) {
        this(
                id,
                name,
                where,
                step,
                due,
                inspectMinutes,
                uncoverMinutes,
                caution,
                stopsRiding,
                measure,
                Optional.empty(),
                Optional.empty());
    }

    public Point {
        uncoverMinutes = List.copyOf(uncoverMinutes);
        if (uncoverMinutes.size() != Mud.values().length) {
            throw new IllegalArgumentException("point %s needs minutes for each mud grade".formatted(id));
        }
    }

    Point withInspectMinutes(int minutes) {
        return new Point(
                id,
                name,
                where,
                step,
                due,
                minutes,
                uncoverMinutes,
                caution,
                stopsRiding,
                measure,
                fixedBy,
                renewedWith);
    }

    /** Whether this value may be called good; anything may where nothing is measured. */
    public boolean mayBeGood(double value) {
        return measure.isEmpty() || measure.get().isWithin(value);
    }

    public int uncoverMinutes(Mud mud) {
        return uncoverMinutes.get(mud.grade());
    }
}
