package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** Meters and services due, on the command line. */
class UpkeepCommandsTest {
    /** A quad that showed 2018 and 2073 hours, then got another meter. */
    private static final String REPLACED = "M99";

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void the_list_has_a_line_a_machine_and_the_hours_they_would_bring() {
        JsonNode list = ring();
        int machines = list.get("machines").size();
        assertTrue(machines >= 10 && machines <= 40, machines + " machines");
        List<String> lines = room.demo("ring").out().lines().toList();
        assertEquals("Whom to ring this week", lines.get(0));
        assertEquals(machines + 3, lines.size());
        int minutes = StreamSupport.stream(list.get("machines").spliterator(), false)
                .mapToInt(machine -> machine.get("load").get("minutes").asInt())
                .sum();
        assertEquals(minutes, list.get("load").get("minutes").asInt());
        String total = "%d machines, %.1f hours of work if all of them came";
        assertEquals(String.format(Locale.ROOT, total, machines, minutes / 60.0), lines.get(lines.size() - 1));
    }

    @Test
    void a_machine_whose_owner_was_rung_leaves_the_list_until_the_date_said() {
        String machine = first();
        Said said = room.demo("rung", machine, "again", "--on", "+7", "--note", "after shearing");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("the call is noted"), said.out());
        assertTrue(!machine.equals(first()), "still there");
        Said later = room.run("ring", "--demo", "--at", "2026-05-19T08:00");
        assertTrue(
                later.out().lines().anyMatch(line -> line.contains(machine + " ") && line.contains("after shearing")),
                later.out());
    }

    @Test
    void a_date_is_needed_to_ring_again_and_lies_ahead() {
        assertEquals(1, room.demo("rung", first(), "again").status());
        Said past = room.demo("rung", first(), "again", "--on", "+0");
        assertEquals(2, past.status());
        assertTrue(past.err().contains("no date to come"), past.err());
    }

    @Test
    void a_reading_that_goes_back_is_refused_in_one_line_that_names_the_options() {
        Said said = room.demo("reading", REPLACED, "3");
        assertEquals(1, said.status());
        assertEquals(1, said.complaints().size(), said.err());
        assertTrue(said.err().contains("--new-meter") && said.err().contains("--meter-is-right"), said.err());
        assertEquals(0, room.demo("reading", REPLACED, "3", "--new-meter").status());
    }

    @Test
    void kilometres_on_an_hour_meter_are_refused_until_they_are_said_to_be_right() {
        Said said = room.demo("reading", REPLACED, "14200", "--km");
        assertEquals(1, said.status());
        assertTrue(said.err().contains("14200 km"), said.err());
        assertEquals(
                0,
                room.demo("reading", REPLACED, "14200", "--km", "--meter-is-right")
                        .status());
    }

    @Test
    void kilometres_typed_as_hours_are_more_than_can_have_been_run() {
        Said said = room.demo("reading", REPLACED, "14200");
        assertEquals(1, said.status());
        assertTrue(said.err().contains("more than can have been run"), said.err());
    }

    @Test
    void a_value_that_no_meter_shows_and_two_options_at_once_are_wrong_use() {
        assertEquals(2, room.demo("reading", REPLACED, "-5").status());
        assertEquals(2, room.demo("reading", REPLACED, "NaN").status());
        assertEquals(
                2,
                room.demo("reading", REPLACED, "60", "--new-meter", "--meter-is-right")
                        .status());
        assertEquals(2, room.demo("ring", "--weeks", "0").status());
    }

    @Test
    void taking_in_a_machine_that_is_due_says_so() {
        JsonNode call = ring().get("machines").get(0);
        Said said = room.demo("take-in", "--machine", call.get("machine").asString(), "--work", "el", "--mud", "1");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains(call.get("name").asString() + " is due at"), said.out());
    }

    private JsonNode ring() {
        return room.demo("ring", "--json").json();
    }

    private String first() {
        return ring().get("machines").get(0).get("machine").asString();
    }
}
