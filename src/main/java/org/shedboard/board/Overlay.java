package org.shedboard.board;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.hours.Activity;
import org.shedboard.shop.Hold;

/** A question over the screen; Escape always leaves it. */
public sealed interface Overlay {
    /**
     * One of several answers, by its key or with the arrows and Enter.
     *
     * @param about what there is to know before one answers, a line each
     * @param selected index of the answer that Enter gives
     */
    record Choose(String title, List<String> about, List<Choice> choices, int selected) implements Overlay {
        public Choose {
            about = List.copyOf(about);
            choices = List.copyOf(choices);
        }

        /** A question that says all by itself. */
        public Choose(String title, List<Choice> choices, int selected) {
            this(title, List.of(), choices, selected);
        }

        Choose select(int index) {
            return choices.isEmpty() ? this : new Choose(title, about, choices, Math.floorMod(index, choices.size()));
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

        /** An act about a date, of which it is known that nobody has to sign it. */
        record CarryOn(Act act, LocalDate date) implements Reply {}

        /** Another question. */
        record Ask(Overlay next) implements Reply {}

        /** What it takes to put a fix right, which is worked out first. */
        record Offer(String visitId, String pointId) implements Reply {}

        /** Another screen. */
        record Show(Screen screen) implements Reply {}
    }

    /** Something typed in answer. */
    record TypeIn(String title, Typing typing, Purpose purpose) implements Overlay {
        /** Whether what is typed is not for others to see. */
        public boolean isSecret() {
            return purpose instanceof Purpose.Sign;
        }

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

        /** Which machine of ours goes with the owner. */
        record LendOurs(String visitId) implements Purpose {}
        /** Why a point is not reached. */
        record NotReached(Act.Tick tick) implements Purpose {}

        /** To whom a machine is handed over. */
        record HandedTo(String visitId, String by) implements Purpose {}

        /** What whoever takes it was told. */
        record HandedTold(String visitId, String by, String to) implements Purpose {}

        /** The value read off at a point whose finding is recorded already. */
        record Measured(Act.Tick tick) implements Purpose {}

        /**
         * When a person went off what they are on, and whether they left with that.
         *
         * @param began when they went on it, or came
         */
        record WentOff(String personId, boolean leaves, Instant began) implements Purpose {}

        /**
         * From when to when a row of the hours ought to be.
         *
         * @param replaces id of the row that is wrong; empty where one is missing
         */
        record RightTimes(Optional<String> replaces, String personId, Activity activity, LocalDate date)
                implements Purpose {}

        /** Why the hours of a date are put right; the act lacks its reason. */
        record RightWhy(Act.Correct act, LocalDate date) implements Purpose {}

        /** When an errand of this kind begins, how long it takes and what it is about. */
        record Errand(String personId, Activity.OtherWork.Kind kind) implements Purpose {}

        /** What the register is to say. */
        sealed interface OfRegister extends Purpose {}

        /** Something of a machine. */
        record MachinesField(String machineId, What what) implements OfRegister {
            /** What is typed. */
            public enum What {
                LABEL,
                YEAR,
                NUMBER,
                MASS
            }
        }

        /** An owner's name, or telephone. */
        record OwnersField(String ownerId, boolean isPhone) implements OfRegister {}

        /** Any part of another record of a machine. */
        record OtherRecord(String machineId) implements OfRegister {}

        /** When to ring about a machine again. */
        record RingAgain(String machineId) implements Purpose {}

        /** The PIN of whoever signs an act about a date. */
        record Sign(Act act, LocalDate date, String personId) implements Purpose {}

        /** How much of an item is on the shelf, and in which bin. */
        record Count(String itemId) implements Purpose {}

        /** How much of an item is ordered, and when it is due. */
        record Order(String itemId) implements Purpose {}

        /** Until when a person stays, while the day is being opened. */
        record OpenUntil(int row) implements Purpose {}

        /** Why a hoist is locked out, while the day is being opened. */
        record OpenLockOut(int row) implements Purpose {}
    }
}
