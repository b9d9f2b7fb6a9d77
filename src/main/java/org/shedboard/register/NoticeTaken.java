package org.shedboard.register;

/** A maker's notice that became a line of a visit. */
public record NoticeTaken(String noticeId, String machineId, String visitId, String lineId, State state) {
    /** What became of it. */
    public enum State {
        TAKEN,
        DONE,
        /** The booking was called off: the notice is open again. */
        DROPPED
    }

    public NoticeTaken with(State next) {
        return new NoticeTaken(noticeId, machineId, visitId, lineId, next);
    }

    boolean stands() {
        return state != State.DROPPED;
    }
}
