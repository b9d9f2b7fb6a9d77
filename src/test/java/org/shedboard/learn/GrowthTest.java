package org.shedboard.learn;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Minutes by mud grade, then by depth. */
class GrowthTest {
    @Test
    void what_rises_already_is_left_alone() {
        double[][] rising = {{5, 10, 20}, {5, 12, 21}, {9, 12, 30}, {20, 40, 41}};
        assertSame(rising, Growth.rising(rising));
    }

    @Test
    void a_dirtier_machine_is_never_said_to_be_quicker() {
        double[][] minutes = {{10, 10, 10}, {20, 20, 20}, {40, 40, 40}, {30, 30, 30}};
        assertSame(new double[][] {{10, 10, 10}, {20, 20, 20}, {35, 35, 35}, {35, 35, 35}}, Growth.rising(minutes));
    }

    @Test
    void a_deeper_look_is_never_said_to_be_shorter() {
        double[][] minutes = {{20, 10, 40}, {20, 10, 40}, {20, 10, 40}, {20, 10, 40}};
        assertArrayEquals(new double[] {15, 15, 40}, Growth.rising(minutes)[2], 1e-9);
    }

    @Test
    void whatever_is_believed_falls_neither_with_mud_nor_with_depth_and_keeps_its_mean() {
        Random random = new Random(7);
        for (int round = 0; round < 500; round++) {
            double[][] minutes = drawn(random);
            double[][] rising = Growth.rising(minutes);
            for (int mud = 0; mud < 4; mud++) {
                for (int depth = 0; depth < 3; depth++) {
                    assertTrue(mud == 0 || rising[mud][depth] >= rising[mud - 1][depth] - 1e-9, "mud, round " + round);
                    assertTrue(
                            depth == 0 || rising[mud][depth] >= rising[mud][depth - 1] - 1e-9, "depth, round " + round);
                }
            }
            assertEquals(sum(minutes), sum(rising), 1e-6);
        }
    }

    private static double[][] drawn(Random random) {
        double[][] minutes = new double[4][3];
        for (double[] row : minutes) {
            for (int depth = 0; depth < row.length; depth++) {
                row[depth] = 10 + 90 * random.nextDouble();
            }
        }
        return minutes;
    }

    private static double sum(double[][] minutes) {
        double sum = 0;
        for (double[] row : minutes) {
            for (double each : row) {
                sum += each;
            }
        }
        return sum;
    }

    private static void assertSame(double[][] expected, double[][] actual) {
        for (int mud = 0; mud < expected.length; mud++) {
            assertArrayEquals(expected[mud], actual[mud], 1e-9, "mud " + mud);
        }
    }
}
