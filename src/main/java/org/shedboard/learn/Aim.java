package org.shedboard.learn;

/** How a share of finished work that stayed within some minutes stands to the share that should have. */
public enum Aim {
    MET,
    /** Fewer stayed within them: the minutes were said too short. */
    TOO_SHORT,
    /** More did: they were said longer than need be. */
    TOO_LONG;

    /**
     * Deviations that chance is allowed. Two would be usual for pieces that have nothing in common; those of one machine or one day
     * stray together, so half a deviation is added (invented).
     */
    private static final double ALLOWED = 2.5;

    static Aim of(double share, double wanted, int count) {
        double reach = ALLOWED * StrictMath.sqrt(wanted * (1 - wanted) / count);
        if (Math.abs(share - wanted) <= reach) {
            return MET;
        }
        return share < wanted ? TOO_SHORT : TOO_LONG;
    }
}
