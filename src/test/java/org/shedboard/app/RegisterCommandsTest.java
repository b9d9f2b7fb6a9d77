package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** The register by commands. */
class RegisterCommandsTest {
    @TempDir
    private Path home;

    private CommandRoom room;

    @BeforeEach
    void enter() throws IOException {
        room = CommandRoom.withDemonstration(home);
    }

    @Test
    void a_machine_is_found_with_a_letter_wrong() {
        JsonNode found =
                room.demo("find", "qulilgate", "trudge", "--json").json().get("found");
        assertEquals(2, found.size());
        assertEquals("Quillgate, Nettle Flat", found.get(0).get("name").stringValue());
        assertEquals("forgiven", found.get(0).get("grade").stringValue());
    }

    @Test
    void a_command_does_nothing_to_a_machine_found_only_with_a_mistake_and_names_it() {
        Said said = room.demo("machine", "maplodge qulilgate", "--json");
        assertEquals(1, said.status());
        Said named = room.demo("correct-machine", "qulilgate 00XTR70F7K", "--mass", "700");
        assertEquals(1, named.status());
        assertTrue(
                named.complaints().get(0).endsWith("Perhaps: Quillgate, Nettle Flat, Wexlund Trudge 700"), named.err());
    }

    @Test
    void the_page_of_a_machine_tells_its_visits_with_what_was_not_good() {
        JsonNode page = room.demo("machine", "M1", "--json").json();
        assertEquals("right", page.get("number").get("check").stringValue());
        assertTrue(page.get("visits").size() > 1, page.toString());
        assertEquals(7, page.get("visits").get(0).get("tag").intValue());
        assertEquals(4, page.get("visits").get(0).get("notGood").size());
        assertTrue(room.demo("machine", "M1").out().startsWith("Owner      Quillgate, Nettle Flat"));
    }

    @Test
    void a_machine_is_put_right_and_what_is_not_named_stays() {
        JsonNode before = room.demo("machine", "M10", "--json").json();
        assertEquals(
                0,
                room.demo("correct-machine", "M10", "--number", "1M8GDM9A5KP042788")
                        .status());
        assertEquals(0, room.demo("correct-machine", "M10", "--year-unknown").status());
        JsonNode after = room.demo("machine", "M10", "--json").json();
        assertEquals("wrong", after.get("number").get("check").stringValue());
        assertTrue(after.get("year").isNull());
        assertEquals(before.get("label"), after.get("label"));
        assertEquals(before.get("massKg"), after.get("massKg"));
    }

    @Test
    void two_records_become_one_with_the_visits_of_both_and_either_number_finds_it() {
        JsonNode kept = room.demo("machine", "M10", "--json").json();
        JsonNode other = room.demo("machine", "M12", "--json").json();
        String number = other.get("number").get("number").stringValue();
        assertEquals(0, room.signed("merge", "M10", "M12").status());
        JsonNode one = room.demo("machine", number, "--json").json();
        assertEquals("M10", one.get("id").stringValue());
        assertEquals(
                kept.get("visits").size() + other.get("visits").size(),
                one.get("visits").size());
        assertTrue(other.get("visits").size() > 0);
        assertEquals(number, one.get("merged").get(0).get("number").stringValue());
        assertEquals(1, room.demo("machine", "M12").status());
    }

    @Test
    void an_owner_is_put_right() {
        assertEquals(
                0,
                room.demo("correct-owner", "drummock", "--phone", "0000 000 777")
                        .status());
        assertEquals(
                "0000 000 777",
                room.demo("machine", "M6", "--json").json().get("phone").stringValue());
    }

    @Test
    void an_owner_is_forgotten_only_when_that_is_said_and_then_no_file_tells_who_it_was() throws IOException {
        String name = "Ashenfold";
        assertTrue(stands(name), "there is something to forget");
        Said unsure = room.demo("forget", name);
        assertEquals(1, unsure.status());
        assertTrue(unsure.complaints().get(0).contains("--yes"), unsure.err());
        int visits = room.demo("machine", "ashenfold clod", "--json")
                .json()
                .get("visits")
                .size();
        String id = room.demo("find", "ashenfold clod", "--json")
                .json()
                .get("found")
                .get(0)
                .get("machine")
                .stringValue();
        assertEquals(0, room.signed("forget", name, "--yes").status());
        assertFalse(stands(name));
        JsonNode page = room.demo("machine", id, "--json").json();
        assertEquals(visits, page.get("visits").size());
        assertEquals(page.get("owner"), page.get("name"));
        assertEquals("", page.get("phone").stringValue());
    }

    @Test
    void who_has_a_machine_here_is_not_forgotten() {
        Said said = room.demo("forget", "Quillgate, Nettle Flat", "--yes");
        assertEquals(1, said.status());
        assertEquals(
                List.of(
                        "7 (Quillgate, Nettle Flat) is here or booked, and its owner has to be reached: it goes home first."),
                said.complaints());
    }

    @Test
    void a_known_machine_is_given_a_year_at_the_door() {
        room.demo("correct-machine", "M10", "--year-unknown", "--number", "1M8GDM9A1AP042788");
        Said noted = room.demo("promise", "--machine", "M10", "--work", "m", "--mud", "1");
        assertTrue(noted.out().contains("Model year 1980, 2010 by its number: ask which"), noted.out() + noted.err());
        Said said = room.demo("take-in", "--machine", "M10", "--year", "2010", "--work", "m", "--mud", "1");
        assertEquals(0, said.status(), said.err());
        assertEquals(
                2010, room.demo("machine", "M10", "--json").json().get("year").intValue());
    }

    private boolean stands(String name) throws IOException {
        Path file = Homes.demonstration(home).resolve("shop.mv.db");
        return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(name);
    }
}
