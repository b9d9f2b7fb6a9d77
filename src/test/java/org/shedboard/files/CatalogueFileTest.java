package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Year;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.estimate.Catalogue;

/** Catalogues with one thing wrong: each a sound one in which one piece of text is replaced. */
class CatalogueFileTest {
    static final String SOUND = """
            {
              "note": "invented",
              "testDriveMinutes": 7,
              "signOffMinutes": 6,
              "spreads": {"byKind": {"move": 0.2, "clean": 0.3, "inspect": 0.2, "repair": 0.3, "sign-off": 0.2},
                          "machine": 0.2, "person": 0.1},
              "usual": {
                "drive-in": {"name": "in"}, "push-in": {"name": "push"}, "raise": {"name": "up"},
                "lower": {"name": "down"}, "wash": {"name": "wash"}, "uncover": {"name": "free"},
                "inspect-underside": {"name": "under"}, "inspect-topside": {"name": "top"},
                "test-drive": {"name": "drive"}, "standing-check": {"name": "stand"}, "sign-off": {"name": "sign"}
              },
              "classes": [
                {"id": "quad", "name": "Quad", "massKg": 330, "washMinutes": [0, 6, 12, 20],
                 "moving": {"driven": 3, "pushed": 8, "raise": 3, "lower": 2},
                 "points": [
                   {"id": "pads", "name": "Pads", "where": "front", "step": "underside", "due": "once-over",
                    "inspectMinutes": 2, "uncoverMinutes": [0, 1, 2, 3], "stopsRiding": true,
                    "measure": {"unit": "mm", "low": 1.5, "high": 10}, "fixedBy": "oil"},
                   {"id": "fuel", "name": "Fuel", "where": "tank", "step": "topside", "due": "full",
                    "inspectMinutes": 1, "uncoverMinutes": [0, 0, 1, 1], "caution": "no flame"}
                 ]}
              ],
              "works": [
                {"id": "oil", "name": "Oil", "key": "o", "classes": ["quad"], "depth": "once-over",
                 "every": {"hours": 50},
                 "tasks": [
                   {"id": "drain", "name": "Drain", "step": "underside", "skill": "service", "handsOn": 5, "unattended": 15},
                   {"id": "plug", "name": "Plug", "step": "underside", "skill": "service", "handsOn": 2, "after": ["drain"]}
                 ],
                 "parts": [{"name": "Oil", "quantity": "2 L"}]},
                {"id": "box", "name": "Gearbox", "key": "g", "classes": ["quad"], "depth": "full",
                 "every": {"months": 12}, "includes": ["oil"],
                 "tasks": [
                   {"id": "drain", "name": "Drain", "step": "underside", "skill": "service", "handsOn": 9}
                 ]}
              ]
            }
            """;

    static final Year NEXT_YEAR = Year.of(2027);

    static Stream<Arguments> oneThingWrong() {
        return Stream.of(
                wrong("\"signOffMinutes\": 6", "\"signOffMinutes\": 0", "signOffMinutes: 0 is not from 1 to 600"),
                wrong("\"signOffMinutes\": 6,", "", "signOffMinutes: is missing"),
                wrong("\"signOffMinutes\": 6", "\"signOffMinutes\": 6.5", "signOffMinutes: is 6.5, not a whole number"),
                wrong("\"note\"", "\"colour\"", "colour: unknown key"),
                wrong("\"machine\": 0.2", "\"machine\": -1", "spreads.machine: -1 is not from 0 to 2"),
                wrong("\"move\": 0.2, ", "", "spreads.byKind.move: is missing"),
                wrong("\"raise\": {\"name\": \"up\"},", "", "usual.raise: is missing"),
                wrong("\"raise\": {\"name\": \"up\"}", "\"raise\": \"up\"", "usual.raise: is \"up\", not an object"),
                wrong("{\"name\": \"up\"}", "{\"name\": \" \"}", "usual.raise.name: is empty"),
                wrong("\"massKg\": 330", "\"massKg\": 20001", "classes[0].massKg: 20001 is not from 20 to 20000"),
                wrong("[0, 6, 12, 20]", "[0, 6, 20]", "classes[0].washMinutes: has 3 numbers, not 4"),
                wrong(
                        "[0, 6, 12, 20]",
                        "[0, 6, 5, 20]",
                        "classes[0].washMinutes[2]: more mud must not take less than the grade before"),
                wrong(
                        "[0, 0, 1, 1]",
                        "[0, \"one\", 1, 1]",
                        "classes[0].points[1].uncoverMinutes[1]: is \"one\", not a whole number"),
                wrong(
                        "[0, 0, 1, 1]",
                        "[0, 0, 1, 601]",
                        "classes[0].points[1].uncoverMinutes[3]: 601 is not from 0 to 600"),
                wrong(
                        "\"id\": \"fuel\"",
                        "\"id\": \"pads\"",
                        "classes[0].points[1].id: \"pads\" is already at classes[0].points[0].id"),
                wrong("\"id\": \"fuel\", ", "", "classes[0].points[1].id: is missing"),
                wrong(
                        "\"step\": \"topside\"",
                        "\"step\": \"wash\"",
                        "classes[0].points[1].step: nothing is inspected on the wash pad"),
                wrong(
                        "\"step\": \"topside\"",
                        "\"step\": \"inside\"",
                        "classes[0].points[1].step: is \"inside\", not one of wash, underside, topside, drive"),
                wrong("\"fixedBy\": \"oil\"", "\"fixedBy\": \"bix\"", "classes[0].points[0].fixedBy: no work \"bix\""),
                wrong(
                        "\"inspectMinutes\": 1",
                        "\"inspectMinutes\": 0",
                        "classes[0].points[1].inspectMinutes: 0 is not from 1 to 600"),
                wrong("\"due\": \"full\",", "", "classes[0].points[1].due: is missing"),
                wrong("\"high\": 10", "\"high\": 1", "classes[0].points[0].measure.high: is below \"low\""),
                wrong(
                        "\"stopsRiding\": true",
                        "\"stopsRiding\": \"yes\"",
                        "classes[0].points[0].stopsRiding: is \"yes\", not true or false"),
                wrong("\"pushed\": 8, ", "", "classes[0].moving.pushed: is missing"),
                wrong(
                        "\"id\": \"box\"",
                        "\"id\": \"oil\"",
                        List.of(
                                "works[1].id: \"oil\" is already at works[0].id",
                                "works[1].includes[0]: no work before it \"oil\"")),
                wrong("\"key\": \"g\"", "\"key\": \"o\"", "works[1].key: \"o\" already chooses works[0] for quad"),
                wrong("\"key\": \"g\"", "\"key\": \"gbx\"", "works[1].key: \"gbx\" is not one or two small letters"),
                wrong(
                        "\"key\": \"g\", \"classes\": [\"quad\"]",
                        "\"key\": \"g\", \"classes\": [\"quad\", \"boat\"]",
                        "works[1].classes[1]: no machine class \"boat\""),
                wrong(
                        "\"key\": \"g\", \"classes\": [\"quad\"]",
                        "\"key\": \"g\", \"classes\": []",
                        "works[1].classes: is empty"),
                wrong("\"handsOn\": 9", "\"handsOn\": 0", "works[1].tasks[0].handsOn: 0 is not from 1 to 600"),
                wrong(
                        "\"id\": \"plug\"",
                        "\"id\": \"in-underside\"",
                        "works[0].tasks[1].id: \"in-underside\" is a task that every visit has"),
                wrong(
                        "\"id\": \"plug\"",
                        "\"id\": \"drain\"",
                        List.of(
                                "works[0].tasks[1].id: \"drain\" is already at works[0].tasks[0].id",
                                "works[0].tasks[1].id: \"drain\" has another name, step, skill or kind of place at works[0].tasks[0]",
                                "works[0].tasks[1].after: goes in a circle: drain after drain")),
                wrong(
                        "\"after\": [\"drain\"]",
                        "\"after\": [\"brain\"]",
                        "works[0].tasks[1].after[0]: no task of the same work and step \"brain\""),
                wrong(
                        "\"handsOn\": 5,",
                        "\"handsOn\": 5, \"after\": [\"plug\"],",
                        "works[0].tasks[1].after: goes in a circle: plug after drain after plug"),
                wrong(
                        "\"skill\": \"service\", \"handsOn\": 9",
                        "\"skill\": \"hoist\", \"handsOn\": 9",
                        "works[1].tasks[0].id: \"drain\" has another name, step, skill or kind of place at works[0].tasks[0]"),
                wrong(
                        "\"handsOn\": 2,",
                        "\"handsOn\": 2, \"kinds\": [\"floor\"],",
                        "works[0].tasks[1].kinds: not every kind does for step underside"),
                wrong("{\"hours\": 50}", "{}", "works[0].every.hours: is missing, and so are kilometres and months"),
                wrong("{\"hours\": 50}", "{\"hours\": 0}", "works[0].every.hours: 0 is not from 1 to 100000"),
                wrong(
                        "\"includes\": [\"oil\"]",
                        "\"includes\": [\"box\"]",
                        "works[1].includes[0]: no work before it \"box\""),
                wrong(
                        "\"every\": {\"months\": 12}, ",
                        "",
                        "works[1].includes: says what it includes, but not how often it is to be done"),
                wrong("\"quantity\": \"2 L\"", "\"quantity\": 2", "works[0].parts[0].quantity: is 2, not a text"));
    }

    @ParameterizedTest
    @MethodSource
    void oneThingWrong(String text, String other, List<String> expected) {
        assertEquals(1, SOUND.split(Pattern.quote(text), -1).length - 1, "the table names one place: " + text);
        Reading<Catalogue> reading = CatalogueFile.read(SOUND.replace(text, other), NEXT_YEAR);
        assertEquals(expected, reading.faults().stream().map(Object::toString).toList());
        assertTrue(reading.value().isEmpty(), "nothing half loaded");
    }

    @Test
    void the_catalogue_of_the_table_is_sound_itself() {
        assertEquals(List.of(), CatalogueFile.read(SOUND, NEXT_YEAR).faults());
    }

    @Test
    void a_point_that_names_work_for_another_class_is_found() {
        String other = SOUND.replace(
                "{\"id\": \"oil\", \"name\": \"Oil\", \"key\": \"o\", \"classes\": [\"quad\"]",
                "{\"id\": \"oil\", \"name\": \"Oil\", \"key\": \"o\", \"classes\": [\"mower\"]");
        String two = other.replace(
                "\"classes\": [\n",
                "\"classes\": [\n    {\"id\": \"mower\", \"name\": \"Mower\", \"massKg\": 200, \"washMinutes\": [0, 6, 12, 20],"
                        + " \"moving\": {\"driven\": 3, \"pushed\": 8, \"raise\": 3, \"lower\": 2}, \"points\": ["
                        + "{\"id\": \"blade\", \"name\": \"Blade\", \"where\": \"deck\", \"step\": \"underside\","
                        + " \"due\": \"full\", \"inspectMinutes\": 1, \"uncoverMinutes\": [0, 0, 1, 1]}]},\n");
        assertEquals(
                List.of("classes[1].points[0].fixedBy: \"oil\" is no work for a quad"),
                CatalogueFile.read(two, NEXT_YEAR).faults().stream()
                        .map(Object::toString)
                        .toList());
    }

    @Test
    void a_circle_that_only_two_works_together_make_is_found() {
        String second = SOUND.replace("\"handsOn\": 9}", """
                "handsOn": 9, "after": ["plug"]},
                   {"id": "plug", "name": "Plug", "step": "underside", "skill": "service", "handsOn": 2}""");
        assertEquals(
                List.of("works[1].tasks[0].after: goes in a circle: drain after plug after drain"),
                CatalogueFile.read(second, NEXT_YEAR).faults().stream()
                        .map(Object::toString)
                        .toList());
    }

    @Test
    void all_faults_come_at_once_in_the_order_of_the_file() {
        String two = SOUND.replace("\"massKg\": 330", "\"massKg\": 3")
                .replace("\"inspectMinutes\": 1", "\"inspectMinutes\": -1");
        assertEquals(
                List.of("classes[0].massKg", "classes[0].points[1].inspectMinutes"),
                CatalogueFile.read(two, NEXT_YEAR).faults().stream()
                        .map(fault -> fault.where())
                        .toList());
    }

    @Test
    void text_that_is_no_json_is_told_with_line_and_column() {
        Reading<Catalogue> reading = CatalogueFile.read("{\n  \"note\": ,\n}", NEXT_YEAR);
        assertEquals(1, reading.faults().size());
        assertEquals("line 2 column 11", reading.faults().get(0).where());
    }

    @Test
    void a_key_given_twice_is_told_with_its_line() {
        Reading<Catalogue> reading = CatalogueFile.read("{\n  \"note\": \"a\",\n  \"note\": \"b\"\n}", NEXT_YEAR);
        assertEquals(1, reading.faults().size());
        assertTrue(
                reading.faults().get(0).where().startsWith("line 3 "),
                reading.faults().toString());
    }

    @Test
    void an_empty_file_or_a_list_is_no_catalogue() {
        assertEquals(
                "line 1 column 1: the file is empty",
                CatalogueFile.read("", NEXT_YEAR).faults().get(0).toString());
        assertEquals(
                "is a list, not an object",
                CatalogueFile.read("[]", NEXT_YEAR).faults().get(0).toString());
        assertEquals(
                "is null, not an object",
                CatalogueFile.read("null", NEXT_YEAR).faults().get(0).toString());
    }

    private static Arguments wrong(String text, String other, String fault) {
        return wrong(text, other, List.of(fault));
    }

    private static Arguments wrong(String text, String other, List<String> faults) {
        return Arguments.of(text, other, faults);
    }
}
