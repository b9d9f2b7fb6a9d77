package org.shedboard.pack.lab;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;

/** What plans are compared by: how many jobs are left out, and the cost where as many are. */
record Score(int unplaced, long cost) implements Comparable<Score> {
    private static final Comparator<Score> BEST_FIRST =
            Comparator.comparingInt(Score::unplaced).thenComparingLong(Score::cost);

    static Score of(Plan plan) {
        return new Score(plan.unplaced().size(), plan.cost());
    }

    /** By the costs of a problem other than the one the plan was made for; the checker counts. */
    static Score of(Problem problem, Plan plan) {
        return new Score(plan.unplaced().size(), PlanCheck.of(problem, plan).cost());
    }

    /** The middle one; of two middle ones the worse. */
    static Score median(List<Score> scores) {
        return scores.stream().sorted().toList().get(scores.size() / 2);
    }

    /**
     * By how many percent this costs more than the other; negative where it costs less. Leaving out more is infinitely worse, whatever
     * the cost, and so is any cost where the other has none.
     */
    double percentOver(Score other) {
        if (unplaced != other.unplaced) {
            return unplaced > other.unplaced ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return percentOver(cost, other.cost);
    }

    static double percentOver(long cost, long known) {
        if (cost == known) {
            return 0;
        }
        return known == 0 ? Double.POSITIVE_INFINITY : 100.0 * (cost - known) / known;
    }

    boolean isWorseThan(Score other) {
        return compareTo(other) > 0;
    }

    @Override
    public int compareTo(Score other) {
        return BEST_FIRST.compare(this, other);
    }

    /** As {@code unplaced/cost}. */
    @Override
    public String toString() {
        return unplaced + "/" + cost;
    }

    static String percent(double percent) {
        if (Double.isInfinite(percent)) {
            return percent > 0 ? "far worse" : "far better";
        }
        return String.format(Locale.ROOT, "%.2f %%", percent);
    }
}
