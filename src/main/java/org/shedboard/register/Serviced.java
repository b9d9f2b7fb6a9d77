package org.shedboard.register;

import java.time.Instant;
import java.util.List;
import org.shedboard.shop.Mud;

/**
 * A finished visit, as far as the next service asks after it.
 *
 * @param workIds ids of the works that were done
 */
public record Serviced(
        String machineId, String visitId, Instant arrived, Instant finished, Mud mud, List<String> workIds) {
    public Serviced {
        workIds = List.copyOf(workIds);
    }

    Serviced of(String otherMachineId) {
        return new Serviced(otherMachineId, visitId, arrived, finished, mud, workIds);
    }
}
