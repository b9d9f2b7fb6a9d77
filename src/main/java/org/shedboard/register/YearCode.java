package org.shedboard.register;

import java.util.stream.IntStream;

/** The model year's character: thirty of them from 1980 on, and then the same thirty again. */
final class YearCode {
    /** Index of the year's character. */
    static final int PLACE = 9;

    private static final String CODES = "ABCDEFGHJKLMNPRSTVWXY123456789";
    private static final int FIRST = 1980;

    private YearCode() {}

    static boolean isCode(char character) {
        return CODES.indexOf(character) >= 0;
    }

    /** The years that a character stands for, up to and with a last one; none where it is no code. */
    static int[] yearsOf(char character, int last) {
        return isCode(character)
                ? IntStream.iterate(firstOf(character), year -> year <= last, year -> year + CODES.length())
                        .toArray()
                : new int[0];
    }

    /**
     * The year of a car or a light truck, where a digit in the seventh place means the first round of the codes and a letter the second
     * (73 FR 23367). The rule leaves out motorcycles, trailers and low-speed vehicles, and says nothing of machines for the farm.
     */
    static int onLightVehicle(char character, char seventh) {
        return firstOf(character) + (CheckDigit.isDigit(seventh) ? 0 : CODES.length());
    }

    private static int firstOf(char character) {
        return FIRST + CODES.indexOf(character);
    }
}
