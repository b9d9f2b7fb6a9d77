package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shedboard.pack.fault.Fault;

/** A text of nothing but numbers, read one after the other; each knows its line and column, and the first that is wrong ends it. */
final class NumberText {
    private static final Pattern WORD = Pattern.compile("\\S+");

    private final List<Word> words;
    private int next;

    private NumberText(List<Word> words) {
        this.words = words;
    }

    /** @param line from 1, as is the column */
    private record Word(String text, int line, int column) {
        String place() {
            return "line " + line + " column " + column;
        }
    }

    /** The text cannot be read on. */
    static final class Unread extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient Fault fault;

        Unread(String where, String what) {
            super(where + ": " + what, null, false, false);
            this.fault = new Fault(where, what);
        }

        Fault fault() {
            return fault;
        }
    }

    /** Makes something of the numbers of a text. */
    interface Reader<T> {
        T read(NumberText numbers) throws Unread;
    }

    /** What is made of a text's numbers, or the first fault of the text. */
    static <T> Reading<T> read(String text, Reader<T> reader) {
        try {
            return new Reading<>(Optional.of(reader.read(of(text))), List.of());
        } catch (Unread unread) {
            return new Reading<>(Optional.empty(), List.of(unread.fault()));
        }
    }

    static NumberText of(String text) {
        List<Word> words = new ArrayList<>();
        int line = 0;
        for (String content : text.lines().toList()) {
            line++;
            Matcher word = WORD.matcher(content);
            while (word.find()) {
                words.add(new Word(word.group(), line, word.start() + 1));
            }
        }
        return new NumberText(words);
    }

    /** How many words there are in all. */
    int count() {
        return words.size();
    }

    /** How many words stand in the first line that has any. */
    int countOfFirstLine() {
        return (int)
                words.stream().filter(word -> word.line == words.get(0).line).count();
    }

    void skip() {
        next++;
    }

    /** The next number. */
    int next(String what, int least, int most) throws Unread {
        if (next >= words.size()) {
            throw new Unread(place(), "the file ends where %s should be".formatted(what));
        }
        Word word = words.get(next++);
        if (!word.text.matches("[0-9]{1,9}")) {
            throw new Unread(word.place(), "is %s, not %s".formatted(Fields.brief(word.text), what));
        }
        int number = Integer.parseInt(word.text);
        if (number < least || number > most) {
            throw new Unread(word.place(), "%s %s is not from %s to %s".formatted(what, number, least, most));
        }
        return number;
    }

    /** To be called when all has been asked for. */
    void end() throws Unread {
        if (next < words.size()) {
            throw new Unread(
                    words.get(next).place(), "%s more numbers than there should be".formatted(words.size() - next));
        }
    }

    /** Where the last number is. */
    private String place() {
        return words.isEmpty() ? "line 1 column 1" : words.get(words.size() - 1).place();
    }
}
