package org.shedboard.shop;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How often in a row a person's PIN was given wrong, and until when it is of no use because of that. Four digits are guessed soon by
 * whoever may go on guessing; so, after a few slips of the finger, each wrong try costs a wait twice as long as the one before.
 */
public record WrongTries(int inARow, Optional<Instant> waitUntil) {
    public static final WrongTries NONE = new WrongTries(0, Optional.empty());

    /** Wrong tries in a row that cost nothing; this number and both waits are invented. */
    static final int FREE = 3;

    static final Duration FIRST_WAIT = Duration.ofSeconds(10);
    static final Duration LONGEST_WAIT = Duration.ofMinutes(15);

    /** More than reach the longest wait, and few enough to be reckoned with. */
    private static final int MOST_DOUBLINGS = 20;

    public WrongTries {
        if (inARow < 0) {
            throw new IllegalArgumentException("a PIN cannot have been wrong %s times".formatted(inARow));
        }
    }

    /**
     * How long the PIN is still of no use; zero when it may be tried. An end further away than the longest wait was set before the
     * clock jumped back, and nobody is to wait for the clock to come there again.
     */
    public Duration waitLeft(Instant now) {
        Duration left = waitUntil.map(until -> Duration.between(now, until)).orElse(Duration.ZERO);
        return left.isNegative() || left.compareTo(LONGEST_WAIT) > 0 ? Duration.ZERO : left;
    }

    /** What a try comes to. */
    public PinVerdict verdict(boolean isRight, Instant now) {
        Duration left = waitLeft(now);
        if (!left.isZero()) {
            return new PinVerdict.Waiting(left);
        }
        return isRight ? new PinVerdict.Right() : new PinVerdict.Wrong(inARow + 1, waitAfter(inARow + 1));
    }

    /** What a try leaves behind; during a wait nothing, whether it was right or not. */
    public WrongTries after(boolean isRight, Instant now) {
        if (!waitLeft(now).isZero()) {
            return this;
        }
        return isRight ? NONE : plusOne(now);
    }

    private WrongTries plusOne(Instant now) {
        Duration wait = waitAfter(inARow + 1);
        return new WrongTries(inARow + 1, wait.isZero() ? Optional.empty() : Optional.of(now.plus(wait)));
    }

    private static Duration waitAfter(int tries) {
        if (tries <= FREE) {
            return Duration.ZERO;
        }
        int doublings = Math.min(tries - FREE - 1, MOST_DOUBLINGS);
        Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
        return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
    }
}
