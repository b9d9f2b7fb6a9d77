package org.shedboard.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shedboard.fit.Belief;

/**
 * One sort of work, learned: the logarithm of actual over catalogue minutes is a linear model of the circumstances with a conjugate
 * prior around the catalogue.
 *
 * <p>A lesson that is far off can neither wreck the model nor be kept out for good because the catalogue is wrong: all lessons are first
 * fitted with weights that fade with their distance (those of Student's t with {@value #FADING} degrees of freedom), against the
 * middle of all distances; then those that are still too far off are set aside, and the rest count in full.
 */
final class SortModel {
    private static final double FADING = 4;
    private static final int ROUNDS = 4;
    /** Distances beyond this many robust deviations do not happen to work that was clocked right: once in 16,000 times, if normal. */
    private static final double FAR_OFF = 4;
    /** Median distance of a normal distribution, in deviations. */
    private static final double MEDIAN_DISTANCE = 0.6744897501960817;

    private static final double LEAST_SPREAD = 0.8;

    private static final int SPREAD_COUNTS = 4;
    /** How many lessons the spread of the catalogue is worth. */
    private static final int PRIOR_DEGREES = 12;

    private final Columns columns;
    private final Belief prior;
    private final Belief belief;
    private final List<Lesson> kept;
    private final List<SetAside> aside;

    private SortModel(Columns columns, Belief prior, Belief belief, List<Lesson> kept, List<SetAside> aside) {
        this.columns = columns;
        this.prior = prior;
        this.belief = belief;
        this.kept = List.copyOf(kept);
        this.aside = List.copyOf(aside);
    }

    /** A model that knows what there is in these lessons, but has learned from none of them. */
    static SortModel untaught(List<Lesson> lessons, Set<String> learners, double spread) {
        Columns columns = new Columns(lessons, practice(lessons, learners), false);
        Belief prior = prior(columns, spread);
        return new SortModel(columns, prior, prior, List.of(), List.of());
    }

    /**
     * @param lessons of this sort, none with a fault of its own
     * @param learners ids of the people who are still learning the trade
     * @param spread standard deviation of the logarithm before anything is seen
     */
    static SortModel of(List<Lesson> lessons, Set<String> learners, double spread, boolean hasSeason) {
        Columns columns = new Columns(lessons, practice(lessons, learners), hasSeason);
        Belief prior = prior(columns, spread);
        double[][] rows = lessons.stream()
                .map(lesson -> columns.row(lesson.circumstances()))
                .toArray(double[][]::new);
        double[] ratios = lessons.stream().mapToDouble(Lesson::logRatio).toArray();
        double[] weights = new double[rows.length];
        Arrays.fill(weights, 1);
        double[] distances = new double[rows.length];
        for (int round = 0; round < ROUNDS && rows.length > 0; round++) {
            distances = distances(prior.afterAll(rows, ratios, weights), rows, ratios, spread);
            for (int i = 0; i < weights.length; i++) {
                weights[i] = (FADING + 1) / (FADING + distances[i] * distances[i]);
            }
        }
        return parted(lessons, columns, prior, rows, ratios, distances);
    }

    private static SortModel parted(
            List<Lesson> lessons, Columns columns, Belief prior, double[][] rows, double[] ratios, double[] distances) {
        double[] counted = Arrays.stream(distances)
                .map(distance -> distance > FAR_OFF ? 0 : 1)
                .toArray();
        Belief belief = prior.afterAll(rows, ratios, counted);
        List<Lesson> kept = new ArrayList<>();
        List<SetAside> aside = new ArrayList<>();
        for (int i = 0; i < rows.length; i++) {
            Lesson lesson = lessons.get(i);
            if (counted[i] > 0) {
                kept.add(lesson);
            } else {
                double expected = lesson.catalogueMinutes() * StrictMath.exp(belief.middle(rows[i]));
                aside.add(new SetAside(lesson, Lesson.Fault.FAR_OFF, expected));
            }
        }
        return new SortModel(columns, prior, belief, kept, aside);
    }

    /** In robust deviations. */
    private static double[] distances(Belief belief, double[][] rows, double[] ratios, double spread) {
        double[] distances = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            distances[i] = Math.abs(ratios[i] - belief.middle(rows[i]));
        }
        double deviation = deviation(distances, spread);
        return Arrays.stream(distances).map(distance -> distance / deviation).toArray();
    }

    /**
     * From the middle of all distances, which a single wild one does not move, and the spread before anything was seen, which counts as
     * {@value #SPREAD_COUNTS} of them: one lesson alone cannot vouch for itself. It is not taken for much less than that spread, as few
     * lessons lie closer to the model fitted to them than the next one will.
     */
    private static double deviation(double[] distances, double spread) {
        double[] sorted = distances.clone();
        Arrays.sort(sorted);
        int others = sorted.length - 1;
        double middle = Math.max(LEAST_SPREAD * spread, sorted[others / 2] / MEDIAN_DISTANCE);
        double squares = SPREAD_COUNTS * spread * spread + others * middle * middle;
        return StrictMath.sqrt(squares / (SPREAD_COUNTS + others));
    }

    private static Belief prior(Columns columns, double spread) {
        double[] precisions = columns.all().stream()
                .mapToDouble(trait -> StrictMath.pow(spread / trait.deviation(), 2))
                .toArray();
        return Belief.of(new double[precisions.length], precisions, spread, PRIOR_DEGREES);
    }

    private static Map<String, Practice> practice(List<Lesson> lessons, Set<String> learners) {
        Map<String, Practice> practice = new HashMap<>();
        for (String learner : learners) {
            practice.put(
                    learner,
                    Practice.of(lessons.stream()
                            .filter(lesson -> lesson.circumstances().people().containsKey(learner))
                            .map(Lesson::date)
                            .toList()));
        }
        return practice;
    }

    Columns columns() {
        return columns;
    }

    Belief belief() {
        return belief;
    }

    Belief prior() {
        return prior;
    }

    List<Lesson> kept() {
        return kept;
    }

    /** Those that were kept, from a year before the newest of them on. */
    List<Lesson> ofLastYear() {
        if (kept.isEmpty()) {
            return kept;
        }
        LocalDate newest =
                kept.stream().map(Lesson::date).max(Comparator.naturalOrder()).orElseThrow();
        LocalDate yearAgo = newest.minusYears(1);
        return kept.stream().filter(lesson -> lesson.date().isAfter(yearAgo)).toList();
    }

    List<SetAside> aside() {
        return aside;
    }

    /** Of the logarithm of actual over catalogue minutes. */
    Belief.Forecast forecast(Circumstances circumstances) {
        return belief.at(columns.row(circumstances));
    }

    /** The middle of the {@link #forecast}. */
    double middle(Circumstances circumstances) {
        return belief.middle(columns.row(circumstances));
    }

    /** What each trait adds to the logarithm, in the order of the traits; those that add nothing are left out. */
    Map<Trait, Double> effects(Circumstances circumstances) {
        double[] row = columns.row(circumstances);
        double[] means = belief.means();
        Map<Trait, Double> effects = new EnumMap<>(Trait.class);
        for (int column = 0; column < row.length; column++) {
            if (row[column] != 0) {
                effects.merge(columns.all().get(column), row[column] * means[column], Double::sum);
            }
        }
        return effects;
    }

    /** Whether a lesson lies further off than any that was clocked right would. */
    boolean isFarOff(Lesson lesson) {
        Belief.Forecast forecast = forecast(lesson.circumstances());
        return Math.abs(lesson.logRatio() - forecast.middle()) > FAR_OFF * forecast.scale();
    }

    /** The same model after one more lesson, which is taken as it is. */
    SortModel after(Lesson lesson) {
        List<Lesson> more = new ArrayList<>(kept);
        more.add(lesson);
        Belief next = belief.after(columns.row(lesson.circumstances()), lesson.logRatio());
        return new SortModel(columns, prior, next, more, aside);
    }

    /** How much better than before the lessons are explained now: differences between models of the same lessons count, in logarithms. */
    double evidence() {
        return belief.evidenceOver(prior);
    }

    double residual(Lesson lesson) {
        return lesson.logRatio() - belief.middle(columns.row(lesson.circumstances()));
    }
}
