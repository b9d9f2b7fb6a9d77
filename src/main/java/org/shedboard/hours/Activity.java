package org.shedboard.hours;

import org.shedboard.shop.Step;

/** What a clock entry is spent on. */
public sealed interface Activity {
    /** Work on one stay of a visit. */
    record OnStay(String visitId, Step step) implements Activity {}

    /** Work that belongs to no machine. */
    record OtherWork(Kind kind) implements Activity {
        /** The sorts of other work the shop tallies. */
        public enum Kind {
            CLEANING_SHOP,
            FETCHING,
            TRAINING,
            WAITING,
            PAPERWORK
        }
    }
}
