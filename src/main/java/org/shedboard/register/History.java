package org.shedboard.register;

import java.util.List;
import java.util.OptionalInt;
import org.shedboard.shop.Visit;

/**
 * What a machine went through with us.
 *
 * @param visited all its visits, the newest first
 */
public record History(String machineId, List<Visited> visited) {
    /**
     * A visit.
     *
     * @param tag the number its key carried, also when it is long gone home
     */
    public record Visited(Visit visit, OptionalInt tag) {}

    public History {
        visited = List.copyOf(visited);
    }

    boolean has(String visitId) {
        return visited.stream().anyMatch(each -> each.visit().id().equals(visitId));
    }
}
