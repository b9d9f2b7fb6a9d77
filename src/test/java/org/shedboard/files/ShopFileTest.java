package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.day.Act;
import org.shedboard.day.Setup;
import org.shedboard.day.TimedAct;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.PastFinding;
import org.shedboard.estimate.PastVisit;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;

/** Shops and histories with one thing wrong: each a sound one in which one piece of text is replaced. */
class ShopFileTest {
    private static final Catalogue CATALOGUE = CatalogueFile.read(CatalogueFileTest.SOUND, CatalogueFileTest.NEXT_YEAR)
            .expectValue();

    private static final String SHOP = """
            {
              "note": "invented",
              "name": "Shed",
              "zone": "Australia/Brisbane",
              "workdays": ["monday", "tuesday", "friday"],
              "places": [
                {"id": "W1", "name": "Pad", "kind": "wash"},
                {"id": "H1", "name": "Hoist", "kind": "hoist", "ratedKg": 900}
              ],
              "people": [
                {"id": "P1", "name": "Ada", "role": "foreman", "skills": ["wash", "sign-off"], "pacePercent": 100,
                 "shifts": ["07:00-12:00", "12:30-16:00"], "overtime": ["16:00-17:00"]},
                {"id": "P2", "name": "Bob", "role": "apprentice", "skills": ["wash"], "pacePercent": 150,
                 "shifts": ["07:30-15:00"]}
              ],
              "owners": [{"id": "C1", "name": "Farm", "phone": "0"}, {"id": "C2", "name": "Station"}],
              "machines": [
                {"id": "M1", "owner": "C1", "class": "quad", "label": "Any", "modelYear": 2020, "massKg": 300},
                {"id": "M2", "owner": "C2", "class": "quad", "label": "Other", "number": "77", "meterHours": 12}
              ],
              "morning": {
                "date": "2026-05-12",
                "opensAt": "09:40",
                "acts": [
                  {"at": "-1 15:00", "do": "take-in", "by": "P1", "visit": "@red", "machine": "M1", "mud": 2,
                   "depth": "full", "condition": ["rolls", "steers"], "works": [{"work": "oil"}], "tag": 4,
                   "promise": {"ready": "+1 15:30", "to": "Farm"}},
                  {"at": "07:00", "do": "open-day", "by": "P1",
                   "here": [{"person": "P2", "from": "07:30", "until": "15:00"}],
                   "checks": [{"place": "H1", "checkedBy": "P2", "lockedOut": "catch bent"}]},
                  {"at": "07:10", "do": "start", "by": "P1", "visit": "@red", "task": "drain", "place": "H1"},
                  {"at": "07:20", "do": "finish", "by": "P1", "person": "P2", "visit": "@red", "task": "drain"},
                  {"at": "07:21", "do": "tick", "by": "P1", "visit": "@red", "point": "pads", "mark": "fix",
                   "measured": 1.1, "note": "thin"},
                  {"at": "07:22", "do": "tick", "by": "P1", "visit": "@red", "step": "topside"},
                  {"at": "07:23", "do": "add-work", "by": "P1", "visit": "@red",
                   "works": [{"work": "box", "payer": "maker"}]},
                  {"at": "07:30", "do": "hold", "by": "P1", "visit": "@red", "reason": "parts", "until": "+1 09:00"}
                ]
              }
            }
            """;

    private static final String HISTORY = """
            {
              "note": "invented",
              "visits": [
                {"date": "2026-05-04", "machine": "M1", "mud": 1, "depth": "full", "works": ["oil"],
                 "minutes": {"wash": 12, "drive": 9}, "people": {"wash": "P2", "drive": "P1"}},
                {"date": "2026-05-05", "machine": "M2", "mud": 0, "depth": "once-over", "works": ["oil", "box"],
                 "minutes": {"drive": 8}, "people": {"drive": "P1"}}
              ]
            }
            """;

    private static final String HISTORY_WITH_FINDINGS = HISTORY.replace("\"people\": {\"drive\": \"P1\"}}", """
            "people": {"drive": "P1"}, "meterHours": 12, "findings": [
                  {"point": "pads", "mark": "fix", "measured": 1.2, "note": "thin", "by": "P2",
                   "asked": {"answer": "yes", "by": "P1", "of": "Station"}},
                  {"point": "fuel", "mark": "not-reached", "note": "clay", "by": "P1"}]}""");

    static Stream<Arguments> oneThingWrongInAShop() {
        return Stream.of(
                wrong("\"name\": \"Shed\",", "", "name: is missing"),
                wrong(
                        "Australia/Brisbane",
                        "Tussock/Flat",
                        "zone: is \"Tussock/Flat\", not a time zone such as Australia/Brisbane"),
                wrong(
                        "\"friday\"",
                        "\"someday\"",
                        "workdays[2]: is \"someday\", not one of monday, tuesday, wednesday, thursday, friday, saturday, sunday"),
                wrong("[\"monday\", \"tuesday\", \"friday\"]", "[]", "workdays: names no day"),
                wrong(
                        "\"id\": \"H1\"",
                        "\"id\": \"W1\"",
                        List.of(
                                "places[1].id: \"W1\" is already at places[0].id",
                                "morning.acts[1].checks[0].place: no hoist \"H1\"",
                                "morning.acts[2].place: no place \"H1\"")),
                wrong("\"ratedKg\": 900", "\"ratedKg\": 0", "places[1].ratedKg: 0 is not from 1 to 100000"),
                wrong(", \"ratedKg\": 900", "", "places[1].ratedKg: is missing"),
                wrong("\"kind\": \"wash\"", "\"kind\": \"wash\", \"ratedKg\": 1", "places[0].ratedKg: unknown key"),
                wrong("\"pacePercent\": 150", "\"pacePercent\": 9", "people[1].pacePercent: 9 is not from 10 to 1000"),
                wrong(
                        "[\"wash\"]",
                        "[\"wish\"]",
                        "people[1].skills[0]: is \"wish\", not one of wash, hoist, service, brakes, electrics, sign-off"),
                noPin("\"12 34\""),
                noPin("\"123\""),
                noPin("\"1234567890123\""),
                noPin("1234"),
                noPin("[\"1234\"]"),
                wrong("12:30-16:00", "11:30-16:00", "people[0].shifts[1]: begins before the hours before it end"),
                wrong("16:00-17:00", "15:30-17:00", "people[0].overtime[0]: lies inside the usual shift"),
                wrong(
                        "07:30-15:00",
                        "15:00-07:30",
                        "people[1].shifts[0]: is \"15:00-07:30\", not hours such as 07:00-09:30"),
                wrong("\"owner\": \"C2\"", "\"owner\": \"C3\"", "machines[1].owner: no owner \"C3\""),
                wrong(
                        "\"class\": \"quad\", \"label\": \"Other\"",
                        "\"class\": \"boat\", \"label\": \"Other\"",
                        "machines[1].class: no machine class \"boat\""),
                wrong("\"label\": \"Other\", ", "", "machines[1].label: is missing"),
                wrong("\"modelYear\": 2020", "\"modelYear\": 20", "machines[0].modelYear: 20 is not from 1900 to 2100"),
                wrong("\"2026-05-12\"", "\"2026-05-13\"", "morning.date: is no workday of this shop"),
                wrong("\"2026-05-12\"", "\"12 May\"", "morning.date: is \"12 May\", not a date such as 2026-05-12"),
                wrong("\"09:40\"", "\"07:00\"", "morning.opensAt: lies before the last act"),
                wrong(
                        "\"at\": \"07:30\"",
                        "\"at\": \"7.30\"",
                        "morning.acts[7].at: is \"7.30\", not a time such as 15:10 or -1 15:10"),
                wrong("\"at\": \"07:22\"", "\"at\": \"07:20\"", "morning.acts[5].at: lies before the act before it"),
                wrong(
                        "\"do\": \"hold\"",
                        "\"do\": \"drop\"",
                        "morning.acts[7].do: is \"drop\", not one of open-day, take-in, arrive, say-promise, start, pause, finish, tick, hold, release, hand-over, add-work, do-other, stop, be-here, check-hoist, collect, call-off, order, close-day"),
                wrong("\"do\": \"hold\", ", "", "morning.acts[7].do: is missing"),
                wrong(
                        "\"by\": \"P1\", \"person\": \"P2\"",
                        "\"by\": \"P1\", \"person\": \"P9\"",
                        "morning.acts[3].person: no person \"P9\""),
                wrong(
                        "\"person\": \"P2\", \"visit\"",
                        "\"prson\": \"P2\", \"visit\"",
                        "morning.acts[3].prson: unknown key"),
                wrong(
                        "\"machine\": \"M1\", \"mud\"",
                        "\"machine\": \"M9\", \"mud\"",
                        "morning.acts[0].machine: no machine \"M9\""),
                wrong("\"mud\": 2", "\"mud\": 4", "morning.acts[0].mud: 4 is not from 0 to 3"),
                wrong(
                        "\"works\": [{\"work\": \"oil\"}]",
                        "\"works\": []",
                        List.of(
                                "morning.acts[0].works: is empty",
                                "morning.acts[2].task: no task of @red \"drain\"",
                                "morning.acts[3].task: no task of @red \"drain\"")),
                wrong(
                        "{\"work\": \"oil\"}",
                        "{\"work\": \"oil\"}, {\"work\": \"polish\"}",
                        "morning.acts[0].works[1].work: no work \"polish\""),
                wrong(
                        "\"task\": \"drain\", \"place\": \"H1\"",
                        "\"task\": \"rain\", \"place\": \"H1\"",
                        "morning.acts[2].task: no task of @red \"rain\""),
                wrong(
                        "\"task\": \"drain\", \"place\": \"H1\"",
                        "\"task\": \"drain\", \"place\": \"H9\"",
                        "morning.acts[2].place: no place \"H9\""),
                wrong(
                        "\"point\": \"pads\"",
                        "\"point\": \"horn\"",
                        "morning.acts[4].point: no point looked at on @red \"horn\""),
                wrong(
                        "\"depth\": \"full\", \"condition\"",
                        "\"depth\": \"once-over\", \"condition\"",
                        "morning.acts[5].step: leaves no point of \"@red\" to tick"),
                wrong(
                        "\"visit\": \"@red\", \"reason\"",
                        "\"visit\": \"@blue\", \"reason\"",
                        "morning.acts[7].visit: no visit \"@blue\""),
                wrong(
                        "\"visit\": \"@red\", \"machine\"",
                        "\"visit\": \"red\", \"machine\"",
                        List.of(
                                "morning.acts[0].visit: \"red\" does not begin with @",
                                "morning.acts[2].visit: no visit \"@red\"",
                                "morning.acts[3].visit: no visit \"@red\"",
                                "morning.acts[4].visit: no visit \"@red\"",
                                "morning.acts[5].visit: no visit \"@red\"",
                                "morning.acts[6].visit: no visit \"@red\"",
                                "morning.acts[7].visit: no visit \"@red\"")),
                wrong(
                        "\"checkedBy\": \"P2\"",
                        "\"checkedBy\": \"H1\"",
                        "morning.acts[1].checks[0].checkedBy: no person \"H1\""),
                wrong(
                        "\"until\": \"+1 09:00\"",
                        "\"until\": \"soon\"",
                        "morning.acts[7].until: is \"soon\", not a time such as 15:10 or -1 15:10"));
    }

    /** No fault of a PIN repeats it. */
    private static Arguments noPin(String json) {
        return wrong(
                "\"name\": \"Bob\"",
                "\"name\": \"Bob\", \"pin\": " + json,
                "people[1].pin: is not a text of 4 to 12 digits");
    }

    static Stream<Arguments> oneThingWrongInAHistory() {
        return Stream.of(
                wrong("2026-05-05", "2026-05-03", "visits[1].date: lies before the visit before it"),
                wrong("\"machine\": \"M2\"", "\"machine\": \"M3\"", "visits[1].machine: no machine \"M3\""),
                wrong("\"box\"", "\"fox\"", "visits[1].works[1]: no work \"fox\""),
                wrong(
                        "\"drive\": 8",
                        "\"drive\": 0",
                        List.of(
                                "visits[1].minutes.drive: 0 is not from 1 to 2000",
                                "visits[1].people: does not name one person for each step that has minutes")),
                wrong(
                        "\"drive\": 8",
                        "\"polish\": 8",
                        List.of(
                                "visits[1].minutes.polish: unknown key",
                                "visits[1].people: does not name one person for each step that has minutes")),
                wrong(
                        "\"wash\": \"P2\", ",
                        "",
                        "visits[0].people: does not name one person for each step that has minutes"),
                wrong("\"wash\": \"P2\"", "\"wash\": \"P7\"", "visits[0].people.wash: no person \"P7\""),
                wrong("\"mud\": 1", "\"mud\": \"much\"", "visits[0].mud: is \"much\", not a whole number"));
    }

    static Stream<Arguments> oneThingWrongInAFinding() {
        String pads = "visits[1].findings[0].";
        String fuel = "visits[1].findings[1].";
        return Stream.of(
                wrong("\"pads\"", "\"pods\"", pads + "point: no point of a quad \"pods\""),
                wrong("\"fuel\"", "\"pads\"", fuel + "point: \"pads\" is already at " + pads + "point"),
                wrong(
                        "\"mark\": \"fix\"",
                        "\"mark\": \"bad\"",
                        pads + "mark: is \"bad\", not one of good, watch, fix, not-reached"),
                wrong(
                        "\"mark\": \"fix\"",
                        "\"mark\": \"good\"",
                        List.of(
                                pads + "mark: is good, but 1.2 is not from 1.5 to 10.0 mm",
                                pads + "asked: an owner is asked about a fix only")),
                wrong("1.2", "\"thin\"", pads + "measured: is \"thin\", not a number"),
                wrong(
                        "\"fuel\",",
                        "\"fuel\", \"measured\": 3,",
                        List.of(
                                fuel + "measured: was read off at a point that was not reached",
                                fuel + "measured: nothing is read off at \"fuel\"")),
                wrong("\"note\": \"clay\", ", "", fuel + "note: does not say why it was not reached"),
                wrong("\"by\": \"P2\"", "\"by\": \"P7\"", pads + "by: no person \"P7\""),
                wrong("\"by\": \"P1\"}", "\"by\": \"P7\"}", fuel + "by: no person \"P7\""),
                wrong("\"by\": \"P1\", \"of\"", "\"of\"", pads + "asked.by: is missing"),
                wrong("\"of\": \"Station\"", "\"of\": \"\"", pads + "asked.of: is empty"),
                wrong("\"yes\"", "\"no\"", pads + "asked.answer: is no, but \"oil\" was done"),
                wrong("\"yes\"", "\"aye\"", pads + "asked.answer: is \"aye\", not one of yes, no, later"),
                wrong("[\"oil\", \"box\"]", "[\"box\"]", pads + "asked.answer: is yes, but \"oil\" was not done"),
                wrong(
                        "\"mark\": \"not-reached\"",
                        "\"asked\": {\"answer\": \"later\", \"by\": \"P1\", \"of\": \"Station\"}, \"mark\": \"fix\"",
                        fuel + "asked: no work puts \"fuel\" right"));
    }

    @ParameterizedTest
    @MethodSource
    void oneThingWrongInAFinding(String text, String other, List<String> expected) {
        assertFaults(expected, HistoryFile.read(changed(HISTORY_WITH_FINDINGS, text, other), shop(), CATALOGUE));
    }

    @ParameterizedTest
    @MethodSource
    void oneThingWrongInAShop(String text, String other, List<String> expected) {
        assertFaults(expected, ShopFile.read(changed(SHOP, text, other), CATALOGUE));
    }

    @ParameterizedTest
    @MethodSource
    void oneThingWrongInAHistory(String text, String other, List<String> expected) {
        assertFaults(expected, HistoryFile.read(changed(HISTORY, text, other), shop(), CATALOGUE));
    }

    @Test
    void a_shelf_has_items_of_the_catalogue_each_once_and_in_amounts_of_their_own() {
        String stock = """
                "shelf": [{"item": "boot-kit", "bin": "D3", "amount": "2"}, {"item": "boot-kit", "amount": "1.5"},
                          {"item": "tea", "amount": "some"}],
                "places": [""";
        assertEquals(
                List.of(
                        "shelf[1].item: \"boot-kit\" is already at shelf[0].item",
                        "shelf[1].amount: \"1.5\" is no amount of it",
                        "shelf[2].item: no item \"tea\"",
                        "shelf[2].amount: \"some\" is no amount of it"),
                ShopFile.read(SHOP_WITH_STOCK.replace("\"places\": [", stock), Seed.catalogue()).faults().stream()
                        .map(Object::toString)
                        .toList());
    }

    private static final String SHOP_WITH_STOCK = """
            {"name": "Small Shed", "zone": "Pacific/Auckland", "workdays": ["monday"],
             "places": [{"id": "F1", "name": "Bay", "kind": "floor"}],
             "people": [{"id": "P1", "name": "Ash", "role": "foreman", "skills": ["service"],
                         "pacePercent": 100, "shifts": ["07:00-15:30"], "overtime": []}]}
            """;

    @Test
    void work_that_is_not_for_the_machines_class_is_refused_in_both() {
        Catalogue seed = Seed.catalogue();
        String shop = SHOP.replace("\"work\": \"oil\"", "\"work\": \"oil-tractor\"")
                .replace("\"work\": \"box\"", "\"work\": \"oil-quad\"")
                .replace("\"task\": \"drain\"", "\"task\": \"drain-oil\"")
                .replace("\"point\": \"pads\"", "\"point\": \"pads-front\"");
        assertEquals(
                List.of("morning.acts[0].works[0].work: \"oil-tractor\" is no work for a quad"),
                texts(ShopFile.read(shop, seed)));
        Setup sound = Seed.shop(seed);
        String row = "{\"visits\": [{\"date\": \"2026-05-04\", \"machine\": \"M2\", \"mud\": 1, \"depth\": \"full\","
                + " \"works\": [\"blades\"], \"minutes\": {\"drive\": 9}, \"people\": {\"drive\": \"P1\"}}]}";
        assertEquals(
                List.of("visits[0].works[0]: \"blades\" is no work for a quad"),
                texts(HistoryFile.read(row, sound, seed)));
    }

    @Test
    void a_shop_is_read_with_its_hours_and_a_machine_weighs_what_its_class_does_unless_weighed() {
        Setup setup = shop();
        assertEquals("16:00", setup.shop().expectPerson("P1").knockOff().toString());
        assertEquals(
                List.of(300, 330),
                setup.machines().stream().map(each -> each.massKg()).toList());
        assertEquals(List.of(), setup.past());
    }

    @Test
    void a_pin_is_read_beside_the_person_it_belongs_to() {
        String withPin = changed(SHOP, "\"name\": \"Bob\"", "\"name\": \"Bob\", \"pin\": \"13579\"");
        Setup setup = ShopFile.read(withPin, CATALOGUE).expectValue();
        assertEquals(Set.of("P2"), setup.pins().keySet());
        assertArrayEquals("13579".toCharArray(), setup.pins().get("P2").digits());
        assertFalse(setup.toString().contains("13579"));
        assertEquals(setup.pins(), setup.withPast(List.of()).pins());
    }

    @Test
    void a_morning_is_read_as_acts_with_moments_in_the_shops_zone() {
        List<TimedAct> acts = shop().morning().orElseThrow().acts();
        TimedAct takeIn = acts.get(0);
        // Monday to Friday are three days apart in this shop's week; a working day back from Tuesday is Monday
        assertEquals(Instant.parse("2026-05-11T05:00:00Z"), takeIn.at());
        assertEquals(Optional.of("@red"), takeIn.handle());
        Act.TakeIn act = (Act.TakeIn) takeIn.act();
        assertEquals(new Condition(false, true, true, false), act.condition());
        assertEquals(Optional.of("C1"), act.whose().ownerId());
        assertEquals(OptionalInt.of(4), act.tag());
        assertEquals(
                Instant.parse("2026-05-12T05:30:00Z"), act.said().orElseThrow().at());
        assertEquals(
                new Act.Start("P1", "@red", "drain", Optional.of("H1")),
                acts.get(2).act());
        assertEquals(
                new Act.Finish("P2", "@red", "drain", Optional.empty()),
                acts.get(3).act());
        assertEquals(
                new Act.Tick("P1", "@red", "pads", Mark.FIX, OptionalDouble.of(1.1), "thin"),
                acts.get(4).act());
        assertEquals(
                new Act.Tick("P1", "@red", "fuel", Mark.GOOD, OptionalDouble.empty(), ""),
                acts.get(5).act());
        assertEquals(
                new Act.AddWork("@red", List.of(new Act.Wanted("box", Payer.MAKER))),
                acts.get(6).act());
        // the working day after Tuesday is Friday
        Instant friday = Instant.parse("2026-05-14T23:00:00Z");
        assertEquals(
                new Act.HoldVisit("@red", Hold.Reason.PARTS, "", Optional.of(friday)),
                acts.get(7).act());
        assertEquals(8, acts.size());
    }

    @Test
    void a_task_that_added_work_numbers_on_is_known_only_once_work_was_added() {
        String hold =
                "\"do\": \"hold\", \"by\": \"P1\", \"visit\": \"@red\", \"reason\": \"parts\", \"until\": \"+1 09:00\"";
        String start = "\"do\": \"start\", \"by\": \"P1\", \"visit\": \"@red\", \"task\": \"raise-2\"";
        assertEquals(List.of(), texts(ShopFile.read(changed(SHOP, hold, start), CATALOGUE)));
        String early = changed(SHOP, "\"task\": \"drain\", \"place\"", "\"task\": \"raise-2\", \"place\"");
        assertEquals(
                List.of("morning.acts[2].task: no task of @red \"raise-2\""), texts(ShopFile.read(early, CATALOGUE)));
    }

    @Test
    void an_opening_is_read_with_who_is_here_and_which_hoist_is_locked_out() {
        TimedAct opening = shop().morning().orElseThrow().acts().get(1);
        Instant from = Instant.parse("2026-05-11T21:30:00Z");
        Instant until = Instant.parse("2026-05-12T05:00:00Z");
        assertEquals(
                new Act.OpenDay(
                        "P1",
                        List.of(new Act.OpenDay.Here("P2", from, until)),
                        List.of(new Act.OpenDay.Checked("H1", "P2", Optional.of("catch bent")))),
                opening.act());
    }

    @Test
    void a_history_is_read_row_by_row() {
        List<PastVisit> past = HistoryFile.read(HISTORY, shop(), CATALOGUE).expectValue();
        assertEquals(2, past.size());
        assertEquals(Mud.DUSTY, past.get(0).mud());
        assertEquals(List.of("oil", "box"), past.get(1).workIds());
        assertEquals(past, shop().withPast(past).past());
    }

    @Test
    void a_past_visit_is_read_with_its_meter_and_its_findings() {
        PastVisit visit = HistoryFile.read(HISTORY_WITH_FINDINGS, shop(), CATALOGUE)
                .expectValue()
                .get(1);
        assertEquals(OptionalInt.of(12), visit.meters().hours());
        assertEquals(
                new PastFinding(
                        "pads",
                        Mark.FIX,
                        OptionalDouble.of(1.2),
                        "thin",
                        "P2",
                        Optional.of(new PastFinding.Asked(OwnersWord.Answer.YES, "oil", "P1", "Station"))),
                visit.findings().get(0));
        assertEquals(Mark.NOT_REACHED, visit.findings().get(1).mark());
    }

    private static Setup shop() {
        return ShopFile.read(SHOP, CATALOGUE).expectValue();
    }

    private static String changed(String sound, String text, String other) {
        int places = sound.split(Pattern.quote(text), -1).length - 1;
        assertEquals(1, places, "the table names one place: " + text);
        return sound.replace(text, other);
    }

    private static void assertFaults(List<String> expected, Reading<?> reading) {
        assertEquals(expected, texts(reading));
        assertTrue(reading.value().isEmpty(), "nothing half loaded");
    }

    private static List<String> texts(Reading<?> reading) {
        return reading.faults().stream().map(Object::toString).toList();
    }

    private static Arguments wrong(String text, String other, String fault) {
        return wrong(text, other, List.of(fault));
    }

    private static Arguments wrong(String text, String other, List<String> faults) {
        return Arguments.of(text, other, faults);
    }
}
