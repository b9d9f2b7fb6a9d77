package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.words.Words;
import tools.jackson.databind.JsonNode;

/** Commands tried on the demonstration day. */
class WhatIfCommandTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void it_says_what_moves_and_saves_nothing() {
        String before = room.demo("day").out();
        Said said = room.demo("what-if", "stay Tobin --until 11:00");
        assertEquals("", said.err());
        assertTrue(said.out().startsWith("What if: Tobin is here until "), said.out());
        assertTrue(said.out().contains("\nReady earlier: "), said.out());
        assertTrue(said.out().endsWith(Words.say("command.what_if.not_saved") + "\n"), said.out());
        assertEquals(before, room.demo("day").out());
    }

    @Test
    void several_commands_are_tried_together_with_options_of_their_own() {
        JsonNode told = room.demo(
                        "what-if",
                        "stay Tobin --until 11:00",
                        "check H1 --by Marnie --locked-out 'split hose'",
                        "--json")
                .json();
        assertEquals(2, told.get("tried").size(), told.toString());
        assertTrue(told.get("tried").get(1).asString().contains("split hose"), told.toString());
        assertEquals(told.get("later").asInt(), later(told), told.toString());
    }

    private static int later(JsonNode told) {
        int later = 0;
        for (JsonNode visit : told.get("visits")) {
            String before = visit.path("readyBefore").asString("");
            String after = visit.path("readyAfter").asString("");
            later += !before.isEmpty() && (after.isEmpty() || after.compareTo(before) > 0) ? 1 : 0;
        }
        return later;
    }

    @ParameterizedTest
    @ValueSource(strings = {"day", "", "nonsense", "tally --date 2026-05-11", "stay Nobody --until 11:00", "start 99"})
    void what_cannot_be_tried_is_said_in_one_line(String command) {
        Said said = room.demo("what-if", "stay Tobin --until 11:00", command);
        assertNotEquals(0, said.status());
        assertEquals(1, said.err().lines().count(), said.err());
    }
}
