package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.testing.Reference;

/** Univariate sums against the certified values of the NIST Statistical Reference Datasets. */
class SampleTest {
    @Test
    void num_acc_1_has_its_certified_mean_sd_and_autocorrelation() {
        Sample sample = Sample.of(List.of(10_000_001.0, 10_000_003.0, 10_000_002.0));
        assertEquals(10_000_002, sample.mean());
        assertEquals(1, sample.sd());
        assertEquals(-0.5, sample.lagOneAutocorrelation());
    }

    /** NumAcc4 is one 10000000.2 and then 500 pairs .1, .3; a sum of squares leaves nothing of its deviation. */
    @Test
    void num_acc_4_has_eight_digits_of_its_deviation() {
        List<Double> values = new ArrayList<>(List.of(10_000_000.2));
        for (int i = 0; i < 500; i++) {
            values.add(10_000_000.1);
            values.add(10_000_000.3);
        }
        Sample sample = Sample.of(values);
        assertDigits(14, 10_000_000.2, sample.mean());
        assertDigits(8, 0.1, sample.sd());
        assertDigits(8, -0.999, sample.lagOneAutocorrelation());
    }

    @ParameterizedTest
    @CsvSource({
        "Lew, 13",
        "Lottery, 13",
        "Mavro, 12.5",
        "Michelso, 13",
        "NumAcc1, 14",
        "NumAcc2, 13",
        "NumAcc3, 9",
        "NumAcc4, 8"
    })
    void a_set_has_its_certified_mean_sd_and_autocorrelation(String set, double digits) throws IOException {
        List<Double> values = Reference.rows("nist-strd/" + set + ".csv").stream()
                .map(row -> Double.parseDouble(row.get(0)))
                .toList();
        List<String> certified = Reference.rows("nist-strd/certified-univariate.csv").stream()
                .filter(row -> row.get(0).equals(set))
                .findFirst()
                .orElseThrow();
        Sample sample = Sample.of(values);
        assertEquals(Integer.parseInt(certified.get(1)), sample.size());
        assertDigits(14, Double.parseDouble(certified.get(2)), sample.mean());
        assertDigits(digits, Double.parseDouble(certified.get(3)), sample.sd());
        assertDigits(Math.min(digits, 12), Double.parseDouble(certified.get(4)), sample.lagOneAutocorrelation());
    }

    /** Hyndman and Fan 1996, type 8; the second data are those of an encyclopaedia's example of percentiles. */
    @ParameterizedTest
    @CsvSource({".25, 2.916666666666667", ".5, 5.5", ".8, 8.6", ".9, 9.633333333333333"})
    void a_quantile_of_one_to_ten_lies_where_type_8_says(double share, double expected) {
        Sample sample = Sample.of(
                DoubleStream.iterate(1, value -> value + 1).limit(10).boxed().toList());
        assertEquals(expected, sample.quantile(share), 1e-12);
    }

    @Test
    void four_tenths_of_five_values_lie_where_type_8_says() {
        assertEquals(27, Sample.of(List.of(50.0, 15.0, 20.0, 40.0, 35.0)).quantile(0.4), 1e-12);
    }

    /** Twelve gauge readings of the NIST/SEMATECH e-Handbook, 7.2.6.2, whose own rule (type 6) gives 95.1981; type 8 computed. */
    @Test
    void nine_tenths_of_twelve_readings_lie_where_type_8_says() {
        Sample gauge = Sample.of(List.of(
                95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990,
                95.1682));
        assertEquals(95.197243, gauge.quantile(0.9), 1e-6);
    }

    @Test
    void a_single_value_is_its_own_quantile_and_does_not_scatter() {
        Sample one = Sample.of(List.of(7.5));
        assertEquals(7.5, one.quantile(0.99));
        assertEquals(7.5, one.median());
        assertEquals(0, one.sd());
    }

    private static void assertDigits(double digits, double certified, double reached) {
        double right = -Math.log10(Math.abs(reached - certified) / Math.abs(certified));
        assertTrue(right >= digits, "%s has %.1f digits of %s".formatted(reached, right, certified));
    }
}
