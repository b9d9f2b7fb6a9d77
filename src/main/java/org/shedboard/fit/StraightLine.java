package org.shedboard.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A straight line through values measured at hours, with how sure it is: what wears, how fast, and when it reaches its limit. */
public final class StraightLine {
    /** Where a value lies with the probability asked for. */
    public record Interval(double low, double high) {}

    /** A value and the hours on the meter when it was measured. */
    public record At(double hours, double value) {}

    /**
     * When the line reaches a limit, in hours on the meter.
     *
     * @param likely where the line itself reaches it
     * @param early before this it is not to be expected; empty where two values alone make the line
     * @param late after this it is to be expected; empty where it may never come
     */
    public record Crossing(double likely, OptionalDouble early, OptionalDouble late) {}

    /** A rise that is a smaller share of the values than this is rounding. */
    private static final double LEVEL = 1e-13;

    private final LeastSquares fit;
    private final double middleHours;
    private final double spreadHours;
    private final double lastHours;

    private StraightLine(List<At> points) {
        Sample hours = Sample.of(points.stream().map(At::hours).toList());
        middleHours = hours.mean();
        spreadHours = hours.sd() * StrictMath.sqrt(points.size() - 1.0);
        lastHours = points.stream().mapToDouble(At::hours).max().orElseThrow();
        double[][] design = points.stream()
                .map(point -> new double[] {1, point.hours() - middleHours})
                .toArray(double[][]::new);
        fit = LeastSquares.of(design, points.stream().mapToDouble(At::value).toArray());
    }

    /** Whether a line can be drawn: values at two different hours at least. */
    public static boolean canBeDrawn(List<At> points) {
        return points.stream().mapToDouble(At::hours).distinct().count() >= 2;
    }

    public static StraightLine through(List<At> points) {
        if (!canBeDrawn(points)) {
            throw new IllegalArgumentException("no line through values at fewer than two different hours");
        }
        return new StraightLine(points);
    }

    public double at(double hours) {
        return fit.coefficient(0) + fit.coefficient(1) * (hours - middleHours);
    }

    public double perHour() {
        return fit.coefficient(1);
    }

    /** What is worn off, or added, in a hundred hours. */
    public double perHundredHours() {
        return 100 * perHour();
    }

    public double residualSd() {
        return fit.residualSd();
    }

    /** Values beyond the two that a line needs. */
    public int degreesOfFreedom() {
        return fit.degreesOfFreedom();
    }

    /** Standard deviation of the wear in a hundred hours. */
    public double sdPerHundredHours() {
        return 100 * fit.sdOf(1);
    }

    /** The wear in a hundred hours, with this probability; open to both sides where two values alone make the line. */
    public Interval perHundredHours(double probability) {
        return around(perHundredHours(), sdPerHundredHours(), probability);
    }

    /** Where the next value measured at these hours will lie, with this probability. */
    public Interval nextAt(double hours, double probability) {
        double line = fit.sdAt(new double[] {1, hours - middleHours});
        return around(at(hours), StrictMath.hypot(line, residualSd()), probability);
    }

    private Interval around(double middle, double sd, double probability) {
        if (degreesOfFreedom() == 0) {
            return new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double reach = quantile(probability) * sd;
        return new Interval(middle - reach, middle + reach);
    }

    private double quantile(double probability) {
        return StudentT.quantile((1 + probability) / 2, degreesOfFreedom());
    }

    /**
     * When a value is to reach this limit; empty where the line is level or has the limit behind it, because it runs away from it or was
     * past it long ago.
     *
     * <p>Early and late are where the limit enters and leaves the interval of the next value: what scatters is taken to be the wear as much
     * as the measuring. Nothing is said of hours before the last measurement.
     */
    public Optional<Crossing> reaches(double limit, double probability) {
        double missing = limit - fit.coefficient(0);
        double likely = middleHours + missing / perHour();
        if (isLevel() || likely < middleHours) {
            return Optional.empty();
        }
        if (degreesOfFreedom() == 0) {
            return Optional.of(
                    new Crossing(Math.max(likely, lastHours), OptionalDouble.empty(), OptionalDouble.empty()));
        }
        return Optional.of(crossing(likely, missing, quantile(probability) * residualSd()));
    }

    /** Whether all that the line rises or falls over its own hours is rounding. */
    private boolean isLevel() {
        return Math.abs(perHour()) * spreadHours <= LEVEL * Math.abs(fit.coefficient(0));
    }

    /** The hours d from the middle at which (missing - slope d)^2 = reach^2 (1 + 1/n + d^2 / spread^2). */
    private Crossing crossing(double likely, double missing, double reach) {
        int size = degreesOfFreedom() + 2;
        double open = reach / spreadHours;
        double square = perHour() * perHour() - open * open;
        double constant = missing * missing - reach * reach * (1 + 1.0 / size);
        double half = perHour() * missing;
        double root = StrictMath.sqrt(Math.max(0, half * half - square * constant));
        // The larger root is had by adding, the other as constant over it, so that neither is a difference of like
        // numbers.
        double early = constant / (half + root);
        OptionalDouble late = square > 0 ? OptionalDouble.of(notPast((half + root) / square)) : OptionalDouble.empty();
        return new Crossing(Math.max(likely, lastHours), OptionalDouble.of(notPast(early)), late);
    }

    private double notPast(double fromMiddle) {
        return Math.max(lastHours, middleHours + fromMiddle);
    }
}
