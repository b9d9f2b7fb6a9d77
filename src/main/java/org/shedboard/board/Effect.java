package org.shedboard.board;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.WhatIf;
import org.shedboard.shop.Shop;

/** What the shell shall do; it reports back with a {@link Msg}. */
public sealed interface Effect {
    /**
     * Carry an act out and save it.
     *
     * @param date the day it is about; today when empty
     * @param signature who signs it, where somebody does
     */
    record CarryOut(Act act, Optional<LocalDate> date, Optional<Signed> signature) implements Effect {
        public CarryOut(Act act) {
            this(act, Optional.empty(), Optional.empty());
        }
    }

    /** Who signs, with their PIN as it was typed: on its way to being checked, kept nowhere and printed by nothing. */
    record Signed(String personId, String pin) {
        @Override
        public String toString() {
            return "Signed[" + personId + "]";
        }
    }

    /** Say what could be promised for a machine being taken in. */
    record AskQuote(Act.TakeIn wanted, int round) implements Effect {}

    /** Say what would come of a change; nothing of it is saved. */
    record TryOut(WhatIf whatIf) implements Effect {}

    /**
     * Carry all of a change out and save it, or nothing of it.
     *
     * @param shown what was shown to come of it
     */
    record Keep(WhatIf whatIf, WhatIf.Answer.Tried shown) implements Effect {}

    /** Say what it takes to put a fix right that was found at a point. */
    record AskFix(String visitId, String pointId) implements Effect {}

    /** Write the report of a visit for its owner. */
    record WriteReport(String visitId) implements Effect {}

    /** Read the hours of the days from one date until another. */
    record ReadHours(LocalDate from, LocalDate until) implements Effect {}

    /** Look back on the days from one date until another. */
    record LookBack(LocalDate from, LocalDate until) implements Effect {}

    /** Read what a machine went through. */
    record ReadHistory(String machineId) implements Effect {}

    /** Make this shop, and open it. */
    record MakeShop(Shop shop) implements Effect {}

    /** Open the demonstration shop. */
    record OpenDemonstration() implements Effect {}

    /** Paint the whole screen anew. */
    record Repaint() implements Effect {}

    /** Give the terminal to the shell that the program was started from, until it calls the program back. */
    record StandAside() implements Effect {}

    /** Leave. */
    record Quit() implements Effect {}
}
