package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.board.NamedScreen;

/** Screens had as plain lines by a command. */
class ShowCommandTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private List<String> shown(String... words) {
        Said said = room.demo(words);
        assertEquals("", said.err());
        return said.out().lines().toList();
    }

    @Test
    void a_screen_is_lines_without_blanks_at_their_end_and_without_drawn_lines() {
        List<String> lines = shown("show", "board");
        assertTrue(
                lines.get(0).contains("Tussock Flat Machinery") && lines.get(0).contains("09:40"), lines.get(0));
        assertTrue(lines.stream().anyMatch(line -> line.contains("9 (Marrowby, Dry Gully) promised 12:15")));
        for (String line : lines) {
            assertEquals(line.stripTrailing(), line);
            assertFalse(line.matches(".*[│─┊].*"), line);
        }
    }

    @Test
    void no_two_blank_lines_follow_each_other() {
        List<String> lines = shown("show", "yard");
        for (int i = 1; i < lines.size(); i++) {
            assertFalse(lines.get(i).isEmpty() && lines.get(i - 1).isEmpty(), lines.toString());
        }
    }

    @Test
    void plain_letters_are_kept_to_where_they_are_asked_for() {
        String all = String.join("", shown("--ascii", "show", "board"));
        assertTrue(all.chars().allMatch(letter -> letter < 128), all);
    }

    @Test
    void next_is_the_persons_and_a_sheet_the_visits() {
        assertTrue(shown("show", "next", "--person", "Wren").get(0).contains("Wren"));
        assertTrue(shown("show", "sheet", "--tag", "9").get(0).contains("Marrowby"));
    }

    @ParameterizedTest
    @EnumSource(NamedScreen.class)
    void every_screen_can_be_had_as_lines(NamedScreen screen) {
        String name = screen.name().toLowerCase(Locale.ROOT).replace('_', '-');
        assertFalse(shown("show", name).isEmpty());
    }
}
