package org.shedboard.shop;

import java.time.Instant;
import java.util.Optional;

/**
 * What the foreman insists on for one task, whatever else the plan does; what is empty is for the plan to say.
 *
 * @param placeId the place its stay is to be in
 * @param at when it is to start
 * @param personId who is to do it; one without its skill has it lent for this task
 */
public record TaskPin(Optional<String> placeId, Optional<Instant> at, Optional<String> personId) {
    public TaskPin {
        if (placeId.isEmpty() && at.isEmpty() && personId.isEmpty()) {
            throw new IllegalArgumentException("a pin has to hold something");
        }
    }

    public boolean isTo(String person) {
        return personId.filter(person::equals).isPresent();
    }

    /** The same without its place; empty where it held nothing else. */
    public Optional<TaskPin> withoutPlace() {
        return at.isEmpty() && personId.isEmpty()
                ? Optional.empty()
                : Optional.of(new TaskPin(Optional.empty(), at, personId));
    }
}
