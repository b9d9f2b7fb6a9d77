package org.shedboard.tally;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * One number of minutes over another. The trade calls such figures by names that change their meaning from shop to shop (common
 * practice, no source), so each is shown with what is divided by what.
 */
public record Ratio(int top, int bottom) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** In a hundred, with two places; empty where nothing can be divided by. */
    public Optional<BigDecimal> percent() {
        return bottom == 0
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(top)
                        .multiply(HUNDRED)
                        .divide(BigDecimal.valueOf(bottom), 2, RoundingMode.HALF_UP));
    }
}
