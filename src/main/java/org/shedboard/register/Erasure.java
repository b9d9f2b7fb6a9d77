package org.shedboard.register;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Takes a person's names and telephone numbers out of texts. A whole name and each part of it between commas goes however it is
 * written; a single word of its first part goes where it is written as in the name, for in small letters it may be a word like any other,
 * and the words of a property's name often are. A part or word that somebody else is called by too stays: it is their name. A number
 * goes with whatever signs between its figures.
 */
public final class Erasure {
    /** Shorter words are not taken out by themselves: they are initials, "of" and the like. */
    private static final int LEAST_WORD = 3;
    /** A shorter row of figures may be anything. */
    private static final int LEAST_FIGURES = 5;

    private static final String NOT_WITHIN_WORD = "(?<![\\p{L}\\p{N}])%s(?![\\p{L}\\p{N}])";
    private static final String BETWEEN_FIGURES = "[\\s().+/-]{0,3}";

    private final List<Pattern> patterns = new ArrayList<>();
    private final String standIn;

    private Erasure(String standIn) {
        this.standIn = standIn;
    }

    /**
     * @param names all that the person was ever called here
     * @param others what everybody else is called
     * @param standIn what stands where one of them was
     */
    public static Erasure of(
            Collection<String> names, Collection<String> phones, Collection<String> others, String standIn) {
        Erasure erasure = new Erasure(standIn);
        Set<String> kept = others.stream()
                .flatMap(other -> Stream.concat(parts(other), words(other)))
                .map(Erasure::folded)
                .collect(Collectors.toSet());
        Stream.concat(
                        names.stream(),
                        names.stream().flatMap(Erasure::parts).filter(part -> !kept.contains(folded(part))))
                .forEach(name -> erasure.addWhole(name, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
        names.stream()
                .flatMap(name -> words(name.split(",")[0]))
                .filter(word -> word.length() >= LEAST_WORD && !kept.contains(folded(word)))
                .forEach(word -> erasure.addWhole(word, 0));
        phones.forEach(erasure::addFigures);
        return erasure;
    }

    private static Stream<String> parts(String name) {
        return Stream.of(name.split(",")).map(String::strip);
    }

    private static Stream<String> words(String name) {
        return Stream.of(name.split("[\\s,;.]+"));
    }

    private static String folded(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    private void addWhole(String name, int flags) {
        String words = Stream.of(name.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .map(Pattern::quote)
                .collect(Collectors.joining("\\s+"));
        if (name.strip().length() >= LEAST_WORD) {
            patterns.add(Pattern.compile(NOT_WITHIN_WORD.formatted(words), flags));
        }
    }

    private void addFigures(String phone) {
        String figures = phone.replaceAll("[^0-9]", "");
        if (figures.length() >= LEAST_FIGURES) {
            String spaced = String.join(BETWEEN_FIGURES, figures.split(""));
            patterns.add(Pattern.compile("\\+?(?<![0-9])" + spaced + "(?![0-9])"));
        } else if (!phone.isBlank()) {
            addWhole(phone, 0);
        }
    }

    public String of(String text) {
        String erased = text;
        for (Pattern pattern : patterns) {
            erased = pattern.matcher(erased).replaceAll(Matcher.quoteReplacement(standIn));
        }
        return erased;
    }
}
