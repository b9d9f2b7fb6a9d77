package org.shedboard.register;

/**
 * A linear model fitted to values by least squares.
 *
 * <p>The rows are brought into triangular form by mirroring them (Householder), never by squaring the matrix: the squares would lose half
 * of the digits where columns are nearly alike.
 */
final class LeastSquares {
    /** A column whose own part is shorter than this share of it says nothing that those before it do not. */
    private static final double OWN_PART = 1e-14;

    private final int rows;
    /** Columns of the design; their upper ends are the triangle once it is made. */
    private final double[][] columns;
    /** The values, mirrored as the columns were. */
    private final double[] values;

    private final double[] coefficients;

    private LeastSquares(double[][] design, double[] observed) {
        rows = observed.length;
        columns = transposed(design);
        values = observed.clone();
        for (int pivot = 0; pivot < columns.length; pivot++) {
            mirrorFrom(pivot);
        }
        coefficients = solved();
    }

    /** Fits one coefficient for each column of the design; its rows go with the observed values. */
    static LeastSquares of(double[][] design, double[] observed) {
        int width = design.length == 0 ? 0 : design[0].length;
        if (width == 0 || design.length < width || design.length != observed.length) {
            throw new IllegalArgumentException(
                    "%d rows of %d columns do not go with %d values".formatted(design.length, width, observed.length));
        }
        return new LeastSquares(design, observed);
    }

    private static double[][] transposed(double[][] design) {
        double[][] columns = new double[design[0].length][design.length];
        for (int row = 0; row < design.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                columns[column][row] = design[row][column];
            }
        }
        return columns;
    }

    private void mirrorFrom(int pivot) {
        double length = length(columns[pivot], pivot);
        if (length <= OWN_PART * length(columns[pivot], 0)) {
            throw new IllegalArgumentException("column %d says nothing that those before it do not".formatted(pivot));
        }
        double[] mirror = columns[pivot].clone();
        mirror[pivot] += Math.copySign(length, mirror[pivot]);
        for (int column = pivot; column < columns.length; column++) {
            reflect(columns[column], mirror, pivot);
        }
        reflect(values, mirror, pivot);
    }

    private double length(double[] vector, int from) {
        double length = 0;
        for (int row = from; row < rows; row++) {
            length = StrictMath.hypot(length, vector[row]);
        }
        return length;
    }

    private void reflect(double[] vector, double[] mirror, int from) {
        double along = 0;
        double square = 0;
        for (int row = from; row < rows; row++) {
            along += mirror[row] * vector[row];
            square += mirror[row] * mirror[row];
        }
        for (int row = from; row < rows; row++) {
            vector[row] -= 2 * along / square * mirror[row];
        }
    }

    private double[] solved() {
        double[] solution = new double[columns.length];
        for (int row = columns.length - 1; row >= 0; row--) {
            double rest = values[row];
            for (int column = row + 1; column < columns.length; column++) {
                rest -= columns[column][row] * solution[column];
            }
            solution[row] = rest / columns[row][row];
        }
        return solution;
    }

    double coefficient(int column) {
        return coefficients[column];
    }

    /** Values beyond those that the coefficients use up. */
    int degreesOfFreedom() {
        return rows - columns.length;
    }

    /** Standard deviation of what the model leaves over; 0 where it passes through all values for want of more. */
    double residualSd() {
        return degreesOfFreedom() == 0 ? 0 : length(values, columns.length) / StrictMath.sqrt(degreesOfFreedom());
    }

    /** Standard deviation of the estimate of one coefficient. */
    double sdOf(int column) {
        double[] unit = new double[columns.length];
        unit[column] = 1;
        return sdAt(unit);
    }

    /** Standard deviation of the fitted value at a row. */
    double sdAt(double[] row) {
        double[] weights = new double[columns.length];
        double length = 0;
        for (int column = 0; column < columns.length; column++) {
            double rest = row[column];
            for (int earlier = 0; earlier < column; earlier++) {
                rest -= columns[column][earlier] * weights[earlier];
            }
            weights[column] = rest / columns[column][column];
            length = StrictMath.hypot(length, weights[column]);
        }
        return residualSd() * length;
    }
}
