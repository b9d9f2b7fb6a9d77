package org.shedboard.words;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Texts of a shop's own, each in place of the one the bundle has under its name: another language, another clock, another word. */
public final class OwnWords {
    /** A time at which every form has something to say. */
    private static final LocalDateTime ANY = LocalDateTime.of(2026, 5, 12, 14, 30);

    /** What is wrong with the text under a name. */
    public record Wrong(String name, String what) {}

    private final Map<String, String> texts;
    private final Map<When, DateTimeFormatter> forms = new EnumMap<>(When.class);

    private OwnWords(Map<String, String> texts) {
        this.texts = Map.copyOf(texts);
        Locale language = Locale.forLanguageTag(textOf("language"));
        for (When form : When.values()) {
            forms.put(form, DateTimeFormatter.ofPattern(textOf(Words.nameOf(form)), language));
        }
    }

    /** A shop that says everything as the bundle has it. */
    public static OwnWords none() {
        return new OwnWords(Map.of());
    }

    /** Of texts that have no {@link #faults}. */
    public static OwnWords of(Map<String, String> texts) {
        if (!faults(texts).isEmpty()) {
            throw new IllegalArgumentException("no texts to say: " + faults(texts));
        }
        return new OwnWords(texts);
    }

    /** What is wrong with texts, in the order of their names. */
    public static List<Wrong> faults(Map<String, String> texts) {
        List<Wrong> faults = new ArrayList<>();
        new TreeMap<>(texts)
                .forEach((name, text) -> fault(name, text).ifPresent(what -> faults.add(new Wrong(name, what))));
        return faults;
    }

    Optional<String> find(String name) {
        return Optional.ofNullable(texts.get(name));
    }

    private String textOf(String name) {
        return find(name).orElseGet(() -> Words.usual(name));
    }

    DateTimeFormatter form(When form) {
        return forms.get(form);
    }

    private static Optional<String> fault(String name, String text) {
        if (!Words.has(name)) {
            return Optional.of(Words.say("own_words.unknown"));
        }
        Set<String> more = places(text);
        more.removeAll(places(Words.usual(name)));
        if (!more.isEmpty()) {
            return Optional.of(Words.say("own_words.place", String.join(" ", more)));
        }
        return isReadable(name, text) ? Optional.empty() : Optional.of(Words.say("own_words.form", text));
    }

    private static Set<String> places(String text) {
        return Words.PLACE.matcher(text).results().map(place -> place.group()).collect(Collectors.toSet());
    }

    /** Texts that the program works with have to be of their kind; the others are for people. */
    private static boolean isReadable(String name, String text) {
        try {
            if (name.equals("language")) {
                new Locale.Builder().setLanguageTag(text);
            } else if (name.equals("week.first")) {
                return Stream.of(DayOfWeek.values()).anyMatch(day -> day.name().equals(text));
            } else if (name.startsWith("when.")) {
                DateTimeFormatter.ofPattern(text).format(ANY);
            }
            return true;
        } catch (IllformedLocaleException | IllegalArgumentException | DateTimeException unreadable) {
            return false;
        }
    }
}
