package org.shedboard.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The minutes-to-hundredths table that payrolls print; source: payroll tables, recomputed. */
class DecimalHoursTest {
    /** The hundredths of 0 to 60 minutes, typed from the tables. */
    private static final String[] TABLE = """
            0.00 0.02 0.03 0.05 0.07 0.08 0.10 0.12 0.13 0.15 0.17 0.18 0.20 0.22 0.23 0.25
            0.27 0.28 0.30 0.32 0.33 0.35 0.37 0.38 0.40 0.42 0.43 0.45 0.47 0.48 0.50
            0.52 0.53 0.55 0.57 0.58 0.60 0.62 0.63 0.65 0.67 0.68 0.70 0.72 0.73 0.75
            0.77 0.78 0.80 0.82 0.83 0.85 0.87 0.88 0.90 0.92 0.93 0.95 0.97 0.98 1.00
            """.strip().split("\\s+");

    @Test
    void every_minute_of_an_hour_is_as_the_table_has_it() {
        assertEquals(61, TABLE.length);
        for (int minute = 0; minute <= 60; minute++) {
            assertEquals(new BigDecimal(TABLE[minute]), DecimalHours.of(minute), minute + " min");
        }
    }

    @Test
    void seven_hours_and_a_half_are_never_seven_point_three() {
        assertEquals(new BigDecimal("7.50"), DecimalHours.of(7 * 60 + 30));
        assertEquals(new BigDecimal("41.42"), DecimalHours.of(41 * 60 + 25));
    }

    @Test
    void minutes_are_summed_first_and_converted_once() {
        assertEquals(new BigDecimal("1.00"), DecimalHours.of(3 * 20));
        assertEquals(new BigDecimal("0.99"), sumOfConverted(3, 20));
        assertEquals(new BigDecimal("1.00"), DecimalHours.of(6 * 10));
        assertEquals(new BigDecimal("1.02"), sumOfConverted(6, 10));
        assertEquals(new BigDecimal("0.96"), sumOfConverted(12, 5));
        assertEquals(new BigDecimal("1.20"), sumOfConverted(60, 1));
    }

    private static BigDecimal sumOfConverted(int times, int minutes) {
        return IntStream.range(0, times)
                .mapToObj(time -> DecimalHours.of(minutes))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
