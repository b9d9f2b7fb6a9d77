package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked examples of the NIST/SEMATECH e-Handbook; the data of the first from memory, they reproduce its figures. */
class ControlChartTest {
    private static final List<Double> FLOW = List.of(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);
    private static final List<Double> EWMA = List.of(
            52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4,
            53.6, 52.1);

    @Test
    void ten_flow_rates_have_the_limits_of_section_6_3_2_2() {
        ControlChart.Limits limits = ControlChart.ofIndividuals(FLOW);
        assertEquals(50.81, limits.middle(), 1e-9);
        assertEquals(55.8041, limits.high(), 5e-5);
        assertEquals(45.8159, limits.low(), 5e-5);
        assertTrue(FLOW.stream().allMatch(limits::holds));
    }

    @Test
    void twenty_values_have_the_weighted_means_and_limits_of_section_6_3_2_4() {
        double[] means = ControlChart.weighted(50, 0.3, EWMA).stream()
                .mapToDouble(mean -> mean)
                .toArray();
        assertArrayEquals(
                new double[] {
                    50.00, 50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52,
                    50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99
                },
                means,
                0.0051);
        ControlChart.Limits late = ControlChart.ofWeighted(50, 2.0539, 0.3, 3, 1000);
        assertEquals(52.588432, late.high(), 5e-7);
        assertEquals(47.411568, late.low(), 5e-7);
    }

    @Test
    void the_first_limits_are_narrower() {
        assertEquals(51.848510, ControlChart.ofWeighted(50, 2.0539, 0.3, 3, 1).high(), 5e-7);
        assertEquals(52.256394, ControlChart.ofWeighted(50, 2.0539, 0.3, 3, 2).high(), 5e-7);
        assertEquals(52.431406, ControlChart.ofWeighted(50, 2.0539, 0.3, 3, 3).high(), 5e-7);
    }
}
