package org.shedboard.day;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** How figures are said. */
public final class Figures {
    private static final int DECIMALS = 2;

    private Figures() {}

    /** A measured value: with two decimals at most, and none that say nothing. */
    public static String say(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Minutes, as a foreman says hours: to a tenth. */
    public static String hours(int minutes) {
        return String.format(Locale.ROOT, "%.1f", minutes / 60.0);
    }
}
