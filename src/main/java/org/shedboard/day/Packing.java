package org.shedboard.day;

import java.util.Map;
import org.shedboard.estimate.Estimate;
import org.shedboard.pack.Problem;

/**
 * A day to pack.
 *
 * @param packed with the minutes that plans give each task, which the shop may set longer than the likely ones
 * @param likely the same with the likely minutes, around which days turn out: plans are replayed in it
 * @param stuck begun visits of which only a part is in both, since nothing in the shop can finish them
 * @param left likely and safe minutes of what is left to do, by the id of the visit; of those alone that have something left
 */
record Packing(Problem packed, Problem likely, Stuck stuck, Map<String, Estimate.Range> left) {
    Packing {
        left = Map.copyOf(left);
    }
}
