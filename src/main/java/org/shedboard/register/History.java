package org.shedboard.register;

import java.util.List;
import org.shedboard.shop.Visit;

/**
 * What a machine went through with us.
 *
 * @param visits all of them, the newest first
 */
public record History(String machineId, List<Visit> visits) {
    public History {
        visits = List.copyOf(visits);
    }
}
