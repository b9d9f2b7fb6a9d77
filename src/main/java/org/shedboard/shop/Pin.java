package org.shedboard.shop;

import java.util.Arrays;
import java.util.Optional;

/**
 * The digits by which one person signs. Nothing shows them, and whoever made a PIN closes it after use: that wipes the digits. Not
 * to be mistaken for work that is pinned to a person or a time.
 */
public final class Pin implements AutoCloseable {
    /** Invented, as is the longest: four digits are what people can keep in mind, twelve are more than anybody wants to type. */
    public static final int SHORTEST = 4;

    public static final int LONGEST = 12;

    private final char[] digits;
    private boolean isWiped;

    private Pin(char[] digits) {
        this.digits = digits;
    }

    /** The PIN typed, which from now on belongs to it; empty, and wiped, when it has not the form of a PIN. */
    public static Optional<Pin> of(char[] typed) {
        if (hasForm(typed)) {
            return Optional.of(new Pin(typed));
        }
        Arrays.fill(typed, '\0');
        return Optional.empty();
    }

    static boolean hasForm(char[] typed) {
        boolean isDigits = true;
        for (char each : typed) {
            isDigits &= each >= '0' && each <= '9';
        }
        return isDigits && typed.length >= SHORTEST && typed.length <= LONGEST;
    }

    /** The digits themselves, no copy that would outlive them. */
    public char[] digits() {
        if (isWiped) {
            throw new IllegalStateException("this PIN was used already and wiped");
        }
        return digits;
    }

    public boolean hasSameDigitsAs(Pin other) {
        return Arrays.equals(digits(), other.digits());
    }

    /** Wipes the digits. */
    @Override
    public void close() {
        Arrays.fill(digits, '\0');
        isWiped = true;
    }

    @Override
    public String toString() {
        return "a PIN";
    }
}
