package org.shedboard.forecast;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shedboard.fit.LogNormal;
import org.shedboard.learn.Growth;
import org.shedboard.learn.Said;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Task;

/**
 * How a piece of work is shown beside how it is believed.
 *
 * @param shift what is added to the logarithm of its minutes so that they fall neither with mud nor with depth
 * @param sigma standard deviation of the logarithm of its minutes
 */
record Shown(double shift, double sigma) {
    static final double SAFE = Said.SAFE;
    /** The 80 % point of the standard normal distribution; any printed table. */
    static final double Z_SAFE = 0.8416212335729143;

    /** What is believed of a piece of work in a visit of some mud and depth. */
    interface Belief {
        LogNormal of(Piece piece, int minutes, Mud mud, Depth depth);
    }

    /** What the catalogue has for the pieces of a visit of some mud and depth. */
    interface Work {
        Map<Piece, List<Task>> at(Mud mud, Depth depth);
    }

    /** Every piece of the visit, which has this mud and this depth. */
    static Map<Piece, Shown> of(Map<Piece, List<Task>> pieces, Mud mud, Depth depth, Work work, Belief belief) {
        Map<Piece, double[][][]> grids = grids(pieces.keySet(), work, belief);
        Map<Piece, Shown> shown = new LinkedHashMap<>();
        pieces.forEach((piece, tasks) -> shown.put(
                piece, of(grids.get(piece), belief.of(piece, Piece.minutesOf(tasks), mud, depth), mud, depth)));
        return shown;
    }

    /** Likely minutes, then safe ones, of each piece by mud and depth; 0 where the catalogue has nothing of it. */
    static Map<Piece, double[][][]> grids(Set<Piece> pieces, Work work, Belief belief) {
        Map<Piece, double[][][]> grids = new LinkedHashMap<>();
        for (Mud grade : Mud.values()) {
            for (Depth look : Depth.values()) {
                Map<Piece, List<Task>> there = work.at(grade, look);
                for (Piece piece : pieces) {
                    double[][][] grid = grids.computeIfAbsent(piece, absent -> grid());
                    int minutes = Piece.minutesOf(there.getOrDefault(piece, List.of()));
                    if (minutes > 0) {
                        LogNormal believed = belief.of(piece, minutes, grade, look);
                        grid[0][grade.ordinal()][look.ordinal()] = believed.median();
                        grid[1][grade.ordinal()][look.ordinal()] =
                                StrictMath.exp(believed.mu() + Z_SAFE * believed.sigma());
                    }
                }
            }
        }
        return grids;
    }

    private static double[][][] grid() {
        return new double[2][Mud.values().length][Depth.values().length];
    }

    static Shown of(double[][][] quantiles, LogNormal believed, Mud mud, Depth depth) {
        double likely = quantiles[0][mud.ordinal()][depth.ordinal()];
        if (likely == 0) {
            return new Shown(0, believed.sigma()); // work that the catalogue no longer has
        }
        double shownLikely = Growth.rising(quantiles[0])[mud.ordinal()][depth.ordinal()];
        double shownSafe = Growth.rising(quantiles[1])[mud.ordinal()][depth.ordinal()];
        return new Shown(StrictMath.log(shownLikely / likely), StrictMath.log(shownSafe / shownLikely) / Z_SAFE);
    }
}
