package org.shedboard.day;

import java.util.Comparator;
import java.util.Optional;

/** Why an act cannot be taken back, though it can be put right in some other way. */
public enum Lasting {
    /** Who is here, and which hoists were checked, was true when it was said. */
    PRESENCE,
    /** Hours put right are put right once more. */
    CORRECTION,
    /** Items are counted once more. */
    SHELF,
    /** A machine that went home is taken in once more. */
    HOME,
    /** Everything else is put right where it was done. */
    BOOKS;

    /** @param trace what the act changed */
    public static Optional<Lasting> of(Act act, Trace trace) {
        if (act instanceof Act.Correct) {
            return Optional.of(CORRECTION);
        }
        return trace.isNothing() ? Optional.of(ofOne(act)) : Optional.empty();
    }

    /** Of a change made of several acts: of the weightiest reason that one of them has. */
    public static Optional<Lasting> of(WhatIf whatIf, Trace trace) {
        return trace.isNothing()
                ? whatIf.acts().stream().map(Lasting::ofOne).min(Comparator.naturalOrder())
                : Optional.empty();
    }

    private static Lasting ofOne(Act act) {
        if (act instanceof Act.OpenDay
                || act instanceof Act.BeHere
                || act instanceof Act.CheckHoist
                || act instanceof Act.Stop) {
            return PRESENCE;
        }
        if (act instanceof Act.CountStock || act instanceof Act.OrderStock || act instanceof Act.OrderCame) {
            return SHELF;
        }
        return act instanceof Act.Collect ? HOME : BOOKS;
    }
}
