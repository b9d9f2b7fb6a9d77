package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

class PooledTest {
    @Test
    void figures_that_rise_stay() {
        assertArrayEquals(new double[] {0, 8, 18, 30}, Pooled.rising(new double[] {0, 8, 18, 30}, ones(4)));
    }

    @Test
    void two_that_fall_become_their_mean() {
        assertArrayEquals(new double[] {1, 2.5, 2.5, 4}, Pooled.rising(new double[] {1, 3, 2, 4}, ones(4)));
    }

    @Test
    void the_heavier_of_two_moves_less() {
        assertArrayEquals(new double[] {2.25, 2.25}, Pooled.rising(new double[] {3, 2}, new double[] {1, 3}));
    }

    @Test
    void a_late_low_figure_pulls_all_before_it_that_are_higher() {
        assertArrayEquals(new double[] {2, 2, 2}, Pooled.rising(new double[] {3, 2, 1}, ones(3)));
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }
}
