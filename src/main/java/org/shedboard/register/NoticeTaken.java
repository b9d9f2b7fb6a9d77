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

    /** On another machine, where it was on this one. */
    NoticeTaken moved(String from, String to) {
        return machineId.equals(from) ? new NoticeTaken(noticeId, to, visitId, lineId, state) : this;
    }

    boolean stands() {
        return state != State.DROPPED;
    }
}
