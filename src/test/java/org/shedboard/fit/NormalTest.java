package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against values that any printed table agrees with, computed to more digits. */
class NormalTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "0.5, 0.6914624612740131",
        "1, 0.8413447460685429",
        "1.96, 0.9750021048517795",
        "2, 0.9772498680518208",
        "3, 0.9986501019683699",
        "-3, 0.0013498980316301",
        "-6, 9.865876450377e-10",
        "-8, 6.22096057427e-16"
    })
    void the_probability_below_is_that_of_the_tables(double z, double probability) {
        assertEquals(1, Normal.below(z) / probability, 1e-11);
    }

    @ParameterizedTest
    @CsvSource({
        "0.8, 0.8416212336",
        "0.9, 1.2815515655",
        "0.95, 1.6448536270",
        "0.975, 1.9599639845",
        "0.99, 2.3263478740"
    })
    void the_quantile_is_that_of_the_tables(double probability, double z) {
        assertEquals(z, Normal.quantile(probability), 5e-11);
        assertEquals(-z, Normal.quantile(1 - probability), 5e-11);
    }

    @Test
    void a_quantile_far_out_leads_back_to_its_probability() {
        for (double probability : new double[] {1e-12, 1e-6, 0.001, 0.3, 0.5}) {
            assertEquals(1, Normal.below(Normal.quantile(probability)) / probability, 1e-10);
        }
        assertThrows(IllegalArgumentException.class, () -> Normal.quantile(0));
    }
}
