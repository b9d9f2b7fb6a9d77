package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** Commands that change the day. */
class ActCommandsTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private JsonNode done(String... words) {
        return doneAt(CommandRoom.MORNING, words);
    }

    private JsonNode doneAt(String moment, String... words) {
        String[] all = Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        Said said = room.at(moment, all);
        assertEquals("", said.err());
        assertEquals(0, said.status());
        return said.json();
    }

    private void refused(String sentence, String... words) {
        Said said = room.demo(words);
        assertEquals(sentence + "\n", said.err());
        assertEquals("", said.out());
        assertEquals(1, said.status());
    }

    private JsonNode visit(String tag) {
        JsonNode visits = room.demo("day", "--json").json().get("visits");
        return StreamSupport.stream(visits.spliterator(), false)
                .filter(visit -> visit.get("tag").asString("").equals(tag)
                        || visit.get("owner").asString().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void somebody_finishes_and_starts_what_the_plan_has_next() {
        JsonNode finished = done("finish", "Wren");
        assertEquals("finish", finished.get("done").asString());
        assertEquals(7, finished.get("visit").get("tag").asInt());
        String next = room.demo("next", "Wren", "--json")
                .json()
                .get("task")
                .get("task")
                .asString();
        done("start", "Wren");
        JsonNode on = room.demo("next", "Wren", "--json").json().get("task");
        assertTrue(on.get("running").asBoolean());
        assertEquals(next, on.get("task").asString());
        assertEquals(1, room.demo("start", "Wren").status());
    }

    @Test
    void the_rest_of_the_points_is_marked_on_finishing() {
        done("take-in", "--class", "quad", "--owner", "Newly Come", "--work", "o", "--mud", "0", "--tag", "20");
        JsonNode next = done("start", "Marnie", "20").get("visit");
        assertEquals("in-hand", next.get("state").asString());
    }

    @Test
    void somebody_pauses_and_goes_on() {
        done("pause", "tobin");
        refused("Tobin is on no machine just now.", "finish", "Tobin");
        done("start", "Tobin", "7");
        assertTrue(room.demo("next", "Tobin", "--json")
                .json()
                .get("task")
                .get("running")
                .asBoolean());
    }

    @Test
    void a_machine_is_held_and_released() {
        JsonNode held = done("hold", "9", "--for", "owners-word", "--note", "second tyre?", "--until", "15:00");
        assertEquals("held", held.get("visit").get("state").asString());
        refused("9 (Marrowby, Dry Gully) is held: release it first.", "start", "Jory", "9");
        assertEquals("in-hand", done("release", "9").get("visit").get("state").asString());
        refused("9 (Marrowby, Dry Gully) is not held.", "release", "9");
    }

    @Test
    void a_task_is_handed_over() {
        done("hand-over", "9", "Marnie");
        JsonNode pad = room.demo("day", "--json").json().get("places").get(0);
        assertEquals("Marnie", pad.get("people").get(0).asString());
        refused("Tobin is on \"Inspect the underside\" already.", "hand-over", "7", "Tobin");
    }

    @Test
    void a_finding_is_recorded_where_somebody_is() {
        refused("There is no point \"no-such\" on 9 (Marrowby, Dry Gully).", "tick", "Jory", "no-such", "fix");
        assertEquals(
                "tick",
                done("tick", "Jory", "pads-front", "fix", "--note", "worn")
                        .get("done")
                        .asString());
        assertTrue(visit("9").get("notToBeRidden").asBoolean());
    }

    @Test
    void work_found_is_added() {
        int before = visit("9").get("likely").asInt();
        done("add-work", "9", "ba");
        assertTrue(visit("9").get("likely").asInt() > before);
    }

    @Test
    void a_machine_is_taken_in_with_a_promise() {
        JsonNode in = done(
                "take-in",
                "--class",
                "quad",
                "--owner",
                "Newly Come",
                "--phone",
                "0000 000 999",
                "--label",
                "Burr",
                "--work",
                "o=own-account",
                "--mud",
                "2",
                "--not-running",
                "--tag",
                "21",
                "--promise",
                "16:15",
                "--by",
                "tobin");
        JsonNode visit = in.get("visit");
        assertEquals(21, visit.get("tag").asInt());
        assertEquals("in-yard", visit.get("state").asString());
        assertEquals("2026-05-12T16:15:00+10:00", visit.get("promise").asString());
        refused(
                "Tag 21 is already on a machine: 21 (Newly Come).",
                "take-in",
                "--class",
                "quad",
                "--owner",
                "X",
                "--work",
                "o",
                "--mud",
                "0",
                "--tag",
                "21");
    }

    @Test
    void a_machine_is_booked_comes_or_is_called_off() {
        done(
                "take-in",
                "--class",
                "ride-on",
                "--owner",
                "Fencepost",
                "--work",
                "o",
                "--mud",
                "0",
                "--expected",
                "fri 10");
        assertEquals("booked", visit("Fencepost").get("state").asString());
        assertEquals(
                "cancelled",
                done("call-off", "fencepost").get("visit").get("state").asString());
        JsonNode here = done("arrive", "thistlewane", "--mud", "3").get("visit");
        assertEquals("in-yard", here.get("state").asString());
        assertEquals(3, here.get("mud").asInt());
    }

    @Test
    void a_machine_is_found_by_part_of_its_number() {
        JsonNode in = done("take-in", "--machine", "00TMU35E6H2078635", "--work", "o", "--mud", "1")
                .get("visit");
        assertEquals("Tarnshaw, Two Rails", in.get("owner").asString());
    }

    @Test
    void what_fits_several_machines_is_no_name() {
        Said said = room.demo("promise", "--machine", "quarrick burr", "--work", "o", "--mud", "1");
        assertEquals(1, said.status());
        assertTrue(said.err().startsWith("\"quarrick burr\" may be any of "), said.err());
        assertEquals(1, said.complaints().size());
    }

    @Test
    void a_promise_changes_with_its_reason() {
        refused(
                "9 (Marrowby, Dry Gully) has a promise already: say why it changes.",
                "promise",
                "9",
                "--say",
                "16:00",
                "--to",
                "the daughter");
        JsonNode said =
                done("promise", "9", "--say", "4:00p", "--to", "the daughter", "--why", "hoist out", "--owners-wish");
        assertEquals(
                "2026-05-12T16:00:00+10:00", said.get("visit").get("promise").asString());
    }

    @Test
    void a_machine_goes_home() {
        refused("7 (Quillgate, Nettle Flat) is not done yet.", "collect", "7", "--handed-to", "Quillgate");
        assertEquals("gone", done("collect", "5").get("visit").get("state").asString());
    }

    @Test
    void hoists_are_checked_and_locked_out() {
        done("check", "light hoist", "--by", "Tobin", "--locked-out", "leaks");
        assertTrue(room.demo("day").out().contains("LOCKED OUT"));
        done("check", "h1", "--by", "Tobin");
        refused("There is no hoist \"W1\" here.", "check", "W1", "--by", "Tobin");
    }

    @Test
    void people_do_other_work_stop_stay_and_leave() {
        done("other", "Jory", "training");
        assertEquals(
                "training",
                room.demo("next", "Jory", "--json").json().get("otherWork").asString());
        done("stop", "Jory");
        assertTrue(room.demo("next", "Jory", "--json").json().get("otherWork").isNull());
        done("stay", "Jory", "--until", "17:00");
        assertEquals(
                "2026-05-12T17:00:00+10:00",
                room.demo("day", "--json")
                        .json()
                        .get("here")
                        .get(3)
                        .get("until")
                        .asString());
        done("leave", "Jory");
        assertEquals(3, room.demo("day", "--json").json().get("here").size());
    }

    @Test
    void the_day_is_closed_and_the_next_one_opened() {
        refused("Still clocked on: Tobin, Jory, Wren. Clock them off first.", "close", "--by", "Marnie");
        for (String name : new String[] {"Tobin", "Wren", "Jory"}) {
            done("leave", name);
        }
        Said said = room.piped("2468\n", "close", "--by", "marnie", "--demo", "--at", CommandRoom.MORNING);
        assertEquals("", said.err());
        String tomorrow = "2026-05-13T06:50";
        JsonNode opened = doneAt(
                tomorrow,
                "open",
                "--by",
                "Marnie",
                "--here",
                "Marnie",
                "--here",
                "Wren=07:00-12:00",
                "--here",
                "Tobin",
                "--away",
                "Tobin",
                "--checked",
                "H2=Wren",
                "--locked-out",
                "H1=chain slipped");
        assertEquals("open-day", opened.get("done").asString());
        JsonNode day = room.at(tomorrow, "day", "--json").json();
        assertEquals(2, day.get("here").size());
        assertEquals(
                "2026-05-13T12:00:00+10:00", day.get("here").get(1).get("until").asString());
        assertTrue(day.get("places").get(1).get("status").asString().contains("LOCKED OUT"));
    }

    @Test
    void without_names_everybody_is_here() {
        String tomorrow = "2026-05-13T06:50";
        doneAt(tomorrow, "open", "--by", "Marnie");
        assertEquals(4, room.at(tomorrow, "day", "--json").json().get("here").size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    start nobody                          | Nobody called "nobody" works here.
                    start Wren 99                         | There is no visit "99" today.
                    start Marnie 9 --place H9             | There is no place "H9" here.
                    finish Marnie                         | Marnie is on no machine just now.
                    hold 5 --for parts                    | 5 (Ostlewick, Lower Tussock) is not in the yard or in hand, so there is nothing to hold.
                    call-off 9                            | 9 (Marrowby, Dry Gully) is not a booking.
                    hand-over 12 Wren                     | Nobody is on 12 (Drummock, Saltbush Rise) just now.
                    open --by Marnie                      | The day 2026-05-12 is open already.
                    promise 5                             | There is nothing left to promise for 5 (Ostlewick, Lower Tussock).
                    promise 12 --say 08:00 --to X --why Y | 08:00 is over already; promise a time to come.
                    take-in --class hovercraft --work o --mud 1 | There is no machine class "hovercraft" in the catalogue.
                    take-in --machine 9 --work o --mud 1  | 9 (Marrowby, Dry Gully) is here already.
                    """)
    void what_cannot_be_is_refused_with_one_sentence(String command, String sentence) {
        refused(sentence, command.split(" "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    finish Wren --rest perfect    | good, watch, fix, not-reached
                    finish                        | NAME
                    dance                         | dance
                    hold 9                        | --for
                    hold 9 --for rain             | parts, owners-word, another-look
                    hold 9 --for parts --until soonish | "soonish"
                    take-in --class quad --owner X --work o | How muddy
                    take-in --class quad --owner X --mud 1  | What is wanted
                    take-in --owner X --work o --mud 1      | Which machine
                    take-in --class quad --work o --mud 9   | 0 to 3
                    take-in --class quad --owner X --work o=luck --mud 1 | owner, maker, own-account
                    promise                       | For which machine
                    promise 9 --say 16:00         | Give --to
                    promise 9 --chance 100        | 1 to 99
                    start Wren --task wash        | --task
                    open --by Marnie --here Wren=early | "early"
                    open --by Marnie --checked H1 --locked-out H1=no | more than once
                    tally --date yesterday        | "yesterday"
                    day --at noon                 | "noon"
                    tick Jory tyres good --measured NaN | NaN
                    """)
    void wrong_use_is_said_with_a_hint(String command, String part) {
        Said said = room.demo(command.split(" "));
        assertEquals(2, said.status(), said.err() + said.out());
        assertEquals(2, said.complaints().size(), said.err());
        assertTrue(said.complaints().get(0).contains(part), said.err());
        assertTrue(said.complaints().get(1).contains("--help"), said.err());
        assertEquals("", said.out());
    }

    private JsonNode next(String tag) {
        return visit(tag).get("next");
    }

    @Test
    void a_task_is_pinned_to_a_person_and_a_time_and_lifted_again() {
        assertEquals("Jory", next("12").get("person").asString());
        done("insist", "12", "drive it in", "--person", "Wren", "--start", "14:00");
        assertEquals("Wren", next("12").get("person").asString());
        assertTrue(
                next("12").get("from").asString().startsWith("2026-05-12T14:00"),
                next("12").toString());
        done("lift", "12", "drive it in");
        refused(
                "12 (Drummock, Saltbush Rise): nothing is insisted on for \"Drive it in\".",
                "lift",
                "12",
                "drive it in");
    }

    @Test
    void what_is_insisted_on_has_to_be_said_of_a_task_there_is() {
        refused(
                "There is no task \"gearbox\" on 12 (Drummock, Saltbush Rise).",
                "insist",
                "12",
                "gearbox",
                "--start",
                "14:00");
        Said nothing = room.demo("insist", "12", "drive it in");
        assertTrue(nothing.err().contains("--place, --start, --person"), nothing.err());
        assertEquals(2, nothing.status());
    }
}
