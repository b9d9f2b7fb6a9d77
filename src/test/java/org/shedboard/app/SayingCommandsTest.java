package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.app.command.CommandLines;
import tools.jackson.databind.JsonNode;

/** Commands that only say something. */
class SayingCommandsTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    static List<String> commands() {
        return CommandLines.names();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_has_help(String command) {
        Said said = room.run(command, "--help");
        assertEquals(0, said.status());
        assertTrue(said.out().startsWith("Usage: shedboard " + command), said.out());
        assertEquals("", said.err());
    }

    @Test
    void the_program_names_its_commands_and_its_version() {
        Said help = room.run("--help");
        commands().forEach(command -> assertTrue(help.out().contains("\n  " + command + " "), command));
        assertTrue(room.run("--version").out().matches("Shedboard \\d+\\.\\d+\\.\\d+\\S*\n"));
    }

    @Test
    void the_day_says_places_yard_concerns_and_hours() {
        Said said = room.demo("day");
        assertEquals(0, said.status());
        List<String> lines = said.out().lines().toList();
        assertEquals("Tussock Flat Machinery, Tue 12 May 2026 09:40: 4 here", lines.get(0));
        assertTrue(lines.get(1).matches("Knock-off 16:30: chance \\d+%.*"), said.out());
        assertTrue(lines.stream().anyMatch(line -> line.matches("  7 .*NOT TO BE RIDDEN.*")), said.out());
        assertTrue(
                lines.stream().anyMatch(line -> line.matches("  W1  Wash pad +9 Jory, \\d+m left, free .*")),
                said.out());
        assertTrue(
                lines.stream()
                        .anyMatch(line ->
                                line.matches("    9  Marrowby, Dry Gully +.*muddy +standard +\\d+/\\d+.*12:15.*%")),
                said.out());
        assertTrue(lines.get(lines.size() - 1).startsWith("Hours: attended 10.92 h"), said.out());
    }

    @Test
    void the_day_as_json_has_its_keys_and_values() {
        JsonNode day = room.demo("day", "--json").json();
        assertEquals(
                List.of("shop", "date", "at", "state", "here", "knockOff", "concerns", "places", "visits", "tally"),
                keys(day));
        JsonNode knockOff = day.get("knockOff");
        assertEquals(List.of("at", "chance", "error", "hangsOn"), keys(knockOff));
        assertEquals("2026-05-12T16:30:00+10:00", knockOff.get("at").asString());
        assertTrue(knockOff.get("chance").asInt() > 95);
        assertTrue(knockOff.get("error").asDouble() > 0);
        String at = day.get("at").asString(); // the shop runs on while it is read
        assertTrue(at.matches("2026-05-12T09:40:\\d\\d\\+10:00"), at);
        assertEquals("open", day.get("state").asString());
        assertEquals(4, day.get("here").size());
        assertEquals("not-to-be-ridden", day.get("concerns").get(0).get("kind").asString());
        JsonNode pad = day.get("places").get(0);
        assertEquals(
                List.of("id", "name", "kind", "ratedKg", "visit", "tag", "people", "minutesLeft", "status"), keys(pad));
        assertEquals("Jory", pad.get("people").get(0).asString());
        assertEquals(9, pad.get("tag").asInt());
        assertTrue(pad.get("ratedKg").isNull());
        assertEquals(900, day.get("places").get(1).get("ratedKg").asInt());
        assertEquals(655, day.get("tally").get("attended").asInt());
        JsonNode first = StreamSupport.stream(day.get("visits").spliterator(), false)
                .filter(visit -> visit.get("tag").asInt(0) == 7)
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of(
                        "id",
                        "tag",
                        "owner",
                        "machine",
                        "class",
                        "state",
                        "mud",
                        "depth",
                        "likely",
                        "safe",
                        "place",
                        "next",
                        "why",
                        "ready",
                        "promise",
                        "chance",
                        "notToBeRidden",
                        "findings",
                        "lastTime",
                        "handover"),
                keys(first));
        assertEquals(3, first.get("mud").asInt());
        String why = StreamSupport.stream(day.get("visits").spliterator(), false)
                .filter(visit -> visit.get("tag").asInt(0) == 11)
                .findFirst()
                .orElseThrow()
                .get("why")
                .asString();
        assertTrue(why.endsWith("not before Wed 09:00: held until Wed 09:00."), why);
        assertTrue(first.get("notToBeRidden").asBoolean());
        assertTrue(first.get("likely").asInt() < first.get("safe").asInt());
    }

    @ParameterizedTest
    @ValueSource(strings = {"day", "next Wren", "tally", "tally --date 2026-05-11", "promise 9"})
    void what_is_said_as_json_is_nothing_but_json(String command) {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.add(0, "--json");
        Said said = room.demo(words.toArray(String[]::new));
        assertEquals(0, said.status(), said.err());
        assertTrue(said.json().isObject());
        assertEquals("", said.err());
    }

    @Test
    void options_stand_before_or_after_the_command() {
        String home = directory.toString();
        Said before = room.run("--home", home, "--demo", "--at", CommandRoom.MORNING, "tally");
        Said after = room.run("tally", "--home", home, "--demo", "--at", CommandRoom.MORNING);
        assertEquals(0, before.status(), before.err());
        assertEquals(before, after);
    }

    @Test
    void without_a_terminal_and_without_words_the_day_is_said() {
        CommandRoom shop = CommandRoom.empty(Homes.demonstration(directory));
        Said said = shop.run();
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().startsWith("Tussock Flat Machinery, "), said.out());
        assertTrue(said.out().contains("W1  Wash pad"), said.out());
    }

    @Test
    void without_a_shop_one_sentence_says_how_to_begin() {
        Said said = CommandRoom.empty(directory.resolve("other")).run();
        assertEquals(1, said.status());
        assertEquals("", said.out());
        assertEquals(1, said.complaints().size());
        assertTrue(said.err().contains("shedboard demo"), said.err());
    }

    @Test
    void the_next_machine_of_a_person_is_named_whatever_the_case() {
        Said said = room.demo("next", "jORY");
        assertEquals(0, said.status(), said.err());
        List<String> lines = said.out().lines().toList();
        assertEquals("Jory: ON IT", lines.get(0));
        assertEquals("  9  Marrowby, Dry Gully, Wexlund Heeler 420", lines.get(1));
        assertEquals("  W1 Wash pad", lines.get(2));
        JsonNode next = room.demo("next", "Jory", "--json").json();
        assertTrue(next.get("task").get("running").asBoolean());
        assertEquals(9, next.get("task").get("tag").asInt());
    }

    @Test
    void the_tally_of_another_day_is_read_from_the_records() {
        JsonNode tally = room.demo("tally", "--date", "2026-05-11", "--json").json();
        assertEquals("closed", tally.get("state").asString());
        assertEquals("2026-05-11", tally.get("date").asString());
        assertEquals(560, tally.get("people").get(0).get("attended").asInt());
        assertEquals(72, tally.get("visits").get(0).get("worked").asInt());
        Said unopened = room.demo("tally", "--date", "2026-05-09");
        assertTrue(unopened.out().contains("nothing to tally"), unopened.out());
    }

    @Test
    void a_time_for_a_described_machine_is_said_and_nothing_is_saved() {
        String before = room.demo("day").out();
        JsonNode quote = room.demo(
                        "promise", "--class", "quad", "--owner", "Somebody New", "--work", "m", "--mud", "3", "--json")
                .json();
        assertEquals("Somebody New", quote.get("name").asString());
        assertTrue(quote.get("asPosted").get("chance").asInt() >= 80);
        String muddy = quote.get("asPosted").get("promise").asString();
        assertTrue(quote.get("cameInClean").get("promise").asString().compareTo(muddy) <= 0);
        assertTrue(quote.get("cleaning").asInt() > 0);
        assertEquals(before, room.demo("day").out());
    }

    @Test
    void a_time_for_a_machine_that_is_here_is_asked_by_its_tag_or_owner() {
        Said byTag = room.demo("promise", "12");
        assertEquals(0, byTag.status(), byTag.err());
        assertEquals(5, byTag.out().lines().count(), byTag.out());
        assertEquals(byTag, room.demo("promise", "drummock"));
        String more = room.demo("promise", "12", "--chance", "99", "--json")
                .json()
                .get("asPosted")
                .get("promise")
                .asString();
        String less = room.demo("promise", "12", "--chance", "30", "--json")
                .json()
                .get("asPosted")
                .get("promise")
                .asString();
        assertTrue(less.compareTo(more) < 0, less + " " + more);
    }

    @Test
    void ascii_is_plain() {
        Said said = room.demo(
                "promise", "--class", "quad", "--owner", "Zoë Ångström", "--work", "o", "--mud", "1", "--ascii");
        assertTrue(said.out().startsWith("Zoe Angstrom: "), said.out());
        assertFalse(said.out().chars().anyMatch(each -> each > '~'));
    }

    private static List<String> keys(JsonNode node) {
        return List.copyOf(node.propertyNames());
    }
}
