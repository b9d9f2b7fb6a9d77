package org.shedboard.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.shedboard.fit.Belief;

/**
 * Parts what finished work took beyond the catalogue between its figures and all that is not their fault.
 *
 * <p>The logarithm of actual over catalogue minutes is taken as a sum: of each figure's own deviation, as large as its part of the
 * minutes, and of what each sort of work is learned to depend on, such as the shop's pace, mud, depth, the machine's age and who did it.
 * All of it is fitted at once around the catalogue. So a figure is to blame for what sets it apart only; a slow person, or a shop that
 * takes longer for everything, condemns none, since the forecast has that already and would count it twice. The class alone is left out:
 * whatever sets a class apart is for its figures to say.
 *
 * <p>Most figures are nearly right, which is how the pace of a shop can be told from figures at all. So all are held near the catalogue
 * at first; then, one at a time, the one that is surest to be off is let go, and the others are looked at anew beside it.
 */
final class Blame {
    /** How far a figure that is not let go is taken to be off, as {@link Trait#deviation}; an invented figure. */
    private static final double HELD = 0.1;
    /** The same of one that is let go, or asked about; an invented figure. */
    private static final double FREE = 0.4;

    private static final int MOST_FREE = 30;
    private static final int PRIOR_DEGREES = 12;
    /** What is as good as nothing known beforehand, and still lets figures that nothing tells apart be fitted. */
    private static final double UNKNOWN = 1e-6;
    /** One that lies further from what is expected of it was not clocked right. */
    private static final double FAR_OFF = 4;
    /** Clocks tell whole minutes: each of a task's ends is off by up to half of one. */
    private static final double ROUNDED = 0.5;
    /** A part of what was clocked that counts as having been seen. */
    private static final double FAIR_SHARE = 0.2;
    /** There are a hundred figures or more: of those that are right, one in four hundred each way may be doubted. An invented figure. */
    private static final double UNLIKELY = 0.0025;

    /** What hangs on the work and not on the figure. */
    private static final Set<Trait> COMMON = Set.of(Trait.SHOP, Trait.MUD, Trait.DEPTH, Trait.AGE, Trait.PERSON);

    private final Learned learned;
    private final Expectation expected;
    private final List<Clocked> clocked;
    private final Map<String, Integer> figures = new LinkedHashMap<>();
    private final int columns;
    private final double spread;

    Blame(Learned learned, Expectation expected, List<Clocked> clocked) {
        this.learned = learned;
        this.expected = expected;
        this.clocked = clocked.stream()
                .filter(each -> each.fault().isEmpty() && !isFarOff(each))
                .toList();
        Set<String> names = new TreeSet<>();
        this.clocked.forEach(each -> each.parts().forEach(part -> names.add(part.figure())));
        names.forEach(name -> figures.put(name, figures.size()));
        this.columns = figures.size()
                + Arrays.stream(Sort.values()).mapToInt(this::commonColumns).sum();
        this.spread = Arrays.stream(Sort.values())
                .mapToDouble(expected::spreadOf)
                .average()
                .orElseThrow();
    }

    private int commonColumns(Sort sort) {
        return (int) traitsOf(sort).stream().filter(COMMON::contains).count();
    }

    private List<Trait> traitsOf(Sort sort) {
        return learned.model(sort).columns().all();
    }

    private boolean isFarOff(Clocked each) {
        double middle = 0;
        double scale = 0;
        for (Map.Entry<Sort, Double> share : each.sorts().entrySet()) {
            Belief.Forecast forecast = learned.model(share.getKey()).forecast(each.circumstances());
            middle += share.getValue() * forecast.middle();
            scale = Math.max(scale, forecast.scale());
        }
        double deviation = StrictMath.hypot(scale, ROUNDED / each.catalogueMinutes());
        return Math.abs(StrictMath.log(each.ratio()) - middle) > FAR_OFF * deviation;
    }

    List<Doubt> doubts() {
        Belief seen = seen();
        boolean[] free = new boolean[figures.size()];
        Belief belief = held(seen, free);
        for (int round = 0; round < MOST_FREE && letGo(belief, free); round++) {
            belief = held(seen, free);
        }
        return doubts(belief, free);
    }

    /** All that was clocked, with next to nothing taken of the figures beforehand. */
    private Belief seen() {
        double[][] rows = clocked.stream().map(this::row).toArray(double[][]::new);
        double[] values = clocked.stream().mapToDouble(this::value).toArray();
        double[] weights = clocked.stream().mapToDouble(this::weight).toArray();
        return prior().afterAll(rows, values, weights);
    }

    private Belief prior() {
        double[] precisions = new double[columns];
        Arrays.fill(precisions, UNKNOWN);
        int at = figures.size();
        for (Sort sort : Sort.values()) {
            for (Trait trait : traitsOf(sort)) {
                if (COMMON.contains(trait)) {
                    precisions[at++] = precision(trait.deviation());
                }
            }
        }
        return Belief.of(new double[columns], precisions, spread, PRIOR_DEGREES);
    }

    private double precision(double deviation) {
        return StrictMath.pow(spread / deviation, 2);
    }

    private double[] row(Clocked each) {
        double[] row = new double[columns];
        each.figures().forEach((figure, share) -> row[figures.get(figure)] = share);
        int at = figures.size();
        for (Sort sort : Sort.values()) {
            double share = each.sorts().getOrDefault(sort, 0.0);
            double[] own = learned.model(sort).columns().row(each.circumstances());
            List<Trait> traits = traitsOf(sort);
            for (int column = 0; column < own.length; column++) {
                if (COMMON.contains(traits.get(column))) {
                    row[at++] = share * own[column];
                }
            }
        }
        return row;
    }

    /** Without what practice and the season are learned to make of it. */
    private double value(Clocked each) {
        double value = StrictMath.log(each.ratio());
        for (Map.Entry<Sort, Double> share : each.sorts().entrySet()) {
            Map<Trait, Double> effects = learned.model(share.getKey()).effects(each.circumstances());
            double passing = effects.getOrDefault(Trait.PRACTICE, 0.0) + effects.getOrDefault(Trait.SEASON, 0.0);
            value -= share.getValue() * passing;
        }
        return value;
    }

    /** The less it scatters, the more it says. */
    private double weight(Clocked each) {
        double own = each.sorts().entrySet().stream()
                .mapToDouble(share -> share.getValue() * expected.spreadOf(share.getKey()))
                .sum();
        return StrictMath.pow(spread / StrictMath.hypot(own, ROUNDED / each.catalogueMinutes()), 2);
    }

    private Belief held(Belief seen, boolean[] free) {
        double[] precisions = new double[columns];
        for (int column = 0; column < free.length; column++) {
            precisions[column] = precisionOf(free[column]);
        }
        return seen.holding(precisions);
    }

    private double precisionOf(boolean isFree) {
        return precision(isFree ? FREE : HELD);
    }

    /** Lets the one go that is surest to be off; false where none of those still held is. */
    private boolean letGo(Belief belief, boolean[] free) {
        int surest = -1;
        double best = belief.scalesOff(1 - UNLIKELY);
        for (int column = 0; column < free.length; column++) {
            Belief.Middle own = freed(belief, column, false);
            double strength = free[column] ? 0 : Math.abs(own.value()) / own.scale();
            if (strength > best) {
                surest = column;
                best = strength;
            }
        }
        if (surest >= 0) {
            free[surest] = true;
        }
        return surest >= 0;
    }

    /** What is believed of one figure when it is let go, beside the others as they are. */
    private Belief.Middle freed(Belief belief, int column, boolean isFree) {
        double[] alone = new double[columns];
        alone[column] = 1;
        return isFree ? belief.middleAt(alone) : belief.middleAt(alone, precisionOf(true) - precisionOf(false));
    }

    private List<Doubt> doubts(Belief belief, boolean[] free) {
        Map<String, List<Clocked>> seen = new LinkedHashMap<>();
        figures.keySet().forEach(figure -> seen.put(figure, new ArrayList<>()));
        for (Clocked each : clocked) {
            each.figures().forEach((figure, share) -> {
                if (share >= FAIR_SHARE) {
                    seen.get(figure).add(each);
                }
            });
        }
        List<Doubt> doubts = new ArrayList<>();
        double limit = belief.scalesOff(1 - UNLIKELY);
        figures.forEach((figure, column) ->
                doubts.add(doubt(figure, freed(belief, column, free[column]), limit, seen.get(figure))));
        return doubts;
    }

    private static Doubt doubt(String figure, Belief.Middle own, double limit, List<Clocked> seen) {
        return new Doubt(
                figure,
                (int) seen.stream().map(Clocked::visitId).distinct().count(),
                median(seen),
                StrictMath.exp(own.value()),
                StrictMath.exp(own.value() - limit * own.scale()),
                StrictMath.exp(own.value() + limit * own.scale()));
    }

    /** 1 where there is none. */
    private static double median(List<Clocked> seen) {
        double[] ratios = seen.stream().mapToDouble(Clocked::ratio).sorted().toArray();
        if (ratios.length == 0) {
            return 1;
        }
        int middle = ratios.length / 2;
        return ratios.length % 2 == 1 ? ratios[middle] : (ratios[middle - 1] + ratios[middle]) / 2;
    }
}
