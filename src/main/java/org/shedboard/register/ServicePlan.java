package org.shedboard.register;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.shop.ServiceInterval;

/** The services that machines of one class are to have again and again, by the id of the work. */
public record ServicePlan(Map<String, ServiceInterval> services) {
    public ServicePlan {
        services = Collections.unmodifiableMap(new LinkedHashMap<>(services));
    }

    /** The services that count as done when these works are done: a big one includes the small ones, and those theirs. */
    Set<String> doneBy(List<String> workIds) {
        Set<String> done = new LinkedHashSet<>();
        workIds.forEach(id -> add(id, done));
        return done;
    }

    private void add(String id, Set<String> done) {
        ServiceInterval service = services.get(id);
        if (service != null && done.add(id)) {
            service.includes().forEach(included -> add(included, done));
        }
    }

    /** The full service: the one that includes the most; empty where none includes another. */
    Optional<String> full() {
        return services.keySet().stream().filter(id -> size(id) > 1).max(Comparator.comparingInt(this::size));
    }

    /** How many services are done with this one, itself included. */
    int size(String id) {
        return doneBy(List.of(id)).size();
    }
}
