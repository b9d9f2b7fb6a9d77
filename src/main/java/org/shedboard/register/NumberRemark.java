package org.shedboard.register;

import java.util.Arrays;
import java.util.List;

/**
 * One thing the program makes of an identification number; the text bundle has its sentence under {@code number.KIND}.
 *
 * @param values what belongs into the sentence, as a person reads it
 */
public record NumberRemark(Kind kind, List<String> values) {
    /** What is remarked, with its values. */
    public enum Kind {
        /** The check digit. */
        CHECK_DIGIT_RIGHT(false),
        /** The character found, the one that should be there. */
        CHECK_DIGIT_WRONG(true),
        /** The place, the letter found, the digit it was perhaps read for. */
        LETTER_EXCLUDED(true),
        /** The number with digits for such letters. */
        READ_AS_RIGHT(false),
        READ_AS_WRONG(false),
        /** The character in the place of the year. */
        NO_YEAR(true),
        /** The year's character and the year. */
        ONE_YEAR(false),
        /** The year's character and the years. */
        SEVERAL_YEARS(false),
        /** The seventh character, and the year it would decide for on a car. */
        POSITION_SEVEN(false),
        /** The ninth character. */
        CHECK_LETTER(false),
        /** How many characters. */
        SERIAL_AS_IT_IS(false),
        /** How many characters, one more or fewer than a vehicle number has. */
        ALMOST_VEHICLE(false),
        NOTHING(false);

        private final boolean fails;

        Kind(boolean fails) {
            this.fails = fails;
        }

        /** Whether a number of which this is said is marked. */
        public boolean fails() {
            return fails;
        }
    }

    public NumberRemark {
        values = List.copyOf(values);
    }

    static NumberRemark of(Kind kind, Object... values) {
        return new NumberRemark(kind, Arrays.stream(values).map(String::valueOf).toList());
    }
}
