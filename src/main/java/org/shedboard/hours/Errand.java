package org.shedboard.hours;

import java.time.Instant;

/**
 * Other work planned for a person at a time: a parts run, a machine to fetch. It takes no place.
 *
 * @param minutes how long it is expected to take
 * @param note what it is about, as typed; may be empty
 */
public record Errand(
        String id, String personId, Activity.OtherWork.Kind kind, Instant from, int minutes, String note, State state) {
    /** How far it has come. */
    public enum State {
        PLANNED,
        /** Somebody is on it. */
        BEGUN,
        DONE,
        DROPPED
    }

    public Errand {
        if (minutes < 1) {
            throw new IllegalArgumentException("errand %s cannot take %s minutes".formatted(id, minutes));
        }
    }

    public Instant until() {
        return from.plusSeconds(60L * minutes);
    }

    public boolean isOpen() {
        return state == State.PLANNED || state == State.BEGUN;
    }

    public Errand with(State next) {
        return new Errand(id, personId, kind, from, minutes, note, next);
    }

    /** Begun at that moment. */
    public Errand begunAt(Instant at) {
        return new Errand(id, personId, kind, at, minutes, note, State.BEGUN);
    }
}
