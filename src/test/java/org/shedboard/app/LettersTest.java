package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.testing.Tmux;

/** The full screen in a real terminal keeps to the letters that the terminal's locale has. */
@Tag("e2e")
@Timeout(180)
class LettersTest {
    @TempDir
    Path home;

    @ParameterizedTest(name = "LC_ALL={0}: plain letters {1}")
    @CsvSource({"C, true", "C.UTF-8, false"})
    void letters_are_plain_where_the_locale_has_no_others(String locale, boolean isPlain) throws Exception {
        CommandRoom.withDemonstration(home);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Files.writeString(
                home.resolve("start"),
                "exec " + java + " -XX:+UseSerialGC -cp '" + System.getProperty("java.class.path")
                        + "' org.shedboard.app.Main --home . demo\n");
        try (Tmux tmux = new Tmux(100, 30)) {
            tmux.enter("cd " + home + "; clear; LC_ALL=" + locale + " sh start; echo ended");
            String screen = tmux.awaitText("Pennyfold");
            assertEquals(isPlain, screen.chars().allMatch(letter -> letter < 127), screen);
            tmux.press("q");
            tmux.awaitText("ended");
        }
    }
}
