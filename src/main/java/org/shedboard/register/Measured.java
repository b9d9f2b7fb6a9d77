package org.shedboard.register;

import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.shop.Finding;

/**
 * A finding with a value that was read off at a point of a machine.
 *
 * @param meterHours what the machine's meter showed when it came for that visit, where that was read
 * @param workIds ids of the works that were done in that visit
 */
public record Measured(String machineId, String visitId, OptionalInt meterHours, Finding finding, Set<String> workIds) {
    public Measured {
        workIds = Set.copyOf(workIds);
        if (finding.measured().isEmpty()) {
            throw new IllegalArgumentException(
                    "nothing was read off at %s in visit %s".formatted(finding.pointId(), visitId));
        }
    }

    public double value() {
        return finding.measured().getAsDouble();
    }

    boolean isAt(String pointId) {
        return finding.pointId().equals(pointId);
    }
}
