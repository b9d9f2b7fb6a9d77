package org.shedboard.shop;

import java.time.Duration;

/** What a try at a person's PIN comes to. */
public sealed interface PinVerdict {
    record Right() implements PinVerdict {}

    /**
     * It is not this person's PIN.
     *
     * @param inARow how often in a row that is by now
     * @param untilNext how long the next try has to wait; zero while wrong tries cost nothing
     */
    record Wrong(int inARow, Duration untilNext) implements PinVerdict {}

    /** It was not even looked at: there were too many wrong ones, and the wait for that is not over yet. */
    record Waiting(Duration left) implements PinVerdict {}

    /** There is nothing to compare it with. */
    record NoPin() implements PinVerdict {}
}
