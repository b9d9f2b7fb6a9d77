package org.shedboard.fit;

/**
 * A linear model's rows with their values, brought into triangular form as they come: each new row is turned into the triangle, one
 * cell at a time, by plane rotations (W. Givens, Journal of the SIAM 6, 1958), never by squaring the matrix, which would lose half of the
 * digits where columns are nearly alike. A row costs as many steps as the triangle has cells, however many rows it has taken in.
 */
final class Triangle {
    private final int columns;
    /** Cell (row, column) of the triangle stands at row * columns + column; those left of the diagonal are 0. */
    private final double[] cells;
    /** The values, turned as the rows were. */
    private final double[] values;
    /** What the rows leave over that no coefficients can explain: a sum of squares. */
    private double left;

    private Triangle(int columns, double[] cells, double[] values, double left) {
        this.columns = columns;
        this.cells = cells;
        this.values = values;
        this.left = left;
    }

    static Triangle empty(int columns) {
        return new Triangle(columns, new double[columns * columns], new double[columns], 0);
    }

    /** All of these rows, which go with the values. */
    static Triangle of(double[][] design, double[] observed) {
        Triangle triangle = empty(design[0].length);
        for (int row = 0; row < design.length; row++) {
            triangle.take(design[row].clone(), observed[row]);
        }
        return triangle;
    }

    int columns() {
        return columns;
    }

    double left() {
        return left;
    }

    Triangle plus(double[] row, double value) {
        Triangle next = copy();
        next.take(row.clone(), value);
        return next;
    }

    Triangle copy() {
        return new Triangle(columns, cells.clone(), values.clone(), left);
    }

    /** Turns a row into this triangle, and is free to use it up; what is left of its value goes to what no coefficients explain. */
    void take(double[] row, double value) {
        double rest = value;
        for (int pivot = 0; pivot < columns; pivot++) {
            if (row[pivot] != 0) {
                int at = pivot * columns;
                double length = StrictMath.hypot(cells[at + pivot], row[pivot]);
                double cosine = cells[at + pivot] / length;
                double sine = row[pivot] / length;
                for (int column = pivot; column < columns; column++) {
                    double above = cells[at + column];
                    cells[at + column] = sum(cosine, above, sine, row[column]);
                    row[column] = sum(cosine, row[column], -sine, above);
                }
                double above = values[pivot];
                values[pivot] = sum(cosine, above, sine, rest);
                rest = sum(cosine, rest, -sine, above);
            }
        }
        left += rest * rest;
    }

    /** ab + cd, rounded as if once: the terms nearly cancel where columns are nearly alike. */
    private static double sum(double a, double b, double c, double d) {
        double product = c * d;
        return Math.fma(a, b, product) + Math.fma(c, d, -product);
    }

    /** Whether every column says something that those before it do not; {@code ownPart} is the least share of it that counts. */
    boolean isFull(double ownPart) {
        for (int column = 0; column < columns; column++) {
            double length = 0;
            for (int row = 0; row <= column; row++) {
                length = StrictMath.hypot(length, cells[row * columns + column]);
            }
            if (!(Math.abs(cells[column * columns + column]) > ownPart * length)) {
                return false;
            }
        }
        return true;
    }

    /** Logarithm of the root of the determinant of what the rows say of the coefficients. */
    double logDiagonal() {
        double sum = 0;
        for (int column = 0; column < columns; column++) {
            sum += StrictMath.log(Math.abs(cells[column * columns + column]));
        }
        return sum;
    }

    /** The coefficients that leave the least over. */
    double[] solved() {
        double[] solution = new double[columns];
        for (int row = columns - 1; row >= 0; row--) {
            double rest = values[row];
            for (int column = row + 1; column < columns; column++) {
                rest -= cells[row * columns + column] * solution[column];
            }
            solution[row] = rest / cells[row * columns + row];
        }
        return solution;
    }

    /** By how much less than the scatter of one value the fitted value at this row scatters: the root of x (X'X)^-1 x'. */
    double reach(double[] at) {
        double[] weights = new double[columns];
        double length = 0;
        for (int column = 0; column < columns; column++) {
            double rest = at[column];
            for (int earlier = 0; earlier < column; earlier++) {
                rest -= cells[earlier * columns + column] * weights[earlier];
            }
            weights[column] = rest / cells[column * columns + column];
            length = StrictMath.hypot(length, weights[column]);
        }
        return length;
    }
}
