package org.shedboard.estimate;

import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.shop.Fit;
import org.shedboard.shop.NumberRange;

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

    /** Those with a number of the maker's own in this range. */
    public record Serials(NumberRange numbers) implements Range {}

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
        return range instanceof Serials serials && serials.numbers().fit(number) == Fit.YES;
    }
}
