package org.shedboard.learn;

import java.util.List;

/**
 * What finished work says of one figure of the catalogue beyond what it says of all: by how much it is to be multiplied.
 *
 * @param stays how many finished visits it made up a fair part of what was clocked in
 * @param median what half of those took for one minute of the catalogue, or more, at the pace of who did them
 * @param factor as it is believed now
 * @param low the factor is hardly smaller than this
 * @param high nor larger than this
 */
public record Doubt(String figure, int stays, double median, double factor, double low, double high) {
    /** What can be said of each figure that finished work names, by name. */
    public static List<Doubt> of(Learned learned, Expectation expected, List<Clocked> clocked) {
        return new Blame(learned, expected, clocked).doubts();
    }

    /** How far the nearer end of what it may be lies from 1, as a logarithm; 0 where that includes 1. */
    public double strength() {
        return Math.max(0, Math.max(StrictMath.log(low), -StrictMath.log(high)));
    }
}
