package org.shedboard.pack.story;

/** One fact on which it hangs that a task does not start earlier. {@code until} is the minute from which it holds no more. */
public sealed interface Reason {
    /** Nothing that has not begun starts before this minute. */
    record Now(int until) implements Reason {}

    /** The machine is not here yet. */
    record Arrival(int until) implements Reason {}

    /** Something that the task needs, a part or somebody's word, is not here yet. */
    record Part(int until) implements Reason {}

    /** It is pinned to this minute. */
    record Pinned(int until) implements Reason {}

    /** It waits for another task of its stay, the unattended minutes of that included. */
    record Task(String task, int until) implements Reason {}

    /** The machine's stay before is not over. */
    record StayBefore(int stay, int until) implements Reason {}

    /** Another machine stands in the place, or work on it was planned there first. */
    record PlaceTaken(String place, String job, int stay, int until) implements Reason {}

    /** The place is closed. */
    record PlaceClosed(String place, int until) implements Reason {}

    /** Somebody it takes is on another task. */
    record Busy(String person, String job, int stay, String task, int until) implements Reason {}

    /**
     * Somebody it takes is not at work: a break, a night.
     *
     * @param from since when
     */
    record Off(String person, int from, int until) implements Reason {}

    /**
     * Nothing: with all else as it is it could start at {@code earliest}, but the plan has it later.
     *
     * @param asPosted whether it starts when the posted plan has it
     */
    record Chosen(int earliest, boolean asPosted) implements Reason {}

    /** It has begun. */
    record Begun() implements Reason {}
}
