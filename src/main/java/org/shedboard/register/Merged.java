package org.shedboard.register;

import java.time.Instant;
import org.shedboard.shop.Machine;

/**
 * A second record of a machine, which was merged into the one that stands. All that named it names that one; what it said itself stays
 * to be read.
 *
 * @param into id of the machine that stands
 */
public record Merged(Machine machine, String into, Instant at) {
    public Merged {
        if (machine.id().equals(into)) {
            throw new IllegalArgumentException("machine %s cannot be merged into itself".formatted(into));
        }
    }

    Merged into(String next) {
        return new Merged(machine, next, at);
    }
}
