package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What the page of a machine tells of it from visit to visit, in the demonstration. */
class MachinePageTest {
    @TempDir
    Path home;

    private CommandRoom room;

    @BeforeEach
    void enter() throws IOException {
        room = CommandRoom.withDemonstration(home);
    }

    @Test
    void what_is_due_next_is_the_same_as_on_the_list_of_whom_to_ring() {
        JsonNode call = room.demo("ring", "--json").json().get("machines").get(0);
        JsonNode due = page(call.get("machine").stringValue()).get("nextDue");
        for (String field :
                List.of("work", "by", "dueAt", "meterNow", "early", "likely", "late", "daysLeft", "state")) {
            assertEquals(call.get(field), due.get(field), field);
        }
        String said = said(call.get("machine").stringValue());
        String late = -call.get("daysLeft").asInt() + " days over";
        assertTrue(said.contains("Next due   " + call.get("name").stringValue()) && said.contains(late), said);
    }

    @Test
    void readings_stand_newest_first_and_the_first_of_another_meter_is_marked() {
        JsonNode meter = page("M99").get("meters").get(0);
        assertEquals("hours", meter.get("unit").stringValue());
        assertEquals(meter.get("readings").get(0).get("value"), meter.get("value"));
        List<String> dates = new ArrayList<>();
        List<Integer> replaced = new ArrayList<>();
        for (JsonNode reading : meter.get("readings")) {
            dates.add(reading.get("at").stringValue());
            if (reading.get("newMeter").asBoolean()) {
                replaced.add(reading.get("value").asInt());
            }
        }
        assertEquals(dates.stream().sorted(Comparator.reverseOrder()).toList(), dates);
        assertEquals(1, replaced.size());
        assertTrue(said("M99").contains(" " + replaced.get(0) + " h   Marnie   new meter from here on"), said("M99"));
    }

    @Test
    void a_reading_that_is_noted_stands_first_and_moves_what_is_due() {
        double before = page("M99").get("nextDue").get("meterNow").asDouble();
        int noted = (int) before + 20;
        assertEquals(0, room.demo("reading", "M99", String.valueOf(noted)).status());
        JsonNode after = page("M99");
        assertEquals(
                noted,
                after.get("meters").get(0).get("readings").get(0).get("value").asInt());
        assertEquals(noted, after.get("nextDue").get("meterNow").asDouble(), 0.05);
        assertTrue(said("M99").contains("Meter      " + noted + " h on 12 May 2026, "), said("M99"));
    }

    @Test
    void the_use_per_day_has_its_range_and_says_when_it_is_that_of_others() {
        JsonNode meter = page("M3").get("meters").get(0);
        assertTrue(meter.get("isOwnUse").asBoolean());
        double likely = meter.get("usePerDay").get("likely").asDouble();
        assertTrue(meter.get("usePerDay").get("low").asDouble() < likely);
        assertTrue(meter.get("usePerDay").get("high").asDouble() > likely);
        assertEquals(
                0,
                room.demo(
                                "take-in",
                                "--owner",
                                "Gorsedale, Windmill Nine",
                                "--class",
                                "quad",
                                "--label",
                                "a quad",
                                "--year",
                                "2020",
                                "--work",
                                "o",
                                "--mud",
                                "0",
                                "--meter",
                                "100",
                                "--tag",
                                "77")
                        .status());
        String said = said("77");
        assertTrue(said.contains("Meter      100 h on 12 May 2026, as others of its kind "), said);
        assertTrue(said.contains("Next due   not known"), said);
    }

    @Test
    void what_it_took_home_is_told_with_what_was_read_off() {
        JsonNode tyres = page("M3").get("tookHome").get(0);
        assertEquals("tyres", tyres.get("point").stringValue());
        assertEquals("watch", tyres.get("mark").stringValue());
        assertEquals(24, tyres.get("measured").asInt());
        assertTrue(said("M3").contains("Took home  Tyres, tread and pressure: last time watch 24 kPa (Tobin, 11 May)"));
    }

    @Test
    void a_makers_notice_is_open_and_then_wanted() {
        assertEquals("open", page("M8").get("notices").get(0).get("state").stringValue());
        assertTrue(said("M8").contains("Notices    KB-22-4, open: "), said("M8"));
        assertEquals(
                0,
                room.demo("take-in", "--machine", "M8", "--notice", "KB-22-4", "--mud", "0")
                        .status());
        assertEquals("wanted", page("M8").get("notices").get(0).get("state").stringValue());
    }

    @Test
    void what_is_lent_while_it_is_here_is_told_until_and_after_it_is_back() {
        assertEquals(0, page("M1").get("loans").size());
        assertEquals(0, room.demo("loan", "7", "the yellow quad").status());
        assertTrue(said("M1").contains("Lent       Ours is out: the yellow quad, "), said("M1"));
        assertEquals(0, room.demo("loan-back", "7").status());
        assertTrue(said("M1").contains("Lent       Ours was out: the yellow quad, "), said("M1"));
        assertEquals(
                "the yellow quad", page("M1").get("loans").get(0).get("label").stringValue());
        assertEquals(0, page("M3").get("loans").size());
    }

    @Test
    void an_owner_who_wants_machines_washed_down_first_is_marked() {
        assertTrue(page("M29").get("washDownFirst").asBoolean());
        assertTrue(said("M29").contains("Wash down first: "), said("M29"));
        assertFalse(page("M3").get("washDownFirst").asBoolean());
        assertFalse(said("M3").contains("Wash down first: "), said("M3"));
    }

    private JsonNode page(String machine) {
        return room.demo("machine", machine, "--json").json();
    }

    private String said(String machine) {
        return room.demo("machine", machine).out();
    }
}
