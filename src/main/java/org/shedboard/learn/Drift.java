package org.shedboard.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.fit.ControlChart;
import org.shedboard.fit.Normal;

/**
 * Work of one sort that runs away from what was said of it.
 *
 * @param since the first day of the run
 * @param factor by what its likely minutes would have had to be multiplied since then
 * @param pieces finished since then
 */
public record Drift(Sort sort, LocalDate since, double factor, int pieces) {
    /** A weighted mean that leaves these limits is no chance: once in some 560 values of a steady process (usual figures, from memory). */
    private static final double WEIGHT = 0.2;

    private static final double DEVIATIONS = 3;
    /** Beyond this a place in a forecast says no more. */
    private static final double FURTHEST = 4;

    /** The newest run of this sort, while it lasts. */
    public static Optional<Drift> of(Sort sort, List<Said> said) {
        List<Said> own =
                said.stream().filter(each -> each.lesson().sort() == sort).toList();
        List<Double> means = ControlChart.weighted(
                0, WEIGHT, own.stream().map(Drift::deviation).toList());
        int last = means.size() - 1;
        if (last == 0 || ControlChart.ofWeighted(0, 1, WEIGHT, DEVIATIONS, last).holds(means.get(last))) {
            return Optional.empty();
        }
        int first = last;
        while (first > 1 && means.get(first - 1) * means.get(last) > 0) {
            first--;
        }
        List<Said> run = new ArrayList<>(own.subList(first - 1, own.size()));
        return Optional.of(new Drift(sort, run.get(0).lesson().date(), Score.factor(run), run.size()));
    }

    /** Where it lay in its forecast, in deviations of a normal distribution. */
    private static double deviation(Said said) {
        double place = said.place();
        if (place <= Normal.below(-FURTHEST)) {
            return -FURTHEST;
        }
        return place >= Normal.below(FURTHEST) ? FURTHEST : Normal.quantile(place);
    }
}
