package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;

/** Text from people never steers the terminal. */
class HostileTextTest {
    private static final String EVIL = "Ev\u001b[2Jil\u009b31m\u202e\u0007";

    @TempDir
    Path directory;

    private static void assertTame(Said said) {
        for (String text : List.of(said.out(), said.err())) {
            assertFalse(
                    text.chars()
                            .anyMatch(each ->
                                    each != '\n' && (each < ' ' || each >= 0x7f && each < 0xa0 || each == 0x202e)),
                    text);
        }
    }

    @Test
    void what_is_typed_wrongly_is_said_tamely() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        for (String[] words : List.of(
                new String[] {"next", EVIL},
                new String[] {EVIL},
                new String[] {"promise", EVIL},
                new String[] {"day", "--at", EVIL},
                new String[] {"pack", EVIL},
                new String[] {"tick", "Jory", EVIL, "good"})) {
            Said said = room.demo(words);
            assertTrue(said.status() > 0);
            assertTame(said);
        }
    }

    @Test
    void an_owner_of_that_name_is_kept_without_what_steers() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        assertTame(
                room.demo("take-in", "--class", "quad", "--owner", EVIL, "--work", "o", "--mud", "1", "--tag", "33"));
        assertTame(room.demo("day"));
        Said json = room.demo("day", "--json");
        assertTame(json);
        assertTrue(json.out().contains("Ev [2Jil"), json.out());
    }

    @Test
    void a_file_with_such_names_is_said_tamely() throws Exception {
        CommandRoom room = CommandRoom.empty(directory);
        String name = "Ev\\u001b[2Jil\\u009b31m\\u202e";
        Path file = directory.resolve("shop.json");
        Files.writeString(file, LoadCommandTest.SMALL_SHOP.replace("Ash", name).replace("Small Shed", name));
        Said loaded = room.run("load", file.toString());
        assertEquals(0, loaded.status(), loaded.err());
        assertTame(loaded);
        assertTame(room.run("day"));
        assertTame(room.run("day", "--json"));
        assertTame(room.run("open", "--by", "P1", "--json"));
        Said json = room.run("day", "--json");
        assertTame(json);
        assertEquals(
                "Ev\u001b[2Jil\u009b31m\u202e",
                json.json().get("here").get(0).get("name").asString());
    }
}
