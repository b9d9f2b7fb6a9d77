package org.shedboard.register;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.shedboard.shop.Fit;
import org.shedboard.shop.NumberRange;

/**
 * What a maker asks to be done to some of its machines, at the maker's cost.
 *
 * @param classes ids of the classes of machine it is about; any class when empty
 * @param label part of the label of the machines it is about, maker and model as typed
 * @param yearFrom first model year it is about
 * @param yearTo last model year it is about
 * @param numbers identification numbers it is about
 * @param workId the catalogue's name of the work
 */
public record Notice(
        String id,
        String title,
        List<String> classes,
        String label,
        OptionalInt yearFrom,
        OptionalInt yearTo,
        NumberRange numbers,
        String workId) {
    public Notice {
        classes = List.copyOf(classes);
        if (yearFrom.isPresent() && yearTo.isPresent() && yearTo.getAsInt() < yearFrom.getAsInt()) {
            throw new IllegalArgumentException(
                    "notice %s cannot be for years %s to %s".formatted(id, yearFrom, yearTo));
        }
    }

    /** A number that is known and in the range tells more than a year that is not known. */
    public Fit fit(String classId, String machineLabel, OptionalInt year, String number) {
        if (!classes.isEmpty() && !classes.contains(classId)
                || !plain(machineLabel).contains(plain(label))) {
            return Fit.NO;
        }
        Fit byYear = fitOf(year);
        Fit byNumber = numbers.fit(number);
        if (byYear == Fit.NO || byNumber == Fit.NO) {
            return Fit.NO;
        }
        boolean isSure = byNumber == Fit.YES && (byYear == Fit.YES || !numbers.isAny());
        return isSure ? Fit.YES : Fit.MAYBE;
    }

    private Fit fitOf(OptionalInt year) {
        if (yearFrom.isEmpty() && yearTo.isEmpty()) {
            return Fit.YES;
        }
        if (year.isEmpty()) {
            return Fit.MAYBE;
        }
        boolean isIn = year.getAsInt() >= yearFrom.orElse(year.getAsInt())
                && year.getAsInt() <= yearTo.orElse(year.getAsInt());
        return isIn ? Fit.YES : Fit.NO;
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    }
}
