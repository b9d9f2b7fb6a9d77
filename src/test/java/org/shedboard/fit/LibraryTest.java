package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fits, beliefs and quantiles on random data beside those of a library for all purposes, which shares no code with them. */
class LibraryTest {
    private static final int DESIGNS = 300 * Integer.getInteger("proof.scale", 1);
    private static final int QUANTILES = 2000 * Integer.getInteger("proof.scale", 1);

    @Test
    void least_squares_of_random_designs_are_the_librarys() {
        for (int seed = 0; seed < DESIGNS; seed++) {
            Drawn drawn = new Drawn(seed);
            LeastSquares ours = LeastSquares.of(drawn.design, drawn.observed);
            OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
            library.setNoIntercept(true);
            library.newSampleData(drawn.observed, drawn.design);
            double[] coefficients = library.estimateRegressionParameters();
            double[] errors = library.estimateRegressionParametersStandardErrors();
            for (int column = 0; column < coefficients.length; column++) {
                assertClose(coefficients[column], ours.coefficient(column), "coefficient, seed " + seed);
                assertClose(errors[column], ours.sdOf(column), "its deviation, seed " + seed);
            }
            assertClose(library.estimateRegressionStandardError(), ours.residualSd(), "residual, seed " + seed);
        }
    }

    /** The posterior by its formulas, with the matrices squared and solved by the library. */
    @Test
    void beliefs_of_random_designs_are_those_of_the_formulas_in_the_librarys_matrices() {
        for (int seed = 0; seed < DESIGNS; seed++) {
            Drawn drawn = new Drawn(seed);
            double[] priorMeans = drawn.numbers(drawn.width());
            double[] precisions = new double[drawn.width()];
            for (int column = 0; column < precisions.length; column++) {
                precisions[column] = 0.1 + 5 * drawn.random.nextDouble();
            }
            Belief ours =
                    Belief.of(priorMeans, precisions, 0.7, 6).afterAll(drawn.design, drawn.observed, drawn.ones());
            assertPosterior(drawn, priorMeans, precisions, ours, seed);
        }
    }

    private static void assertPosterior(Drawn drawn, double[] priorMeans, double[] precisions, Belief ours, int seed) {
        RealMatrix design = new Array2DRowRealMatrix(drawn.design);
        RealVector observed = new ArrayRealVector(drawn.observed);
        RealMatrix prior = MatrixUtils.createRealDiagonalMatrix(precisions);
        RealMatrix precision = prior.add(design.transpose().multiply(design));
        CholeskyDecomposition solver = new CholeskyDecomposition(precision);
        RealVector before = new ArrayRealVector(priorMeans);
        RealVector weighted = prior.operate(before).add(design.transpose().operate(observed));
        RealVector means = solver.getSolver().solve(weighted);
        double squares = 6 * 0.7 * 0.7
                + observed.dotProduct(observed)
                + before.dotProduct(prior.operate(before))
                - means.dotProduct(weighted);
        double degrees = 6 + drawn.observed.length;
        for (int column = 0; column < drawn.width(); column++) {
            assertClose(means.getEntry(column), ours.means()[column], "mean, seed " + seed);
        }
        assertClose(Math.sqrt(squares / degrees), ours.scatter(), "scatter, seed " + seed);
        RealVector at = new ArrayRealVector(drawn.numbers(drawn.width()));
        double scale = Math.sqrt(
                squares / degrees * (1 + at.dotProduct(solver.getSolver().solve(at))));
        Belief.Forecast forecast = ours.at(at.toArray());
        assertClose(scale, forecast.scale(), "scale of a forecast, seed " + seed);
        assertClose(
                at.dotProduct(means) + scale * new TDistribution(degrees).inverseCumulativeProbability(0.8),
                forecast.quantile(0.8),
                "safe, seed " + seed);
    }

    @Test
    void normal_and_log_normal_quantiles_and_probabilities_are_the_librarys() {
        Random random = new Random(31);
        NormalDistribution normal = new NormalDistribution(0, 1);
        for (int i = 0; i < QUANTILES; i++) {
            double share = 1e-6 + (1 - 2e-6) * random.nextDouble();
            double z = 6 * random.nextGaussian() / 2;
            assertEquals(normal.inverseCumulativeProbability(share), Normal.quantile(share), 1e-8, "at " + share);
            assertEquals(normal.cumulativeProbability(z), Normal.below(z), 1e-12, "below " + z);
            assertEquals(normal.density(z), Normal.density(z), 1e-15, "density at " + z);
            LogNormal ours = new LogNormal(8 * random.nextDouble() - 2, 0.05 + random.nextDouble());
            LogNormalDistribution library = new LogNormalDistribution(ours.mu(), ours.sigma());
            assertClose(library.inverseCumulativeProbability(share), ours.quantile(share), ours + " at " + share);
            assertClose(library.getNumericalMean(), ours.mean(), "mean of " + ours);
            assertClose(library.getNumericalVariance(), ours.variance(), "variance of " + ours);
            assertEquals(library.cumulativeProbability(ours.mean()), ours.below(ours.mean()), 1e-12, ours.toString());
        }
    }

    /** On both sides of where the sums give way to the series about the normal quantile. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7, 12, 37, 148, 499, 500, 501, 1000, 5012, 20_012})
    void quantiles_and_probabilities_of_students_t_are_the_librarys(int degrees) {
        Random random = new Random(degrees);
        TDistribution library = new TDistribution(degrees);
        for (int i = 0; i < QUANTILES / 20; i++) {
            double share = 0.001 + 0.998 * random.nextDouble();
            double t = StudentT.quantile(share, degrees);
            assertEquals(share, library.cumulativeProbability(t), 1e-10, "at " + share);
            assertEquals(library.cumulativeProbability(t), StudentT.probability(t, degrees), 1e-10, "below " + t);
        }
    }

    private static void assertClose(double expected, double actual, String what) {
        assertEquals(expected, actual, 1e-8 * Math.max(1, Math.abs(expected)), what);
    }

    /** Two to nine columns, three to forty more rows, a scatter of one about coefficients near three. */
    private static final class Drawn {
        private final Random random;
        private final double[][] design;
        private final double[] observed;

        Drawn(long seed) {
            random = new Random(seed);
            int width = 2 + random.nextInt(8);
            double[] truth = numbers(width);
            design = new double[width + 3 + random.nextInt(38)][];
            observed = new double[design.length];
            for (int row = 0; row < design.length; row++) {
                design[row] = numbers(width);
                design[row][0] = 1;
                observed[row] = random.nextGaussian();
                for (int column = 0; column < width; column++) {
                    observed[row] += 3 * truth[column] * design[row][column];
                }
            }
        }

        int width() {
            return design[0].length;
        }

        double[] ones() {
            double[] ones = new double[design.length];
            Arrays.fill(ones, 1);
            return ones;
        }

        double[] numbers(int count) {
            return random.doubles(count, -1, 1).map(value -> value * 2).toArray();
        }
    }
}
