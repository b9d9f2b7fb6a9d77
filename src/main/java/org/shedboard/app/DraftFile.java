package org.shedboard.app;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Collectors;
import org.shedboard.app.command.CannotDo;
import org.shedboard.disk.OwnersFile;

/**
 * Where a form that is half filled in outlives the program: one file in the shop's home. It may have names and telephone numbers in it,
 * so that nobody else may read it, and it is gone as soon as the machine is taken in or the form is dropped.
 */
final class DraftFile {
    private static final String NAME = "half-taken-in";

    private final Path home;

    DraftFile(Path home) {
        this.home = home;
    }

    Path file() {
        return home.resolve(NAME);
    }

    /** What was kept; nothing where there is no such file, or one that nobody can make anything of. */
    Map<String, String> read() {
        if (!Files.exists(file())) {
            return Map.of();
        }
        Properties kept = new Properties();
        try (Reader reader = Files.newBufferedReader(file(), StandardCharsets.UTF_8)) {
            kept.load(reader);
        } catch (CharacterCodingException | IllegalArgumentException garbage) {
            return Map.of();
        } catch (IOException failure) {
            throw new CannotDo("app.draft", file(), failure.getMessage());
        }
        return kept.stringPropertyNames().stream().collect(Collectors.toMap(name -> name, kept::getProperty));
    }

    /** Keeps these words in place of what was kept before; where there are none, the file goes. */
    void keep(Map<String, String> words) {
        try {
            if (words.isEmpty()) {
                Files.deleteIfExists(file());
            } else {
                replace(words);
            }
        } catch (IOException failure) {
            throw new CannotDo("app.draft", file(), failure.getMessage());
        }
    }

    private void replace(Map<String, String> words) throws IOException {
        Properties kept = new Properties();
        words.forEach(kept::setProperty);
        StringWriter text = new StringWriter();
        kept.store(text, null);
        OwnersFile.write(file(), text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
