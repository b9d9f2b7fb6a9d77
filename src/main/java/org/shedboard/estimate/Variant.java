package org.shedboard.estimate;

import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;

/**
 * One of the items that a part can be, and the machines on which it is that one.
 *
 * @param classes ids of the classes of machine it is on; all that the work is for when empty
 */
public record Variant(String itemId, Set<String> classes, Range range) {
    /** Which machines of a class. */
    public sealed interface Range {}

    /** Those of these model years, both inclusive; without a limit where one is left out. */
    public record Years(OptionalInt from, OptionalInt to) implements Range {
        public static final Years ALL = new Years(OptionalInt.empty(), OptionalInt.empty());

        boolean has(int year) {
            return year >= from.orElse(year) && year <= to.orElse(year);
        }
    }

    /** Those whose number is this prefix followed by digits that make a number from one to another, both inclusive. */
    public record Serials(String prefix, OptionalLong from, OptionalLong to) implements Range {
        boolean has(String number) {
            String digits = number.startsWith(prefix) ? number.substring(prefix.length()) : "";
            if (!digits.matches("\\d{1,15}")) {
                return false;
            }
            long serial = Long.parseLong(digits);
            return serial >= from.orElse(serial) && serial <= to.orElse(serial);
        }
    }

    public Variant {
        classes = Set.copyOf(classes);
    }

    /** An item that is the one on every machine. */
    public static Variant everywhere(String itemId) {
        return new Variant(itemId, Set.of(), Years.ALL);
    }

    public boolean isFor(String classId) {
        return classes.isEmpty() || classes.contains(classId);
    }

    public boolean isBySerial() {
        return range instanceof Serials;
    }

    public boolean hasYear(int year) {
        return range instanceof Years years && years.has(year);
    }

    boolean hasNumber(String number) {
        return range instanceof Serials serials && serials.has(number);
    }
}
