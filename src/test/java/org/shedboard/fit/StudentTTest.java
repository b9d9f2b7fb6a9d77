package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
    /** Any printed table of Student's t has these. */
    @ParameterizedTest
    @CsvSource({
        "1, 1.3764, 3.0777, 6.3138, 12.7062, 63.6567",
        "2, 1.0607, 1.8856, 2.9200, 4.3027, 9.9248",
        "5, .9195, 1.4759, 2.0150, 2.5706, 4.0321",
        "9, .8834, 1.3830, 1.8331, 2.2622, 3.2498",
        "10, .8791, 1.3722, 1.8125, 2.2281, 3.1693",
        "30, .8538, 1.3104, 1.6973, 2.0423, 2.7500"
    })
    void a_quantile_is_the_one_in_printed_tables(
            int degrees, double p80, double p90, double p95, double p975, double p995) {
        assertEquals(p80, StudentT.quantile(0.8, degrees), 0.00005001);
        assertEquals(p90, StudentT.quantile(0.9, degrees), 0.00005001);
        assertEquals(p95, StudentT.quantile(0.95, degrees), 0.00005001);
        assertEquals(p975, StudentT.quantile(0.975, degrees), 0.00005001);
        assertEquals(p995, StudentT.quantile(0.995, degrees), 0.00005001);
    }

    @ParameterizedTest
    @CsvSource({".8, .8416212336", ".95, 1.6448536270", ".99, 2.3263478740"})
    void with_very_many_degrees_it_is_the_normal_quantile(double probability, double normal) {
        assertEquals(normal, StudentT.quantile(probability, 1_000_000), 0.00001);
    }

    @ParameterizedTest
    @CsvSource({"1, .03", "2, .4", "3, .5", "4, .77", "17, .999"})
    void the_probability_of_a_quantile_is_the_one_it_was_asked_for(int degrees, double probability) {
        assertEquals(
                probability, StudentT.probability(StudentT.quantile(probability, degrees), degrees), 0.000000000001);
    }

    @Test
    void there_is_no_quantile_without_degrees_of_freedom() {
        assertThrows(IllegalArgumentException.class, () -> StudentT.quantile(0.9, 0));
    }
}
