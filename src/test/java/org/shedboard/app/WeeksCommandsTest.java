package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** The weeks ahead, what properties want, makers' notices and loans, as commands. */
class WeeksCommandsTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void the_weeks_are_told_day_by_day() {
        Said said = room.demo("weeks");
        assertEquals(0, said.status(), said.err());
        assertEquals(21, said.out().lines().count(), said.out());
        assertTrue(said.out().lines().anyMatch(line -> line.matches(" *Wed 13 May +0\\.0/9\\.0 .*")), said.out());
    }

    @Test
    void the_weeks_as_json_have_their_minutes() {
        JsonNode days = room.demo("weeks", "--json").json().get("days");
        assertEquals(20, days.size());
        JsonNode wednesday = days.get(1);
        assertEquals("2026-05-13", wednesday.get("date").asString());
        assertEquals(540, wednesday.get("places").get("wash").get("openMinutes").asInt());
        assertTrue(wednesday.get("skills").get("sign-off").get("openMinutes").asInt() > 900);
        assertEquals(0, wednesday.get("full").size());
    }

    @Test
    void what_is_due_and_not_booked_stands_beside_what_is_booked() {
        JsonNode wednesday = room.demo("weeks", "--json").json().get("days").get(1);
        int due = wednesday.get("people").get("dueMinutes").asInt();
        assertTrue(due > 60, wednesday.toString());
        int bySkill = 0;
        for (JsonNode skill : wednesday.get("skills")) {
            bySkill += skill.get("dueMinutes").asInt();
        }
        assertEquals(due, bySkill);
        assertTrue(wednesday.get("places").get("wash").get("dueMinutes").asInt() > 0, wednesday.toString());
        String said = room.demo("weeks").out().lines().skip(2).findFirst().orElseThrow();
        assertTrue(said.contains(String.format(Locale.ROOT, " %.1f ", due / 60.0)), said);
    }

    @Test
    void a_booking_on_a_full_day_is_carried_out_and_told_with_the_next_day_that_has_room() {
        for (int i = 0; i < 5; i++) {
            assertEquals(0, book("2026-05-14T08:00", "one of five").status());
        }
        Said said = book("2026-05-14T08:00", "the sixth");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("Thu 14 May: wash full, "), said.out());
        assertTrue(said.out().contains("Next day with room: Fri 15 May."), said.out());
    }

    private Said book(String expected, String label) {
        return room.demo(
                "take-in",
                "--owner",
                "Gorsedale, Windmill Nine",
                "--class",
                "tractor",
                "--label",
                label,
                "--year",
                "2020",
                "--work",
                "m",
                "--mud",
                "3",
                "--expected",
                "thu 8");
    }

    @Test
    void a_property_can_be_marked_to_be_washed_down_first_and_no_longer() {
        assertEquals(0, room.demo("owner", "corrowby", "--wash-down-first").status());
        assertTrue(promise().contains("WASH DOWN FIRST (Corrowby, Wether Hill)"), promise());
        assertEquals(0, room.demo("owner", "corrowby", "--no-wash-down-first").status());
        assertTrue(!promise().contains("WASH DOWN FIRST"), promise());
        assertEquals(2, room.demo("owner", "corrowby").status());
    }

    private String promise() {
        return room.demo("promise", "--machine", "M8", "--work", "o", "--mud", "0")
                .out();
    }

    @Test
    void a_makers_notice_is_told_taken_up_and_then_listed_as_wanted() {
        assertTrue(promise().contains("Maker's notice KB-22-4: "), promise());
        Said taken = room.demo("take-in", "--machine", "M8", "--notice", "kb-22-4", "--mud", "0");
        assertEquals(0, taken.status(), taken.err());
        assertTrue(room.demo("notices").out().contains("done on 0, wanted on 1"));
        JsonNode first = room.demo("notices", "--json").json().get("notices").get(0);
        assertEquals("M8", first.get("taken").get(0).get("machine").asString());
        assertEquals(
                1,
                room.demo("take-in", "--machine", "M9", "--notice", "N-9", "--mud", "0")
                        .status());
    }

    @Test
    void a_file_of_notices_takes_the_place_of_those_before_and_a_bad_one_is_refused_with_every_fault()
            throws IOException {
        Path good = Files.writeString(directory.resolve("good.json"), """
                {"notices": [{"id": "N-1", "title": "A lead chafes", "label": "Drobbin Hauler", "work": "electrics"}]}""");
        Said said = room.demo("notices", good.toString());
        assertEquals(0, said.status(), said.err());
        assertEquals(1, room.demo("notices", "--json").json().get("notices").size());
        Path bad = Files.writeString(directory.resolve("bad.json"), """
                {"notices": [{"id": "N-1", "title": "", "label": "Drobbin", "work": "nonsense"}]}""");
        Said refused = room.demo("notices", bad.toString());
        assertEquals(2, refused.status());
        assertEquals(
                2,
                refused.complaints().stream()
                        .filter(line -> line.contains("notices[0]."))
                        .count(),
                refused.err());
        assertEquals(1, room.demo("notices", "--json").json().get("notices").size());
    }

    @Test
    void a_machine_of_ours_goes_out_is_listed_and_comes_back() {
        assertEquals(0, room.demo("loan", "12", "the yellow quad").status());
        assertTrue(room.demo("loans")
                .out()
                .contains("Ours is out: the yellow quad, with Drummock, Saltbush Rise since Tue 12 May 09:40."));
        assertEquals(0, room.demo("loan-back", "12").status());
        assertEquals("No machine of ours is out.\n", room.demo("loans").out());
        assertEquals(
                1, room.demo("loans", "--all", "--json").json().get("loans").size());
        assertEquals(1, room.demo("loan-back", "12").status());
    }
}
