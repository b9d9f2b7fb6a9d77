package org.shedboard.shop;

import java.util.Locale;
import java.util.OptionalLong;

/**
 * Identification numbers that begin alike and go on with a number from one to another.
 *
 * @param prefix how they begin; blanks, hyphens and small letters make no difference; may be empty
 * @param from the first, of what follows the prefix
 * @param to the last
 */
public record NumberRange(String prefix, OptionalLong from, OptionalLong to) {
    public static final NumberRange ANY = new NumberRange("", OptionalLong.empty(), OptionalLong.empty());

    /** More digits than this are no number of a machine. */
    private static final int MOST_DIGITS = 17;

    public NumberRange {
        prefix = prefix.strip().toUpperCase(Locale.ROOT);
        if (from.isPresent() && to.isPresent() && to.getAsLong() < from.getAsLong()) {
            throw new IllegalArgumentException("numbers cannot go from %s to %s".formatted(from, to));
        }
    }

    /** Whether every number is in it. */
    public boolean isAny() {
        return equals(ANY);
    }

    public Fit fit(String number) {
        String plain = plain(number);
        if (isAny()) {
            return Fit.YES;
        }
        if (plain.isEmpty()) {
            return Fit.MAYBE;
        }
        String start = plain(prefix);
        return plain.startsWith(start) ? fitOfRest(plain.substring(start.length())) : Fit.NO;
    }

    private Fit fitOfRest(String rest) {
        if (from.isEmpty() && to.isEmpty()) {
            return Fit.YES;
        }
        if (!rest.matches("[0-9]{1," + MOST_DIGITS + "}")) {
            return Fit.MAYBE;
        }
        long value = Long.parseLong(rest);
        return value >= from.orElse(value) && value <= to.orElse(value) ? Fit.YES : Fit.NO;
    }

    private static String plain(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
    }
}
