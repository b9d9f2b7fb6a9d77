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

/** Why the demonstration's machines are planned as they are: 12 waits in the yard. */
class WhyCommandTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void it_says_why_then_there_and_that_person_and_what_would_change_it() {
        Said said = room.demo("why", "12");
        assertEquals("", said.err());
        for (String label : new String[] {"Why then\n", "Why there\n", "Why that person\n", "What would change it\n"}) {
            assertTrue(said.out().contains(label), said.out());
        }
        assertTrue(said.out().contains("  not before "), said.out());
    }

    @Test
    void everybody_else_of_the_shop_is_gone_through() {
        JsonNode told = room.demo("why", "12", "--json").json();
        assertEquals(3, told.get("who").size(), told.toString());
        String who = told.get("who").toString();
        String planned = told.get("planned").asString();
        for (String name : new String[] {"Marnie", "Tobin", "Wren", "Jory"}) {
            assertNotEquals(planned.contains(name), who.contains(name), told.toString());
        }
    }

    @Test
    void a_machine_nobody_knows_has_no_why() {
        Said said = room.demo("why", "99");
        assertNotEquals(0, said.status());
        assertTrue(said.err().contains("99"), said.err());
    }
}
