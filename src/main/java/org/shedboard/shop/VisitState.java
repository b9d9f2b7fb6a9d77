package org.shedboard.shop;

/** Where a visit is between being booked and being collected. */
public enum VisitState {
    BOOKED,
    IN_YARD,
    IN_HAND,
    HELD,
    DONE,
    GONE,
    CANCELLED,
    NO_SHOW;

    /** Whether there is, or will be, work to plan. */
    public boolean isOpen() {
        return this == BOOKED || this == IN_YARD || this == IN_HAND || this == HELD;
    }

    /** Whether the machine is on our ground. */
    public boolean isHere() {
        return this == IN_YARD || this == IN_HAND || this == HELD || this == DONE;
    }
}
