package org.shedboard.register;

/**
 * The check digit of vehicle numbers, as 49 CFR 565.15(c) has it: each character has a value and each place a weight; the sum of the
 * products is divided by eleven, and what is left over stands in the ninth place, ten as an X.
 */
final class CheckDigit {
    /** Characters of a number. */
    static final int LENGTH = 17;
    /** Index of the check digit. */
    static final int PLACE = 8;

    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    /** The value of each of the letters: the rows of the table begin anew at A, J and S, and S is 2. */
    private static final String VALUES = "12345678123457923456789";

    private static final String REMAINDERS = "0123456789X";

    private CheckDigit() {}

    /** The one that these seventeen characters ask for; what stands in its own place does not count. */
    static char of(String number) {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * valueOf(number.charAt(i));
        }
        return REMAINDERS.charAt(sum % REMAINDERS.length());
    }

    /** Whether a character can stand in a vehicle number at all. */
    static boolean isAllowed(char character) {
        return isDigit(character) || LETTERS.indexOf(character) >= 0;
    }

    static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }

    private static int valueOf(char character) {
        return isDigit(character) ? character - '0' : VALUES.charAt(LETTERS.indexOf(character)) - '0';
    }
}
