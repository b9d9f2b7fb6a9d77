package org.shedboard.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shedboard.fit.Pooled;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/**
 * How likely minutes grow with mud, or with depth, as they are shown: a dirtier machine or a deeper look is never said to be shorter,
 * though what is believed may well say so while few were seen. Grades that fall are pooled; what is believed stays as it is.
 */
public final class Growth {
    private Growth() {}

    /**
     * Likely minutes at each mud grade, clean first.
     *
     * @param catalogue minutes by the catalogue at each grade
     */
    public static List<Double> withMud(Learned learned, Sort sort, Circumstances at, ToDoubleFunction<Mud> catalogue) {
        List<Double> minutes = new ArrayList<>();
        for (Mud grade : Mud.values()) {
            minutes.add(catalogue.applyAsDouble(grade) * learned.factor(sort, at.with(grade)));
        }
        return rising(minutes);
    }

    /**
     * Likely minutes at each depth, the shallowest look first.
     *
     * @param catalogue minutes by the catalogue at each depth
     */
    public static List<Double> withDepth(
            Learned learned, Sort sort, Circumstances at, ToDoubleFunction<Depth> catalogue) {
        List<Double> minutes = new ArrayList<>();
        for (Depth look : Depth.values()) {
            minutes.add(catalogue.applyAsDouble(look) * learned.factor(sort, at.with(look)));
        }
        return rising(minutes);
    }

    private static List<Double> rising(List<Double> minutes) {
        double[] ones = minutes.stream().mapToDouble(each -> 1).toArray();
        double[] figures = minutes.stream().mapToDouble(each -> each).toArray();
        List<Double> rising = new ArrayList<>();
        for (double each : Pooled.rising(figures, ones)) {
            rising.add(each);
        }
        return rising;
    }
}
