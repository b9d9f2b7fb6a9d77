package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;

/**
 * An act with its moment, written down before its visit has an id.
 *
 * <p>Wherever the act names a visit it holds a handle ({@code @rig}), which whoever replays it replaces by the id of the visit
 * that the take-in with this handle brought.
 *
 * @param by id of the person at the terminal
 * @param handle what the rest calls the visit; given for a take-in and for nothing else
 */
public record TimedAct(Instant at, String by, Optional<String> handle, Act act) {
    public TimedAct {
        if (handle.isPresent() != act instanceof Act.TakeIn) {
            throw new IllegalArgumentException("a take-in has a handle, and nothing else has: " + act);
        }
    }
}
