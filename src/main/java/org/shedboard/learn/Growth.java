package org.shedboard.learn;

import java.util.Arrays;
import org.shedboard.fit.Pooled;

/**
 * How minutes grow with mud and with depth, as they are shown: a dirtier machine or a deeper look is never said to be shorter, though
 * what is believed may well say so while few were seen. Grades that fall are pooled; what is believed stays as it is.
 */
public final class Growth {
    private Growth() {}

    /**
     * The minutes, falling neither with mud nor with depth. They are pooled along mud first and along depth then, which leaves what was
     * made rising along mud so: pooling never puts a larger figure below a smaller one.
     *
     * @param minutes by mud grade, clean first, then by depth, the shallowest look first
     */
    public static double[][] rising(double[][] minutes) {
        double[][] byDepth = turned(minutes);
        Arrays.setAll(byDepth, look -> pooled(byDepth[look]));
        double[][] byMud = turned(byDepth);
        Arrays.setAll(byMud, grade -> pooled(byMud[grade]));
        return byMud;
    }

    private static double[] pooled(double[] figures) {
        double[] ones = new double[figures.length];
        Arrays.fill(ones, 1);
        return Pooled.rising(figures, ones);
    }

    private static double[][] turned(double[][] figures) {
        double[][] turned = new double[figures[0].length][figures.length];
        for (int row = 0; row < figures.length; row++) {
            for (int column = 0; column < turned.length; column++) {
                turned[column][row] = figures[row][column];
            }
        }
        return turned;
    }
}
