package org.shedboard.day;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a measured value is said: with two decimals at most, and none that say nothing. */
public final class Figures {
    private static final int DECIMALS = 2;

    private Figures() {}

    public static String say(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
