package org.shedboard.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.shop.Hold;

/** A question over the screen; Escape always leaves it. */
public sealed interface Overlay {
    /**
     * One of several answers, by its key or with the arrows and Enter.
     *
     * @param selected index of the answer that Enter gives
     */
    record Choose(String title, List<Choice> choices, int selected) implements Overlay {
        public Choose {
            choices = List.copyOf(choices);
        }

        Choose select(int index) {
            return new Choose(title, choices, Math.floorMod(index, choices.size()));
        }
    }

    /**
     * One answer.
     *
     * @param off why it cannot be given, as a sentence
     */
    record Choice(char key, String label, Optional<String> off, Reply reply) {}

    /** What an answer leads to. */
    sealed interface Reply {
        /** An act. */
        record Carry(Act act) implements Reply {}

        /** Another question. */
        record Ask(Overlay next) implements Reply {}

        /** Another screen. */
        record Show(Screen screen) implements Reply {}
    }

    /** Something typed in answer. */
    record TypeIn(String title, Typing typing, Purpose purpose) implements Overlay {
        TypeIn with(Typing next) {
            return new TypeIn(title, next, purpose);
        }
    }

    /** What a typed answer is for. */
    sealed interface Purpose {
        /** A note on why a visit is held. */
        record HoldNote(String visitId, Hold.Reason reason) implements Purpose {}

        /** The time to promise. */
        record PromiseTime(String visitId) implements Purpose {}

        /** Why a promise changes. */
        record PromiseWhy(String visitId, Instant at) implements Purpose {}

        /** Until when a person stays. */
        record Until(String personId) implements Purpose {}

        /** Why a hoist is locked out. */
        record LockOut(String placeId) implements Purpose {}

        /** The value read off at a point whose finding is recorded already. */
        record Measured(Act.Tick tick) implements Purpose {}

        /** Until when a person stays, while the day is being opened. */
        record OpenUntil(int row) implements Purpose {}

        /** Why a hoist is locked out, while the day is being opened. */
        record OpenLockOut(int row) implements Purpose {}
    }
}
