package org.shedboard.register;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;

/**
 * A word as it is compared: small letters and digits without their accents, and which of them occur.
 *
 * @param letters a bit for each letter and digit that occurs; all others share one
 */
public record Spelling(String text, long letters) {
    private static final int DIGITS = 26;
    private static final int OTHERS = 36;
    private static final int LAST_PLAIN = 128;
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}");

    static Spelling of(String text) {
        long letters = 0;
        for (int i = 0; i < text.length(); i++) {
            letters |= 1L << bitOf(text.charAt(i));
        }
        return new Spelling(text, letters);
    }

    private static int bitOf(char character) {
        if (character >= 'a' && character <= 'z') {
            return character - 'a';
        }
        return character >= '0' && character <= '9' ? DIGITS + character - '0' : OTHERS;
    }

    /** How many different letters of this word do not occur in the other at all. */
    int missingIn(Spelling other) {
        return Long.bitCount(letters & ~other.letters);
    }

    boolean hasDigit() {
        return letters >> DIGITS != 0 && text.chars().anyMatch(Character::isDigit);
    }

    /** The words of a text as they are compared, each with its signs left out. */
    static List<String> wordsOf(String text) {
        return cut(text, Character::isWhitespace);
    }

    /** The pieces of a text between signs and blanks. */
    static List<String> piecesOf(String text) {
        return cut(text, letter -> !Character.isLetterOrDigit(letter));
    }

    /** By hand and not by patterns: this goes through all that is written of every machine. */
    private static List<String> cut(String text, IntPredicate parts) {
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        folded(text).codePoints().forEach(letter -> {
            if (Character.isLetterOrDigit(letter)) {
                word.appendCodePoint(letter);
            } else if (parts.test(letter) && word.length() > 0) {
                words.add(word.toString());
                word.setLength(0);
            }
        });
        if (word.length() > 0) {
            words.add(word.toString());
        }
        return words;
    }

    /** Small letters without their accents. */
    public static String folded(String text) {
        return isPlain(text)
                ? text.toLowerCase(Locale.ROOT)
                : ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                        .replaceAll("")
                        .toLowerCase(Locale.ROOT);
    }

    private static boolean isPlain(String text) {
        return text.chars().allMatch(letter -> letter < LAST_PLAIN);
    }
}
