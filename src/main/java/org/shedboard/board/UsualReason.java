package org.shedboard.board;

/** Why a point is not reached, as it usually is; any other reason is typed. */
public enum UsualReason {
    STUCK,
    NO_TIME,
    OWNERS_WISH,
    PART_IN_THE_WAY,
    TOO_DIRTY,
    NO_TOOL
}
