package org.shedboard.hours;

import java.util.Optional;
import org.shedboard.shop.Step;

/** What a clock entry is spent on. */
public sealed interface Activity {
    /** Being in the shop, from arriving to leaving; whatever else a person does lies beside it. */
    record AtWork() implements Activity {}

    /**
     * Work on one stay of a visit.
     *
     * @param taskId the task in hand; empty for who only lends a hand, and where a record does not tell it
     */
    record OnStay(String visitId, Step step, Optional<String> taskId) implements Activity {
        public OnStay(String visitId, Step step) {
            this(visitId, step, Optional.empty());
        }
    }

    /**
     * A hand lent to another machine by somebody who goes back to their own.
     *
     * @param to where they help
     * @param from what they were called away from
     */
    record Lent(OnStay to, OnStay from) implements Activity {}

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

    /** Not working. */
    record Break(Kind kind) implements Activity {
        /** The sorts of break. */
        public enum Kind {
            /** A short rest, which is time worked. */
            REST,
            /** A meal: whether it is time worked follows from how long it was, by the shop's {@link BreakRule}. */
            MEAL,
            /** Free of all duty, as somebody stated: not time worked, however short it was. */
            OFF_DUTY
        }
    }
}
