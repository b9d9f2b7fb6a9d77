package org.shedboard.learn;

import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.shedboard.fit.LogNormal;

/**
 * The forecaster that nobody can beat in a drawn shop: told how its truth was drawn, how far its work scatters and what the work on one
 * machine shares, it takes all sorts together and weighs each piece exactly. Worked out with a library's matrices, as a normal process
 * whose covariance is that of the drawing; no code of ours but the columns is in it.
 */
final class ExactPosterior implements HeldOut.Forecaster {
    private final List<Lesson> lessons;
    private final Columns columns;
    private final double[][] rows;
    private final DecompositionSolver solver;
    private final RealVector solved;

    ExactPosterior(List<Lesson> lessons) {
        this.lessons = lessons;
        this.columns = new Columns(lessons, Map.of(), false);
        this.rows = lessons.stream().map(this::row).toArray(double[][]::new);
        RealMatrix covariance = MatrixUtils.createRealMatrix(lessons.size(), lessons.size());
        for (int i = 0; i < lessons.size(); i++) {
            double[] ofTruths = covariances(lessons.get(i), rows[i]);
            for (int j = 0; j < lessons.size(); j++) {
                covariance.setEntry(i, j, ofTruths[j] + scatter(i, j));
            }
        }
        this.solver = new CholeskyDecomposition(covariance).getSolver();
        this.solved = solver.solve(new ArrayRealVector(
                lessons.stream().mapToDouble(Lesson::logRatio).toArray()));
    }

    private double scatter(int i, int j) {
        if (i == j) {
            return DrawnShop.SPREAD * DrawnShop.SPREAD;
        }
        boolean isOneVisit = lessons.get(i).visitId().equals(lessons.get(j).visitId());
        return isOneVisit ? DrawnShop.MACHINE * DrawnShop.MACHINE : 0;
    }

    /** The row of the columns, each in deviations of what was drawn for it. */
    private double[] row(Lesson lesson) {
        double[] row = columns.row(lesson.circumstances());
        for (int column = 0; column < row.length; column++) {
            row[column] *= columns.all().get(column).deviation();
        }
        return row;
    }

    /** How the truths of a piece of work and of each that was learned from vary together; each sort's were drawn apart. */
    private double[] covariances(Lesson lesson, double[] row) {
        double[] all = new double[rows.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = lessons.get(i).sort() == lesson.sort() ? product(rows[i], row) : 0;
        }
        return all;
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int column = 0; column < one.length; column++) {
            sum += one[column] * other[column];
        }
        return sum;
    }

    @Override
    public LogNormal of(Lesson lesson) {
        double[] row = row(lesson);
        RealVector to = new ArrayRealVector(covariances(lesson, row));
        double unsure = product(row, row) - to.dotProduct(solver.solve(to));
        return new LogNormal(
                Math.log(lesson.catalogueMinutes()) + to.dotProduct(solved),
                Math.sqrt(DrawnShop.SPREAD * DrawnShop.SPREAD + unsure));
    }
}
