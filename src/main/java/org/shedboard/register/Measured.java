package org.shedboard.register;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Visit;

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

    /** The values that were read off in a visit that is over: all its work was done. */
    public static List<Measured> in(Visit visit) {
        Set<String> works = visit.lines().stream().map(Line::workId).collect(Collectors.toSet());
        return visit.findings().stream()
                .filter(finding -> finding.measured().isPresent())
                .map(finding -> new Measured(
                        visit.machineId(), visit.id(), visit.intake().meterHours(), finding, works))
                .toList();
    }

    public double value() {
        return finding.measured().getAsDouble();
    }

    boolean isAt(String pointId) {
        return finding.pointId().equals(pointId);
    }
}
