package org.shedboard.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.shedboard.pack.fault.Fault;
import org.shedboard.words.OwnWords;

/** Reads a shop's own texts, a line each as the bundle has them: {@code when.CLOCK = h:mma}. */
public final class WordsFile {
    /** What it is called in the home of the shop. */
    public static final String NAME = "words.properties";

    private WordsFile() {}

    public static Reading<OwnWords> read(String text) {
        Properties lines = new Properties();
        try {
            lines.load(new StringReader(text));
        } catch (IllegalArgumentException escape) {
            return new Reading<>(Optional.empty(), List.of(new Fault(NAME, escape.getMessage())));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        Map<String, String> texts = new TreeMap<>();
        lines.stringPropertyNames().forEach(name -> texts.put(name, lines.getProperty(name)));
        List<Fault> faults = OwnWords.faults(texts).stream()
                .map(wrong -> new Fault(NAME + ": " + wrong.name(), wrong.what()))
                .toList();
        return new Reading<>(faults.isEmpty() ? Optional.of(OwnWords.of(texts)) : Optional.empty(), faults);
    }
}
