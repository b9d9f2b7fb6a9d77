package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.words.OwnWords;
import org.shedboard.words.Words;

/** A shop's own texts, read from its home. */
class OwnWordsFileTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @AfterEach
    void speakAsUsual() {
        Words.speak(OwnWords.none());
    }

    private void own(String... lines) throws IOException {
        Files.writeString(room.home().resolve("words.properties"), String.join("\n", lines));
    }

    @Test
    void the_screen_speaks_as_the_shop_does() throws IOException {
        own(
                "when.CLOCK = h:mma",
                "when.WEEKDAY_CLOCK = EEE h:mma",
                "when.WEEKDAY_DATE = EEE, MMM d",
                "picture.YARD = x");
        Said said = room.demo("show", "board");
        assertEquals("", said.err());
        assertTrue(said.out().contains("Tue, May 12  9:40AM"), said.out());
        assertTrue(said.out().contains("promised 12:15PM"), said.out());
    }

    @Test
    void a_time_of_the_shops_own_clock_is_not_cut() throws IOException {
        own("when.CLOCK = h:mma", "when.WEEKDAY_CLOCK = EEE h:mma");
        String board = room.demo("show", "board", "--size", "80x24").out();
        assertTrue(board.contains("12:15PM"), board);
        assertTrue(board.contains("Wed 11:00AM"), board);
    }

    @Test
    void a_file_that_cannot_be_used_is_refused_with_its_places_and_nothing_is_done() throws IOException {
        own("when.CLOCK = no pattern", "no.such.name = x");
        Said said = room.demo("day");
        assertEquals(2, said.status());
        assertEquals("""
                words.properties: no.such.name: Shedboard has no text of this name.
                words.properties: when.CLOCK: "no pattern" cannot be used here.
                """, said.err());
        assertEquals("", said.out());
    }
}
