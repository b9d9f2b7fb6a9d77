package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Learning from values, against worked cases in exact fractions. */
class BeliefTest {
    private static final double EXACT = 1e-12;

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
