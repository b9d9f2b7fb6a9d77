package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** Where the minutes of the demonstration's machines come from: 12 is muddy and not begun, 7 is caked and in work. */
class EstimateCommandTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void the_parts_of_an_estimate_are_told_and_add_up() {
        JsonNode told = room.demo("estimate", "12", "--json").json();
        int sum = 0;
        for (JsonNode part : told.get("parts")) {
            sum += part.get("minutes").asInt();
        }
        assertEquals(told.get("likely").asInt(), sum);
        assertEquals("catalogue", told.get("parts").get(0).get("source").asString());
        assertEquals(12, told.get("byMudAndDepth").size());
        assertEquals(3, told.get("nearest").size());
        assertTrue(told.get("washed").get("savedMinutes").asInt() > 0, told.toString());
    }

    @Test
    void its_own_mud_and_depth_are_marked_among_the_others() {
        JsonNode told = room.demo("estimate", "12", "--json").json();
        for (JsonNode cell : told.get("byMudAndDepth")) {
            boolean isOwn = cell.get("mud").asString().equals(told.get("mud").asString())
                    && cell.get("depth").asString().equals(told.get("depth").asString());
            assertEquals(isOwn, cell.get("isOwn").asBoolean());
            assertTrue(
                    !isOwn || cell.get("likely").asInt() == told.get("likely").asInt());
        }
    }

    @Test
    void it_is_said_in_lines_as_well_by_any_part_of_the_name() {
        Said said = room.demo("estimate", "drummock");
        assertEquals("", said.err());
        assertTrue(said.out().startsWith("Where the minutes of 12 (Drummock, Saltbush Rise) come from\n"), said.out());
        assertTrue(said.out().contains("  the mud\n"), said.out());
        assertTrue(said.out().contains("Had it come in clean it would be about "), said.out());
        assertTrue(said.out().contains("The nearest finished visits\n"), said.out());
        assertTrue(said.out().matches("(?s).*muddy: once-over \\d+, standard >\\d+, full \\d+.*"), said.out());
    }

    @Test
    void once_work_has_begun_washing_comes_too_late() {
        JsonNode told = room.demo("estimate", "7", "--json").json();
        assertTrue(told.get("washed").isNull(), told.toString());
        assertTrue(told.get("leftLikely").asInt() < told.get("likely").asInt());
    }

    @Test
    void a_promise_comes_with_the_sentence_for_the_owner() {
        String sentence =
                room.demo("estimate", "12", "--json").json().get("sentence").asString();
        assertTrue(room.demo("promise", "12").out().contains(sentence));
        assertEquals(
                sentence,
                room.demo("promise", "12", "--json").json().get("sentence").asString());
    }

    @Test
    void a_machine_nobody_knows_has_no_minutes() {
        Said said = room.demo("estimate", "99");
        assertNotEquals(0, said.status());
        assertTrue(said.err().contains("99"), said.err());
    }
}
