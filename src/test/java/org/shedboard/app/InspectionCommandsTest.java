package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** Commands about what was found: the demonstration has a side-by-side with pads down to the backing on its big hoist. */
class InspectionCommandsTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void an_offer_is_said_and_changes_nothing_until_the_owner_said_yes() {
        Said said = room.demo("fix", "7", "pads-rear");
        assertEquals("", said.err());
        assertTrue(said.out().contains("Rear brakes, pads and fluid: likely "), said.out());
        assertTrue(said.out().contains("Ready "), said.out());
        JsonNode offer = room.demo("fix", "7", "pads-rear", "--json").json();
        assertEquals("brakes-rear", offer.get("work").asString());
        assertTrue(offer.get("safe").asInt() > offer.get("likely").asInt());
        assertTrue(offer.get("promises").size() > 1);

        Said yes = room.demo("fix", "7", "pads-rear", "--owner-said", "yes", "--by", "Marnie");
        assertEquals(0, yes.status());
        assertEquals(
                "Quillgate, Nettle Flat said yes to \"Brake pads rear\" already: the work is on the sheet.\n",
                room.demo("fix", "7", "pads-rear").err());
    }

    @Test
    void a_report_is_told_and_written_into_a_file() throws IOException {
        Said said = room.demo("report", "7");
        assertTrue(said.out().contains("NOT TO BE RIDDEN until this is put right: Brake pads rear"), said.out());
        assertTrue(said.out().contains("The maker's manual, local codes and licensed people come first."), said.out());
        Path file = directory.resolve("folder/report.html");
        Said written = room.demo("report", "7", "--html", file.toString());
        assertEquals(0, written.status());
        String page = Files.readString(file);
        assertTrue(page.startsWith("<!doctype html>"), page);
        assertTrue(page.contains("Brake pads rear"), page);
        JsonNode tree = room.demo("report", "7", "--json").json();
        assertEquals("done", tree.get("sections").get(0).get("about").asString());
    }

    @Test
    void a_report_goes_where_it_can_be_written_or_says_why_not() throws IOException {
        Path folder = Files.createDirectory(directory.resolve("full"));
        Said said = room.demo("report", "7", "--html", folder.toString());
        assertEquals(1, said.status());
        assertTrue(said.err().startsWith(folder + " cannot be written: "), said.err());
    }

    @Test
    void what_was_measured_is_told_point_by_point() {
        JsonNode told = room.demo("wear", "M1", "--json").json();
        assertTrue(told.get("points").size() >= 2, told.toString());
        JsonNode rear = told.get("points").get(1);
        assertEquals("pads-rear", rear.get("point").asString());
        assertFalse(rear.get("within").asBoolean());
        assertTrue(room.demo("wear", "M1").out().contains("1460 h on the meter: 1.1 mm (Tobin)"));
        assertTrue(room.demo("wear", "M40").out().contains("Nothing was measured at this machine yet."));
    }

    @Test
    void a_point_not_reached_needs_its_reason() {
        Said without = room.demo("tick", "Tobin", "shocks", "not-reached");
        assertEquals("Say why \"Shock absorbers and mounts\" was not reached.\n", without.err());
        assertEquals(
                0,
                room.demo("tick", "Tobin", "shocks", "not-reached", "--note", "no time")
                        .status());
        Said finish = room.demo("finish", "Tobin", "--rest", "not-reached");
        assertEquals(1, finish.status());
        assertEquals(
                0,
                room.demo("finish", "Tobin", "--rest", "not-reached", "--why", "no time")
                        .status());
    }

    @Test
    void what_reads_outside_its_limits_is_not_good() {
        Said said = room.demo("tick", "Tobin", "pads-front", "good", "--measured", "1.4");
        assertEquals(1, said.status());
        assertTrue(said.err().contains("reads 1.4 mm, which is outside 1.5 to 12"), said.err());
    }

    @Test
    void what_a_machine_took_home_is_told_when_it_comes_back() {
        assertEquals(0, room.demo("collect", "5").status());
        // tag 3 went home yesterday with a tyre to watch
        Said back = room.demo("take-in", "--machine", "M3", "--work", "o", "--mud", "1", "--depth", "once-over");
        assertTrue(
                back.out().contains("Watch since last time: Tyres, tread and pressure 24 kPa (Tobin, 11 May)"),
                back.out());
    }
}
