package org.shedboard.fit;

/** A linear model fitted to values by least squares. */
final class LeastSquares {
    /** A column whose own part is shorter than this share of it says nothing that those before it do not. */
    private static final double OWN_PART = 1e-14;

    private final int rows;
    private final Triangle triangle;
    private final double[] coefficients;

    private LeastSquares(int rows, Triangle triangle, double[] coefficients) {
        this.rows = rows;
        this.triangle = triangle;
        this.coefficients = coefficients;
    }

    /** Fits one coefficient for each column of the design; its rows go with the observed values. */
    static LeastSquares of(double[][] design, double[] observed) {
        int width = design.length == 0 ? 0 : design[0].length;
        if (width == 0 || design.length < width || design.length != observed.length) {
            throw new IllegalArgumentException(
                    "%s rows of %s columns do not go with %s values".formatted(design.length, width, observed.length));
        }
        Triangle triangle = Triangle.of(design, observed);
        if (!triangle.isFull(OWN_PART)) {
            throw new IllegalArgumentException("a column says nothing that those before it do not");
        }
        return new LeastSquares(design.length, triangle, refined(triangle.solved(), design, observed));
    }

    /** The coefficients, put right by a fit to what they leave over: rounding that grew where columns are nearly alike comes off. */
    private static double[] refined(double[] first, double[][] design, double[] observed) {
        double[] left = new double[observed.length];
        for (int row = 0; row < observed.length; row++) {
            left[row] = left(first, design[row], observed[row]);
        }
        double[] correction = Triangle.of(design, left).solved();
        double[] refined = first.clone();
        for (int column = 0; column < refined.length; column++) {
            refined[column] += correction[column];
        }
        return refined;
    }

    /** The value less the fitted one, with what rounding takes from each product and sum added back (T. J. Dekker, 1971). */
    private static double left(double[] coefficients, double[] row, double value) {
        double sum = value;
        double lost = 0;
        for (int column = 0; column < row.length; column++) {
            double product = -coefficients[column] * row[column];
            double next = sum + product;
            double back = next - sum;
            lost += (sum - (next - back)) + (product - back);
            lost += Math.fma(-coefficients[column], row[column], -product);
            sum = next;
        }
        return sum + lost;
    }

    double coefficient(int column) {
        return coefficients[column];
    }

    /** Values beyond those that the coefficients use up. */
    int degreesOfFreedom() {
        return rows - triangle.columns();
    }

    /** Standard deviation of what the model leaves over; 0 where it passes through all values for want of more. */
    double residualSd() {
        return degreesOfFreedom() == 0 ? 0 : StrictMath.sqrt(triangle.left() / degreesOfFreedom());
    }

    /** Standard deviation of the estimate of one coefficient. */
    double sdOf(int column) {
        double[] unit = new double[triangle.columns()];
        unit[column] = 1;
        return sdAt(unit);
    }

    /** Standard deviation of the fitted value at a row. */
    double sdAt(double[] row) {
        return residualSd() * triangle.reach(row);
    }
}
