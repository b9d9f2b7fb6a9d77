package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Learning from values, against worked cases in exact fractions. */
class BeliefTest {
    private static final double EXACT = 1e-12;
    private static final int DRAWN = 400;

    /** Midge wings: P. D. Hoff, A First Course in Bayesian Statistical Methods, section 5.3 (results from memory, exact here). */
    @Test
    void nine_midges_move_a_prior_mean_of_one_point_nine() {
        Belief belief = Belief.of(new double[] {1.9}, new double[] {1}, 0.1, 1);
        for (double wing : new double[] {1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08}) {
            belief = belief.after(new double[] {1}, wing);
        }
        assertEquals(1.814, belief.means()[0], EXACT);
        assertEquals(0.015324, belief.scatter() * belief.scatter(), EXACT);
    }

    /** Five pairs on a line with prior precisions 1 and 1/4, means 20 and 5, a = 2, b = 10: exact fractions, computed. */
    @Test
    void five_pairs_give_the_exact_posterior_and_the_exact_forecast() {
        Belief belief = fivePairs(line());
        assertArrayEquals(new double[] {3268.0 / 163, 1071.0 / 163}, belief.means(), EXACT);
        assertEquals(2268.0 / 163 / 4.5, belief.scatter() * belief.scatter(), EXACT);
        Belief.Forecast next = belief.at(new double[] {1, 3});
        assertEquals(9, next.degrees());
        assertEquals(39.7607361963, next.middle(), 1e-10);
        assertEquals(4.0120441116, next.scale() * next.scale(), 1e-10);
        assertEquals(41.5302018701, next.quantile(0.8), 1e-9);
        assertEquals(42.5309548812, next.quantile(0.9), 1e-9);
        assertEquals(0.8, next.below(next.quantile(0.8)), 1e-12);
    }

    @Test
    void the_order_of_the_values_does_not_matter() {
        Belief backwards = line();
        double[] values = {20, 26, 35, 38, 47};
        for (int x = 4; x >= 0; x--) {
            backwards = backwards.after(new double[] {1, x}, values[x]);
        }
        assertArrayEquals(fivePairs(line()).means(), backwards.means(), EXACT);
        assertEquals(fivePairs(line()).scatter(), backwards.scatter(), EXACT);
    }

    /** Least squares of the same five pairs: 20.0 and 6.6, by hand. */
    @Test
    void a_prior_that_says_nothing_leaves_least_squares() {
        Belief belief = fivePairs(Belief.of(new double[] {20, 5}, new double[] {0, 0}, 1, 1));
        assertArrayEquals(new double[] {20.0, 6.6}, belief.means(), EXACT);
    }

    /** NIST Statistical Reference Datasets; the digits that rotations reach without the correction that {@link LeastSquares} makes. */
    @ParameterizedTest
    @CsvSource({
        "Norris, 0, 1, 12", "Pontius, 0, 2, 11", "NoInt1, 1, 1, 14", "NoInt2, 1, 1, 14", "Wampler1, 0, 5, 9",
        "Wampler2, 0, 5, 12", "Wampler3, 0, 5, 9", "Wampler4, 0, 5, 8", "Wampler5, 0, 5, 6", "Filip, 0, 10, 7"
    })
    void a_prior_that_says_nothing_leaves_the_certified_coefficients(String set, int from, int to, double digits)
            throws IOException {
        assertCertified(NistSet.polynomial(set, from, to), digits);
    }

    @Test
    void a_prior_that_says_nothing_leaves_the_certified_coefficients_of_columns_nearly_alike() throws IOException {
        assertCertified(NistSet.columns("Longley"), 11);
    }

    /** The scatter that was believed before counts as one value more. */
    private static void assertCertified(NistSet set, double digits) throws IOException {
        int width = set.design()[0].length;
        double[] ones = new double[set.values().length];
        Arrays.fill(ones, 1);
        Belief belief =
                Belief.of(new double[width], new double[width], 1, 1).afterAll(set.design(), set.values(), ones);
        for (NistSet.Certified each : set.coefficients()) {
            NistSet.assertDigits(digits, each.value(), belief.means()[set.columnOf(each)]);
        }
        double squares = Math.pow(set.residualSd(), 2) * (ones.length - width) + 1;
        assertEquals(Math.sqrt(squares / (ones.length + 1)), belief.scatter(), 1e-7 * belief.scatter());
    }

    /** Truths drawn from what is believed before, 400 times: each coefficient lies in its interval as often as is said. */
    @ParameterizedTest
    @CsvSource({"0.5", "0.8", "0.95"})
    void drawn_coefficients_lie_in_their_intervals_as_often_as_is_said(double share) {
        Random random = new Random(4);
        int within = 0;
        for (int turn = 0; turn < DRAWN; turn++) {
            Drawn drawn = new Drawn(random);
            for (int column = 0; column < Drawn.WIDTH; column++) {
                within += Math.abs(drawn.truth[column] - drawn.belief.means()[column]) <= drawn.reach(column, share)
                        ? 1
                        : 0;
            }
        }
        assertEquals(share, within / (double) (DRAWN * Drawn.WIDTH), 0.03);
    }

    @Test
    void drawn_values_to_come_stay_below_their_quantiles_as_often_as_is_said() {
        Random random = new Random(5);
        int likely = 0;
        int safe = 0;
        for (int turn = 0; turn < 10 * DRAWN; turn++) {
            Drawn drawn = new Drawn(random);
            double[] row = Drawn.row(random);
            double next = drawn.valueAt(row, random);
            likely += next <= drawn.belief.at(row).quantile(0.5) ? 1 : 0;
            safe += next <= drawn.belief.at(row).quantile(0.8) ? 1 : 0;
        }
        assertEquals(0.5, likely / (10.0 * DRAWN), 0.025);
        assertEquals(0.8, safe / (10.0 * DRAWN), 0.02);
    }

    /** Four coefficients and a scatter as they are believed before, and what is believed after fifteen values. */
    private static final class Drawn {
        static final int WIDTH = 4;
        private static final double SCATTER = 0.4;
        private static final int DEGREES = 6;

        private final double[] truth = new double[WIDTH];
        private final double scatter;
        private final Belief belief;

        Drawn(Random random) {
            double squares = 0;
            for (int i = 0; i < DEGREES; i++) {
                squares += Math.pow(random.nextGaussian(), 2);
            }
            scatter = SCATTER * Math.sqrt(DEGREES / squares);
            for (int column = 0; column < WIDTH; column++) {
                truth[column] = 1 + scatter / Math.sqrt(2) * random.nextGaussian();
            }
            Belief seen = Belief.of(new double[] {1, 1, 1, 1}, new double[] {2, 2, 2, 2}, SCATTER, DEGREES);
            for (int i = 0; i < 15; i++) {
                double[] row = row(random);
                seen = seen.after(row, valueAt(row, random));
            }
            belief = seen;
        }

        static double[] row(Random random) {
            return random.doubles(WIDTH, -1, 1).toArray();
        }

        double valueAt(double[] row, Random random) {
            double value = scatter * random.nextGaussian();
            for (int column = 0; column < WIDTH; column++) {
                value += truth[column] * row[column];
            }
            return value;
        }

        /** How far from its mean a coefficient is said to lie at most: the scatter of one value taken out of what is forecast of it. */
        double reach(int column, double share) {
            double[] alone = new double[WIDTH];
            alone[column] = 1;
            Belief.Forecast forecast = belief.at(alone);
            double sd = Math.sqrt(Math.pow(forecast.scale(), 2) - Math.pow(belief.scatter(), 2));
            return sd * StudentT.quantile((1 + share) / 2, forecast.degrees());
        }
    }

    @Test
    void what_is_held_afterwards_is_as_if_it_had_been_believed_beforehand() {
        Belief plain = fivePairs(Belief.of(new double[2], new double[] {1e-9, 1e-9}, 2, 4));
        Belief held = plain.holding(new double[] {0.5, 3});
        Belief before = fivePairs(Belief.of(new double[2], new double[] {0.5, 3}, 2, 4));
        assertArrayEquals(before.means(), held.means(), 1e-6);
        assertEquals(before.scatter(), held.scatter(), 1e-6);
    }

    @Test
    void one_coefficient_held_less_is_as_if_it_alone_had_been_held_less() {
        double[] slope = {0, 1};
        Belief tight = fivePairs(Belief.of(new double[2], new double[] {1, 3}, 2, 4));
        Belief loose = fivePairs(Belief.of(new double[2], new double[] {1, 0.5}, 2, 4));
        Belief.Middle freed = tight.middleAt(slope, 0.5 - 3);
        Belief.Middle own = loose.middleAt(slope);
        assertEquals(own.value(), freed.value(), EXACT);
        assertEquals(own.scale() / loose.scatter(), freed.scale() / tight.scatter(), EXACT);
    }

    /** Where the middle lies is the posterior of Hoff's mean: a tenth of the variance of one wing, after ten of them. */
    @Test
    void the_middle_is_surer_than_the_next_value() {
        Belief belief = Belief.of(new double[] {1.9}, new double[] {1}, 0.1, 1);
        for (double wing : new double[] {1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08}) {
            belief = belief.after(new double[] {1}, wing);
        }
        Belief.Middle middle = belief.middleAt(new double[] {1});
        assertEquals(1.814, middle.value(), EXACT);
        assertEquals(0.015324 / 10, middle.scale() * middle.scale(), EXACT);
        assertEquals(0.015324 * 1.1, square(belief.at(new double[] {1}).scale()), EXACT);
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void a_belief_without_scatter_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Belief.of(new double[1], new double[1], 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Belief.of(new double[1], new double[1], 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Belief.of(new double[1], new double[2], 1, 1));
    }

    /** The scatter is b / a = 10 / 2 with 2 a = 4 degrees. */
    private static Belief line() {
        return Belief.of(new double[] {20, 5}, new double[] {1, 0.25}, Math.sqrt(5), 4);
    }

    private static Belief fivePairs(Belief prior) {
        double[] values = {20, 26, 35, 38, 47};
        Belief belief = prior;
        for (int x = 0; x < values.length; x++) {
            belief = belief.after(new double[] {1, x}, values[x]);
        }
        return belief;
    }
}
