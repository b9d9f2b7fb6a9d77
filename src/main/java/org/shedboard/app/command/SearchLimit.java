package org.shedboard.app.command;

import java.time.Duration;
import java.util.Optional;

/**
 * When a search ends.
 *
 * @param tries after so many tries, where that was said; the time counts otherwise
 */
public record SearchLimit(Optional<Long> tries, Duration time) {
    /** A step of the search has few rounds; more threads than that would only wait. */
    public static final int USEFUL_THREADS = 4;

    public static SearchLimit ofTries(long tries) {
        return new SearchLimit(Optional.of(tries), Duration.ZERO);
    }

    public static SearchLimit ofTime(Duration time) {
        return new SearchLimit(Optional.empty(), time);
    }

    /** The limit of one of so many searches that share this one. */
    public SearchLimit shared(int searches) {
        return new SearchLimit(tries.map(most -> most / searches), time.dividedBy(searches));
    }

    /** How many tries may still be made when so many were. */
    public long triesLeft(long made) {
        return tries.map(most -> most - made).orElse(Long.MAX_VALUE);
    }
}
