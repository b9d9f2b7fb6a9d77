package org.shedboard.hours;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Minutes said as hours with two places, as payrolls do; sums are taken in minutes and converted once. */
public final class DecimalHours {
    private static final BigDecimal MINUTES_AN_HOUR = BigDecimal.valueOf(60);

    private DecimalHours() {}

    public static BigDecimal of(int minutes) {
        return BigDecimal.valueOf(minutes).divide(MINUTES_AN_HOUR, 2, RoundingMode.HALF_UP);
    }
}
