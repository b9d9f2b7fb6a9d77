package org.shedboard.shop;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * So much of an item, in thousandths of its unit: whole numbers add up exactly. Below nothing is what a shelf has of which more was
 * taken than was counted.
 */
public record Amount(long thousandths) implements Comparable<Amount> {
    public static final Amount NOTHING = new Amount(0);

    private static final int ONE = 1000;

    /** Longer numbers than anything that lies on a shelf. */
    private static final String FORM = "\\d{1,7}(\\.\\d{1,3})?";

    public static Amount of(int whole) {
        return new Amount((long) ONE * whole);
    }

    /** A number such as 2 or 2.5; empty where it is none, or finer than a thousandth. */
    public static Optional<Amount> find(String text) {
        return text.matches(FORM)
                ? Optional.of(new Amount(new BigDecimal(text).movePointRight(3).longValueExact()))
                : Optional.empty();
    }

    public Amount plus(Amount other) {
        return new Amount(thousandths + other.thousandths);
    }

    public Amount minus(Amount other) {
        return new Amount(thousandths - other.thousandths);
    }

    public Amount atMost(Amount other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public Amount atLeast(Amount other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public boolean isPositive() {
        return thousandths > 0;
    }

    boolean isWhole() {
        return thousandths % ONE == 0;
    }

    @Override
    public int compareTo(Amount other) {
        return Long.compare(thousandths, other.thousandths);
    }

    /** With as many decimals as it needs. */
    @Override
    public String toString() {
        BigDecimal number = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0).toPlainString() : number.toPlainString();
    }
}
