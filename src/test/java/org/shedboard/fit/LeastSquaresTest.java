package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.shedboard.fit.NistSet.assertDigits;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fits against the certified values of the NIST Statistical Reference Datasets, linear regression. */
class LeastSquaresTest {
    /** Data of set Norris: value, x. */
    private static final double[][] NORRIS = {
        {0.1, 0.2}, {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1}, {228.1, 226.5}, {668.5, 666.3},
        {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4}, {0.1, 0.6}, {778.1, 775.5},
        {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6}, {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8},
        {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3}, {0.6, 0.3}, {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2},
        {998.5, 999.0}, {778.9, 779.0}, {10.2, 11.1}, {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9},
        {0.2, 0.5}
    };

    @Test
    void a_line_through_norris_has_its_certified_coefficients() {
        LeastSquares fit = fitted(NORRIS, 0, 1);
        assertDigits(10, -0.262323073774029, fit.coefficient(0));
        assertDigits(10, 1.00211681802045, fit.coefficient(1));
        assertDigits(10, 0.232818234301152, fit.sdOf(0));
        assertDigits(10, 0.429796848199937e-3, fit.sdOf(1));
        assertDigits(10, 0.884796396144373, fit.residualSd());
        assertEquals(34, fit.degreesOfFreedom());
    }

    @Test
    void a_line_through_the_origin_of_no_int_2_has_its_certified_slope() {
        LeastSquares fit = fitted(new double[][] {{3, 4}, {4, 5}, {4, 6}}, 1, 1);
        assertDigits(14, 8.0 / 11, fit.coefficient(0));
        assertDigits(13, 0.420827318078432e-1, fit.sdOf(0));
        assertDigits(13, 0.369274472937998, fit.residualSd());
    }

    /** A little fewer digits than rotations with one correction reach; squaring the matrix would leave 7 of Longley and none of Filip. */
    @ParameterizedTest
    @CsvSource({
        "Norris, 0, 1, 13", "Pontius, 0, 2, 12", "NoInt1, 1, 1, 14", "NoInt2, 1, 1, 14", "Wampler1, 0, 5, 12",
        "Wampler2, 0, 5, 13", "Wampler3, 0, 5, 11", "Wampler4, 0, 5, 9", "Wampler5, 0, 5, 7", "Filip, 0, 10, 7"
    })
    void a_polynomial_has_its_certified_coefficients(String set, int from, int to, double digits) throws IOException {
        assertCertified(NistSet.polynomial(set, from, to), digits);
    }

    @Test
    void six_columns_nearly_alike_have_their_certified_coefficients() throws IOException {
        assertCertified(NistSet.columns("Longley"), 12);
    }

    @Test
    void a_column_that_is_the_double_of_another_is_refused() {
        double[][] design = {{1, 2}, {2, 4}, {5, 10}};
        assertThrows(IllegalArgumentException.class, () -> LeastSquares.of(design, new double[] {1, 2, 3}));
    }

    @Test
    void fewer_values_than_coefficients_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> LeastSquares.of(new double[][] {{1, 2}}, new double[] {1}));
    }

    private static void assertCertified(NistSet set, double digits) throws IOException {
        LeastSquares fit = LeastSquares.of(set.design(), set.values());
        for (NistSet.Certified each : set.coefficients()) {
            int column = set.columnOf(each);
            assertDigits(digits, each.value(), fit.coefficient(column));
            assertEquals(each.sd(), fit.sdOf(column), Math.max(1e-5, each.sd() * 1e-6), "sd of " + each);
        }
        assertEquals(
                set.residualSd(), fit.residualSd(), Math.max(1e-5, set.residualSd() * 1e-7), "residual " + set.name());
    }

    private static LeastSquares fitted(double[][] data, int from, int to) {
        return LeastSquares.of(NistSet.powers(data, from, to), NistSet.values(data));
    }
}
