package org.shedboard.tally;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.shop.Visit;

/**
 * One visit in the span.
 *
 * @param estimated catalogue minutes of its tasks that ended in the span
 * @param worked minutes worked on it in the span
 * @param cleaning minutes of cleaning among them
 * @param people minutes by person, most first
 * @param lent minutes worked at another machine that stay with this one
 * @param earlier the visit it comes back from, where a line of it is on our own account
 */
public record VisitTally(
        Visit visit,
        int estimated,
        int worked,
        int cleaning,
        Map<String, Integer> people,
        int lent,
        List<LineTally> lines,
        Optional<Visit> earlier) {
    public VisitTally {
        people = new LinkedHashMap<>(people);
        lines = List.copyOf(lines);
    }

    public int chargeable() {
        return lines.stream().mapToInt(line -> line.chargeable().orElse(0)).sum();
    }
}
