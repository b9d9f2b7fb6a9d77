package org.shedboard.register;

import java.text.Normalizer;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A word as it is compared: small letters and digits without their accents, and which of them occur.
 *
 * @param letters a bit for each letter and digit that occurs; all others share one
 */
record Spelling(String text, long letters) {
    private static final int DIGITS = 26;
    private static final int OTHERS = 36;

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
    static Stream<String> wordsOf(String text) {
        return Stream.of(folded(text).split("\\s+")).map(Spelling::plain).filter(word -> !word.isEmpty());
    }

    /** The pieces of a text between signs and blanks. */
    static Stream<String> piecesOf(String text) {
        return Stream.of(folded(text).split("[^\\p{L}\\p{N}]+")).filter(piece -> !piece.isEmpty());
    }

    private static String plain(String word) {
        return word.replaceAll("[^\\p{L}\\p{N}]", "");
    }

    static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }
}
