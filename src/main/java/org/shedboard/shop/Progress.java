package org.shedboard.shop;

import java.time.Instant;
import java.util.Optional;

/**
 * How far a task has come.
 *
 * @param person who is on it, or did it; empty before it begins and while it is paused
 * @param began when it was first started
 * @param since when the present spell of work on it started; {@link #left} counts from here
 * @param left hands-on minutes still expected at that moment; 0 where it has not begun (the estimate holds) or is done
 * @param ended when its hands-on work was over
 */
public record Progress(
        Status status,
        Optional<String> person,
        Optional<Instant> began,
        Optional<Instant> since,
        int left,
        Optional<Instant> ended) {
    /** The stages of a task. */
    public enum Status {
        TO_DO,
        RUNNING,
        PAUSED,
        DONE
    }

    public static final Progress TO_DO =
            new Progress(Status.TO_DO, Optional.empty(), Optional.empty(), Optional.empty(), 0, Optional.empty());

    public Progress started(String personId, Instant now, int minutesLeft) {
        return new Progress(
                Status.RUNNING,
                Optional.of(personId),
                Optional.of(began.orElse(now)),
                Optional.of(now),
                minutesLeft,
                Optional.empty());
    }

    public Progress paused(Instant now, int minutesLeft) {
        return new Progress(Status.PAUSED, Optional.empty(), began, Optional.of(now), minutesLeft, Optional.empty());
    }

    public Progress done(String personId, Instant now) {
        return new Progress(
                Status.DONE,
                Optional.of(personId),
                Optional.of(began.orElse(now)),
                Optional.of(since.orElse(now)),
                0,
                Optional.of(now));
    }

    public boolean isDone() {
        return status == Status.DONE;
    }

    public boolean isRunning() {
        return status == Status.RUNNING;
    }

    public boolean hasBegun() {
        return status != Status.TO_DO;
    }

    public boolean isBy(String personId) {
        return person.filter(personId::equals).isPresent();
    }
}
