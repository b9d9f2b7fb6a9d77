package org.shedboard.app;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Refusal;
import org.shedboard.shop.Pin;
import org.shedboard.shop.PinVerdict;
import org.shedboard.words.Words;

/** Why a PIN was of no use. */
final class PinWords {
    /** A wait is said in seconds up to this one. */
    private static final long MOST_SECONDS = 120;

    private PinWords() {}

    /**
     * Empty for a right PIN.
     *
     * @param name of the person whose PIN was asked for
     */
    static Optional<Refusal> refusal(PinVerdict verdict, String name) {
        if (verdict instanceof PinVerdict.Right) {
            return Optional.empty();
        }
        if (verdict instanceof PinVerdict.Wrong wrong) {
            return Optional.of(wrong(wrong.untilNext()));
        }
        if (verdict instanceof PinVerdict.Waiting waiting) {
            return Optional.of(new Refusal("pin_wait", List.of(name, say(waiting.left()))));
        }
        if (verdict instanceof PinVerdict.NoPin) {
            return Optional.of(none(name));
        }
        throw new IllegalArgumentException("nothing says " + verdict);
    }

    private static Refusal wrong(Duration wait) {
        return wait.isZero() ? new Refusal("pin_wrong", List.of()) : new Refusal("pin_wrong_wait", List.of(say(wait)));
    }

    static Refusal none(String name) {
        return new Refusal("pin_none", List.of(name));
    }

    /** An act that has to be signed was not. */
    static Refusal needed(String name) {
        return new Refusal("pin_needed", List.of(name));
    }

    /** An act that anybody who can has to sign was not. */
    static Refusal neededOfAnybody() {
        return new Refusal("pin_needed_of_anybody", List.of());
    }

    /** There are PINs, so setting one takes one. */
    static Refusal unsigned() {
        return new Refusal("pin_unsigned", List.of());
    }

    /** What was typed is no PIN. */
    static Refusal form() {
        return new Refusal("pin_form", List.of(String.valueOf(Pin.SHORTEST), String.valueOf(Pin.LONGEST)));
    }

    /** Rounded up, so that a wait is over when it is said to be. */
    private static String say(Duration wait) {
        long seconds = wait.plusSeconds(1).minusNanos(1).toSeconds();
        if (seconds == 1) {
            return Words.say("pin.second");
        }
        return seconds <= MOST_SECONDS
                ? Words.say("pin.seconds", seconds)
                : Words.say("pin.minutes", (seconds + 59) / 60);
    }
}
