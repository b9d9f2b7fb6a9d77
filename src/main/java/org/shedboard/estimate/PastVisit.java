package org.shedboard.estimate;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;

/**
 * A finished visit as another record tells it: what was done, and the minutes it took.
 *
 * @param minutes worked minutes of each step
 * @param people id of who worked on each step
 * @param meters what the meters showed when it came
 * @param findings what was found, as far as the record tells: of each point once
 */
public record PastVisit(
        LocalDate date,
        String machineId,
        Mud mud,
        Depth depth,
        List<String> workIds,
        Map<Step, Integer> minutes,
        Map<Step, String> people,
        Meters meters,
        List<PastFinding> findings) {
    public PastVisit {
        findings = List.copyOf(findings);
    }

    /** Readings of a machine's meters; a new meter is another one than at the visit before. */
    public record Meters(OptionalInt hours, OptionalInt kilometres, boolean isNew) {
        public static final Meters UNREAD = new Meters(OptionalInt.empty(), OptionalInt.empty(), false);
    }
}
