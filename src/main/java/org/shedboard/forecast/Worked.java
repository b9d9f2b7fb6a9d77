package org.shedboard.forecast;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Tally;

/** Minutes worked on visits by person and by what they were on, as a tally has them. */
final class Worked {
    private final Map<String, Map<String, Map<OnStay, Integer>>> byVisit = new HashMap<>();

    Worked(Tally tally) {
        for (Tally.PersonHours hours : tally.people()) {
            hours.onStays()
                    .forEach((on, minutes) -> byVisit.computeIfAbsent(on.visitId(), id -> new LinkedHashMap<>())
                            .computeIfAbsent(hours.personId(), id -> new LinkedHashMap<>())
                            .merge(on, minutes, Integer::sum));
        }
    }

    /** Of one visit, by person; nothing where nobody was clocked on it. */
    Map<String, Map<OnStay, Integer>> on(String visitId) {
        return byVisit.getOrDefault(visitId, Map.of());
    }
}
