package org.shedboard.fit;

/**
 * What is believed of a linear model with normal scatter, before and after values are seen: a normal-inverse-gamma distribution of its
 * coefficients and the variance of the scatter, which stays one with every value (the conjugate prior of the linear model; formulas as
 * in P. D. Hoff, A First Course in Bayesian Statistical Methods, from memory, held to the worked cases in the test).
 *
 * <p>The prior is taken in as rows of its own, so that learning is nothing but one more row of a {@link Triangle}.
 */
public final class Belief {
    private static final double FOUR_IN_FIVE = 0.8;

    private final Triangle triangle;
    /** Twice the shape of the variance's distribution: what was believed counts as so many values seen. */
    private final double degrees;

    private final double priorLeft;

    private final double[] means;

    /** How much wider than a normal distribution that of a value to come is at four in five; 0 until somebody asks. */
    private volatile double widening;

    private Belief(Triangle triangle, double degrees, double priorLeft) {
        this.triangle = triangle;
        this.degrees = degrees;
        this.priorLeft = priorLeft;
        this.means = triangle.solved();
    }

    /**
     * A belief from before any value.
     *
     * @param means what each coefficient is taken to be
     * @param precisions how sure that is: a precision of 4 is worth four values seen with this coefficient alone; 0 says nothing
     * @param scatter standard deviation that one value is taken to have about the model
     * @param degrees how many values the scatter is worth, at least 1
     */
    public static Belief of(double[] means, double[] precisions, double scatter, int degrees) {
        if (means.length != precisions.length || degrees < 1 || !(scatter > 0)) {
            throw new IllegalArgumentException("no belief of %s means and %s precisions, scatter %s worth %s values"
                    .formatted(means.length, precisions.length, scatter, degrees));
        }
        Triangle triangle = Triangle.empty(means.length);
        for (int column = 0; column < means.length; column++) {
            if (!(precisions[column] >= 0) || !Double.isFinite(precisions[column]) || !Double.isFinite(means[column])) {
                throw new IllegalArgumentException("no coefficient can be taken for %s with precision %s"
                        .formatted(means[column], precisions[column]));
            }
            double root = StrictMath.sqrt(precisions[column]);
            double[] row = new double[means.length];
            row[column] = root;
            triangle = triangle.plus(row, root * means[column]);
        }
        return new Belief(triangle, degrees, degrees * scatter * scatter);
    }

    /** After one more value, seen at this row of the model. */
    public Belief after(double[] row, double value) {
        return new Belief(triangle.plus(row, value), degrees + 1, priorLeft);
    }

    /**
     * After many values.
     *
     * @param weights how much each of them counts: half a value says as much of the coefficients and of the scatter as half of one does
     */
    public Belief afterAll(double[][] rows, double[] values, double[] weights) {
        Triangle all = triangle.copy();
        double seen = degrees;
        for (int i = 0; i < rows.length; i++) {
            all.take(scaled(rows[i], StrictMath.sqrt(weights[i])), StrictMath.sqrt(weights[i]) * values[i]);
            seen += weights[i];
        }
        return new Belief(all, seen, priorLeft);
    }

    private static double[] scaled(double[] row, double by) {
        double[] scaled = new double[row.length];
        for (int column = 0; column < row.length; column++) {
            scaled[column] = by * row[column];
        }
        return scaled;
    }

    /** What each coefficient is now taken to be. */
    public double[] means() {
        return means.clone();
    }

    /** Standard deviation of one value about the model, as it is now believed. */
    public double scatter() {
        return StrictMath.sqrt(sumOfSquares() / degrees);
    }

    /**
     * Logarithm of the evidence for the model since this earlier belief, but for what is the same for every model of the same values
     * with the same scatter to begin with: the larger, the better the model foretold them.
     */
    public double evidenceOver(Belief earlier) {
        return earlier.triangle.logDiagonal()
                - triangle.logDiagonal()
                + earlier.degrees * StrictMath.log(earlier.sumOfSquares()) / 2
                - degrees * StrictMath.log(sumOfSquares()) / 2;
    }

    private double sumOfSquares() {
        return priorLeft + triangle.left();
    }

    /** What the next value at this row will be. */
    public Forecast at(double[] row) {
        double scale = scatter() * StrictMath.hypot(1, triangle.reach(row));
        return new Forecast(middle(row), scale, (int) degrees, scale * widening());
    }

    private double widening() {
        double known = widening;
        if (known == 0) {
            known = StudentT.quantile(FOUR_IN_FIVE, (int) degrees) / Normal.quantile(FOUR_IN_FIVE);
            widening = known;
        }
        return known;
    }

    /** Where the middle of all values at this row lies, and how sure that is; the scatter of one value about it is not in it. */
    public Middle middleAt(double[] row) {
        return new Middle(middle(row), scatter() * triangle.reach(row));
    }

    /**
     * The same where so much more is known of what this row says than was believed beforehand: that it is 0, with this precision.
     *
     * @param precision negative for so much less
     */
    public Middle middleAt(double[] row, double precision) {
        double reach = triangle.reach(row);
        double sure = 1 / (reach * reach);
        return new Middle(middle(row) * sure / (sure + precision), scatter() / StrictMath.sqrt(sure + precision));
    }

    /** How many of its own scales a middle is off at most, with this probability; the same for all rows. */
    public double scalesOff(double probability) {
        return StudentT.quantile(probability, (int) degrees);
    }

    /** A middle and the scale of Student's t about it. */
    public record Middle(double value, double scale) {}

    /** With each coefficient besides believed to be 0, beforehand and with these precisions; no value is seen by that. */
    public Belief holding(double[] precisions) {
        Triangle held = triangle.copy();
        for (int column = 0; column < precisions.length; column++) {
            double[] row = new double[precisions.length];
            row[column] = StrictMath.sqrt(precisions[column]);
            held.take(row, 0);
        }
        return new Belief(held, degrees, priorLeft);
    }

    /** What the model says at this row. */
    public double middle(double[] row) {
        double middle = 0;
        for (int column = 0; column < row.length; column++) {
            middle += row[column] * means[column];
        }
        return middle;
    }

    /**
     * A value to come: Student's t about a middle.
     *
     * @param degrees of freedom
     * @param deviation of the normal distribution that four in five values stay below at the same point
     */
    public record Forecast(double middle, double scale, int degrees, double deviation) {
        /** The value that the next one stays below with this probability. */
        public double quantile(double probability) {
            return middle + scale * StudentT.quantile(probability, degrees);
        }

        /** Probability that the next value stays below this one. */
        public double below(double value) {
            return StudentT.probability((value - middle) / scale, degrees);
        }
    }
}
