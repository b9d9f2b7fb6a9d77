package org.shedboard.board;

import java.util.Optional;
import org.shedboard.day.AsSeen;

/**
 * What somebody at the terminal is making up their mind about.
 *
 * @param upon the day as it was seen when the question was asked; empty while none is
 * @param typed what was typed last in answer to the questions of an act, until another question is asked
 */
record Deciding(Optional<AsSeen> upon, Optional<Typed> typed) {
    static final Deciding NOTHING = new Deciding(Optional.empty(), Optional.empty());

    /** An answer, and the screen it was typed over. */
    record Typed(Overlay.TypeIn answer, Screen over) {}

    /** What it is after one board has become another. */
    static Deciding on(Board before, Board now) {
        Optional<AsSeen> upon = now.overlay().isPresent() ? before.decidingOn() : Optional.empty();
        return new Deciding(upon, typed(before, now));
    }

    private static Optional<Typed> typed(Board before, Board now) {
        Optional<Typed> kept = before.atHand().deciding().typed();
        boolean isSent = now.saving() > before.saving();
        if (before.overlay().isEmpty()) {
            return isSent || now.overlay().isPresent() ? Optional.empty() : kept;
        }
        boolean isLeft = now.overlay().isEmpty() && !isSent;
        return isLeft ? Optional.empty() : answered(before, now).or(() -> kept);
    }

    /** What is secret is kept by nobody. */
    private static Optional<Typed> answered(Board before, Board now) {
        return before.overlay()
                .filter(Overlay.TypeIn.class::isInstance)
                .map(Overlay.TypeIn.class::cast)
                .filter(answer -> !answer.isSecret() && !isStillTyped(answer, now))
                .map(answer -> new Typed(answer, before.screen()));
    }

    private static boolean isStillTyped(Overlay.TypeIn answer, Board now) {
        return now.overlay()
                .filter(next ->
                        next instanceof Overlay.TypeIn in && in.purpose().equals(answer.purpose()))
                .isPresent();
    }
}
