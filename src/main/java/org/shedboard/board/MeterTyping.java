package org.shedboard.board;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Meters as they are typed in one field: {@code 1512} hours, {@code 14200 km}, or both with a blank between. */
record MeterTyping(OptionalInt hours, OptionalInt kilometres) {
    private static final Pattern TYPED = Pattern.compile("(?:(\\d{1,7})h?)?(?:(?:^|[ ,]+)(\\d{1,7})km)?");

    /** Empty where it cannot be read; a field with nothing in it reads as no meters. */
    static Optional<MeterTyping> parse(String typed) {
        Matcher read = TYPED.matcher(typed.strip().toLowerCase(Locale.ROOT).replaceAll(" +(?=h|km)", ""));
        return read.matches()
                ? Optional.of(new MeterTyping(whole(read.group(1)), whole(read.group(2))))
                : Optional.empty();
    }

    private static OptionalInt whole(String digits) {
        return Optional.ofNullable(digits)
                .map(text -> OptionalInt.of(Integer.parseInt(text)))
                .orElse(OptionalInt.empty());
    }

    /** Whether a key belongs into the field. */
    static boolean takes(char character) {
        return Character.isDigit(character) || " ,hkm".indexOf(Character.toLowerCase(character)) >= 0;
    }
}
