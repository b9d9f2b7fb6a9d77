package org.shedboard.pack.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantilesTest {
    /** The normal distribution as tabled in Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "0.1, 0.5398278373",
        "0.5, 0.6914624613",
        "1, 0.8413447461",
        "1.5, 0.9331927987",
        "2, 0.9772498681",
        "2.5, 0.9937903347",
        "3, 0.9986501020",
        "3.5, 0.9997673709",
        "4, 0.9999683288"
    })
    void the_share_of_values_up_to_a_point_is_that_of_the_normal_distribution(double point, double share) {
        double[] values = Quantiles.values();
        double upTo =
                (double) Arrays.stream(values).filter(value -> value <= point).count() / values.length;
        assertEquals(share, upTo, Quantiles.LARGEST_ERROR + 1e-10);
        double below =
                (double) Arrays.stream(values).filter(value -> value < -point).count() / values.length;
        assertEquals(1 - share, below, Quantiles.LARGEST_ERROR + 1e-10);
    }

    @Test
    void a_value_is_the_quantile_in_the_middle_of_its_share() {
        // the 0.9986501020 quantile is 3, from the same table; shares 4089 and 4090 of 4096 lie around it
        double[] values = Quantiles.values();
        assertTrue(values[4089] < 3 && 3 < values[4090], values[4089] + " " + values[4090]);
        assertEquals(3.668, values[4095], 0.001, "the middle of the last share leaves 1 in 8192 above it");
        for (int index = 1; index < values.length; index++) {
            assertTrue(values[index] > values[index - 1]);
        }
    }

    @Test
    void their_mean_is_0_and_their_deviation_as_said() {
        double[] values = Quantiles.values();
        assertEquals(0, Arrays.stream(values).sum(), 1e-9);
        double squares = Arrays.stream(values).map(value -> value * value).sum();
        assertEquals(0.9998, Math.sqrt(squares / values.length), 0.00005);
    }

    @Test
    void factors_are_powers_of_e_and_have_the_median_1() {
        double[] values = Quantiles.values();
        double[] factors = Quantiles.factors(0.3);
        for (int index = 0; index < values.length; index++) {
            assertEquals(Math.exp(0.3 * values[index]), factors[index], 1e-12);
        }
        assertTrue(factors[Quantiles.COUNT / 2 - 1] < 1 && factors[Quantiles.COUNT / 2] > 1);
    }

    @Test
    void the_tables_are_the_same_on_every_processor() {
        // made once; another processor that got another number would draw other days
        assertEquals(HASH_OF_VALUES, Arrays.hashCode(Quantiles.values()));
        assertEquals(HASH_OF_FACTORS, Arrays.hashCode(Quantiles.factors(0.3)));
    }

    private static final int HASH_OF_VALUES = -1839823679;
    private static final int HASH_OF_FACTORS = -1003362903;

    @Test
    void an_index_is_the_first_bits_of_a_draw() {
        assertEquals(0, Quantiles.index(0));
        assertEquals(Quantiles.COUNT - 1, Quantiles.index(-1));
        assertEquals(Quantiles.COUNT / 2, Quantiles.index(Long.MIN_VALUE));
    }
}
