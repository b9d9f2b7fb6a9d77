package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** Hours by the commands, in the demonstration, where Marnie's PIN is 2468. */
class HoursCommandsTest {
    private static final String EVENING = "2026-05-12T16:40";
    private static final String PIN = "2468\n";

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private Said say(String input, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--demo", "--at", EVENING));
        return room.piped(input, all.toArray(String[]::new));
    }

    private Said done(String... words) {
        Said said = say(PIN, words);
        assertEquals("", said.err());
        return said;
    }

    private void refused(String sentence, String input, String... words) {
        Said said = say(input, words);
        assertEquals(sentence + "\n", said.err());
        assertEquals("", said.out());
    }

    private JsonNode tally(String... words) {
        List<String> all = new ArrayList<>(List.of("tally", "--json"));
        all.addAll(List.of(words));
        return done(all.toArray(String[]::new)).json();
    }

    private static JsonNode of(JsonNode tally, String name) {
        return StreamSupport.stream(tally.get("people").spliterator(), false)
                .filter(person -> person.get("name").asString().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private String paperwork() {
        JsonNode rows = done("tally", "--rows", "--json").json().get("rows");
        return StreamSupport.stream(rows.spliterator(), false)
                .filter(row -> row.get("what").asString().equals("paperwork"))
                .findFirst()
                .orElseThrow()
                .get("row")
                .asString();
    }

    private void everybodyGone() {
        for (String name : new String[] {"Tobin", "Wren", "Jory"}) {
            done("leave", name, "--when", "16:30");
        }
    }

    @Test
    void the_day_is_closed_with_a_name_and_a_pin() {
        everybodyGone();
        done("leave", "Marnie");
        refused("That PIN is wrong.", "1357\n", "close", "--by", "Marnie");
        refused("No PIN was given.", "", "close", "--by", "Marnie");
        refused(
                "Tobin has no PIN yet; \"shedboard pin\" sets one, signed by somebody who has one.",
                PIN,
                "close",
                "--by",
                "Tobin");
        assertEquals("open", tally().get("state").asString());
        done("close", "--by", "Marnie");
        assertEquals("closed", tally().get("state").asString());
        assertTrue(
                done("tally").out().contains("Closed by Marnie, 16:40."),
                done("tally").out());
    }

    @Test
    void nobody_is_asked_for_a_pin_while_something_stands_in_the_way() {
        refused("Still clocked on: Tobin, Jory, Wren. Clock them off first.", "", "close", "--by", "Marnie");
    }

    @Test
    void after_closing_the_day_changes_only_by_correction() {
        everybodyGone();
        done("close", "--by", "Marnie");
        refused("The day 2026-05-12 is closed.", PIN, "break", "Marnie", "rest");
        done("correct", paperwork(), "--by", "Marnie", "--time", "08:50-09:20", "--why", "the kettle");
        JsonNode marnie = of(tally(), "Marnie");
        assertEquals(30, marnie.get("other").get("paperwork").asInt());
    }

    @Test
    void ones_own_hours_are_put_right_without_a_pin_and_anothers_with() {
        String row = paperwork();
        assertEquals(
                "",
                say("", "correct", row, "--by", "Marnie", "--time", "8:50-9:20", "--why", "tea")
                        .err());
        String[] another = {
            "correct", "--by", "Marnie", "--whose", "Jory", "--what", "training", "--time", "9:00-9:20", "--why", "x"
        };
        refused(
                "Jory has C3 from 09:00 to 09:04 already. Put that right first.".replace("C3", firstOf("Jory")),
                "",
                another);
        another[8] = "06:00-06:30";
        refused("No PIN was given.", "", another);
        done(another);
        assertEquals(30, of(tally(), "Jory").get("other").get("training").asInt());
    }

    private String firstOf(String name) {
        JsonNode rows = done("tally", "--rows", "--json").json().get("rows");
        return StreamSupport.stream(rows.spliterator(), false)
                .filter(row -> row.get("name").asString().equals(name)
                        && row.get("from").asString().contains("T09:00"))
                .findFirst()
                .orElseThrow()
                .get("row")
                .asString();
    }

    @Test
    void the_old_row_is_listed_with_who_put_it_right_and_why() {
        done("correct", paperwork(), "--by", "Marnie", "--time", "8:50-9:20", "--why", "was at tea");
        String rows = done("tally", "--rows").out();
        assertTrue(rows.contains("Marnie, 16:40: was at tea (instead of paperwork, 08:50 to 09:30)"), rows);
    }

    @Test
    void yesterday_is_put_right_from_today() {
        JsonNode before = tally("--date", "2026-05-11");
        done(
                "correct",
                "--date",
                "2026-05-11",
                "--by",
                "Marnie",
                "--whose",
                "Wren",
                "--what",
                "at-work",
                "--time",
                "06:00-07:00",
                "--why",
                "fetched the float");
        JsonNode after = tally("--date", "2026-05-11");
        assertEquals(
                of(before, "Wren").get("attended").asInt() + 60,
                of(after, "Wren").get("attended").asInt());
        assertEquals("closed", after.get("state").asString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "16:00-17:30|17:30 is still to come.",
                "8 to 9|\"8 to 9\" is not from when to when: write it like 10:15-10:50.",
                "8:00-8:75|\"8:75\" cannot be read as a time: 14:30, 2:30p, +45 or fri 10."
            })
    void times_that_cannot_be_are_refused_and_nothing_changes(String time, String sentence) {
        String before = done("tally", "--json").out();
        Said said = say(
                PIN,
                "correct",
                "--by",
                "Marnie",
                "--whose",
                "Marnie",
                "--what",
                "training",
                "--time",
                time,
                "--why",
                "x");
        assertTrue(said.err().startsWith(sentence), said.err());
        assertEquals(before, done("tally", "--json").out());
    }

    @Test
    void an_unknown_kind_is_said_with_those_there_are() {
        Said said = say(
                PIN, "correct", "--by", "Marnie", "--whose", "Marnie", "--what", "golf", "--time", "8-9", "--why", "x");
        assertTrue(said.err().contains("golf") && said.err().contains("paperwork"), said.err());
    }

    @Test
    void a_week_and_a_month_are_the_sums_of_their_days() {
        int monday = tally("--date", "2026-05-11").get("attended").asInt();
        int tuesday = tally("--date", "2026-05-12").get("attended").asInt();
        assertEquals(
                monday + tuesday, tally("--week", "2026-05-12").get("attended").asInt());
        JsonNode two = tally("--from", "2026-05-11", "--to", "2026-05-12");
        assertEquals(monday + tuesday, two.get("attended").asInt());
        assertTrue(tally("--month", "2026-05").get("onMachines").asInt()
                > two.get("onMachines").asInt());
    }

    @Test
    void a_line_is_charged_when_its_machine_is_done_for_all_that_was_worked_on_it() {
        JsonNode visit = StreamSupport.stream(tally().get("visits").spliterator(), false)
                .filter(each -> each.get("name").asString().startsWith("5 "))
                .findFirst()
                .orElseThrow();
        assertEquals(60, visit.get("worked").asInt());
        // ninety minutes of Monday, washed and taken apart, and sixty of today
        assertEquals(150, visit.get("lines").get(0).get("chargeable").asInt());
    }

    @Test
    void the_rules_are_said_changed_with_a_pin_and_count_at_once() {
        assertTrue(done("rules").out().contains("nearest tenth of an hour"));
        assertTrue(say(PIN, "rules", "--basis", "estimated").err().startsWith("Say who changes the rules"));
        done("rules", "--basis", "estimated", "--charge", "quarter", "--charge-goes", "up", "--by", "Marnie");
        JsonNode rules = done("rules", "--json").json();
        assertEquals("estimated", rules.get("basis").asString());
        assertEquals("up", rules.get("charge").get("goes").asString());
        assertTrue(say(PIN, "rules", "--meal", "10", "--by", "Marnie").err().startsWith("Such rules cannot be"));
    }

    @Test
    void a_hand_is_lent_and_comes_back_and_an_errand_is_run() {
        done("lend", "Tobin", "9");
        assertTrue(done("tally", "--rows").out().contains("a hand at 9 (Marrowby, Dry Gully)"));
        done("back", "Tobin");
        done("errand", "Jory", "fetching", "--from", "17:00", "--minutes", "30", "--note", "parts run");
        done("break", "Wren", "rest");
        String row = done("tally", "--rows").out();
        assertTrue(row.contains("rest"), row);
    }

    @Test
    void what_was_left_open_yesterday_is_said_first_thing_and_counts_nothing_until_it_is_settled() {
        String morning = "2026-05-13T06:50";
        List<String> day = room.at(morning, "day").out().lines().toList();
        int needs = day.indexOf("Needs you");
        assertTrue(day.get(needs + 1).contains("Tobin is still clocked on since Tue 09:02"), day.get(needs + 1));
        assertTrue(day.get(needs + 4).contains("2026-05-12 was never closed"), day.get(needs + 4));
        JsonNode before =
                room.at(morning, "tally", "--date", "2026-05-12", "--json").json();
        assertEquals(7, before.get("unsettled").size());
        int worked = of(before, "Tobin").get("onMachines").asInt();
        assertEquals("", room.at(morning, "stop", "Tobin", "--when", "10:02").err());
        JsonNode after =
                room.at(morning, "tally", "--date", "2026-05-12", "--json").json();
        // from 9:02, less the rest from ten o'clock on, in which they went off
        assertEquals(worked + 60, of(after, "Tobin").get("onMachines").asInt());
    }

    @Test
    void a_day_that_nobody_closed_is_put_right_and_closed_the_next_morning() {
        String morning = "2026-05-13T06:50";
        String[] close = {"close", "--date", "2026-05-12", "--by", "Marnie", "--demo", "--at", morning};
        assertTrue(room.piped(PIN, close).err().startsWith("Still clocked on"), "somebody is");
        for (String name : new String[] {"Tobin", "Wren", "Jory"}) {
            assertEquals("", room.at(morning, "stop", name, "--when", "10:00").err());
        }
        assertTrue(room.piped(PIN, close).err().startsWith("Marnie, Tobin, Wren, Jory did not say"), "nobody has");
        for (int i = 1; i <= 4; i++) {
            String[] right = {
                "correct",
                "A2026-05-12." + i,
                "--date",
                "2026-05-12",
                "--by",
                "Marnie",
                "--time",
                "07:00-16:30",
                "--why",
                "asked them",
                "--demo",
                "--at",
                morning
            };
            assertEquals("", room.piped(PIN, right).err());
        }
        assertEquals("", room.piped(PIN, close).err());
        JsonNode tally =
                room.at(morning, "tally", "--date", "2026-05-12", "--json").json();
        assertEquals("closed", tally.get("state").asString());
        assertEquals(9 * 60, of(tally, "Wren").get("attended").asInt());
        assertEquals(0, tally.get("unsettled").size());
    }

    @Test
    void what_a_line_will_be_charged_as_is_agreed_by_its_number() {
        done("rules", "--basis", "agreed", "--charge", "exact", "--by", "Marnie");
        done("agree", "5", "1", "--minutes", "95");
        JsonNode visit = StreamSupport.stream(tally().get("visits").spliterator(), false)
                .filter(each -> each.get("name").asString().startsWith("5 "))
                .findFirst()
                .orElseThrow();
        assertEquals(95, visit.get("lines").get(0).get("chargeable").asInt());
        refused("There is no line 2 on 5 (Ostlewick, Lower Tussock).", PIN, "agree", "5", "2", "--minutes", "95");
    }
}
