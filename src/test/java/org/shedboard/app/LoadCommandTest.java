package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.store.Store;

class LoadCommandTest {
    static final String SMALL_SHOP = """
            {"name": "Small Shed", "zone": "Pacific/Auckland",
             "workdays": ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"],
             "places": [{"id": "F1", "name": "Bay", "kind": "floor"}],
             "people": [{"id": "P1", "name": "Ash", "role": "foreman", "skills": ["wash", "hoist", "service", "brakes", "electrics", "sign-off"],
                         "pacePercent": 100, "shifts": ["07:00-15:30"], "overtime": []}],
             "owners": [{"id": "O1", "name": "Dripgate", "phone": ""}],
             "machines": [{"id": "M1", "owner": "O1", "class": "quad", "label": "Burr 520"}]}
            """;

    @TempDir
    Path directory;

    private Path file(String text) throws IOException {
        return Files.writeString(directory.resolve("file.json"), text);
    }

    private static String seed(String name) throws IOException {
        try (var in = LoadCommandTest.class.getResourceAsStream("/seed/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void a_shop_is_made_in_an_empty_home_once() throws Exception {
        CommandRoom room = CommandRoom.empty(directory);
        String file = file(SMALL_SHOP).toString();
        Said said = room.run("load", file, "--json");
        assertEquals(0, said.status(), said.err());
        assertEquals("shop", said.json().get("loaded").asString());
        assertTrue(room.run("day").out().startsWith("Small Shed, "));
        Said again = room.run("load", file);
        assertEquals(1, again.status());
        assertTrue(again.err().contains("already"), again.err());
    }

    @Test
    void every_fault_of_a_shop_is_a_line_and_nothing_is_made() throws Exception {
        CommandRoom room = CommandRoom.empty(directory);
        String bad =
                SMALL_SHOP.replace("\"kind\": \"floor\"", "\"kind\": \"roof\"").replace("\"quad\"", "\"hovercraft\"");
        Said said = room.run("load", file(bad).toString());
        assertEquals(2, said.status());
        assertEquals(2, said.complaints().size(), said.err());
        assertTrue(said.complaints().get(0).startsWith("places[0].kind: "), said.err());
        assertFalse(Store.exists(directory));
    }

    @Test
    void a_real_shop_runs_on_the_real_time() throws Exception {
        CommandRoom room = CommandRoom.empty(directory);
        room.run("load", file(SMALL_SHOP).toString());
        Said said = room.run("day", "--at", "2026-05-12T11:00");
        assertEquals(1, said.status());
        assertEquals("The clock can be set for a demonstration only; this shop runs on the real time.\n", said.err());
    }

    @Test
    void a_part_with_a_hole_in_its_years_is_refused_with_its_place_and_nothing_is_changed() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        String hole = seed("catalogue.json")
                .replace("{\"item\": \"washer-14\", \"from\": 2015}", "{\"item\": \"washer-14\", \"from\": 2017}");
        Said said = room.signed("load", file(hole).toString());
        assertEquals(2, said.status());
        assertEquals(
                "works[0].parts[2].variants: no item for side-by-side in 2015 to 2016",
                said.complaints().get(0));
        assertEquals(3, said.complaints().size(), "one for each of the three services: " + said.err());
    }

    @Test
    void a_catalogue_takes_the_place_of_the_shops() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        String changed =
                seed("catalogue.json").replaceAll("\"washMinutes\": \\[[^]]*]", "\"washMinutes\": [0, 60, 120, 180]");
        Said before = room.demo("promise", "12", "--json");
        Said said = room.signed("load", file(changed).toString());
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().startsWith("The catalogue is loaded: 6 classes"), said.out());
        Said after = room.demo("promise", "12", "--json");
        assertTrue(after.json().get("cleaning").asInt()
                > before.json().get("cleaning").asInt() + 60);
    }

    @Test
    void a_catalogue_that_lacks_what_is_in_use_is_refused_whole() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        String renamed = seed("catalogue.json").replace("\"minor-quad\"", "\"smaller-quad\"");
        Said before = room.demo("day");
        Said said = room.signed("load", file(renamed).toString());
        assertEquals(2, said.status(), said.out());
        assertTrue(
                said.complaints().stream().allMatch(line -> line.startsWith("works: lacks \"minor-quad\"")),
                said.err());
        assertEquals(before, room.demo("day"));
    }

    @Test
    void what_is_neither_or_no_text_at_all_is_refused() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        assertEquals(
                1,
                room.signed("load", file("{\"jobs\": [], \"places\": []}").toString())
                        .status());
        Said broken = room.signed("load", file("{\"classes\": [").toString());
        assertEquals(2, broken.status());
        assertTrue(broken.err().startsWith("line 1 column "), broken.err());
        Files.write(directory.resolve("file.json"), new byte[] {'{', (byte) 0xff, '}'});
        assertEquals(
                2, room.demo("load", directory.resolve("file.json").toString()).status());
        assertEquals(
                1, room.demo("load", directory.resolve("none.json").toString()).status());
    }

    @Test
    void a_fresh_demonstration_forgets_what_was_done() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        room.demo("stop", "Wren");
        Said said = room.run("demo", "--fresh", "--at", CommandRoom.MORNING, "--json");
        assertEquals(0, said.status(), said.err());
        assertTrue(room.demo("next", "Wren", "--json")
                .json()
                .get("task")
                .get("running")
                .asBoolean());
    }

    @Test
    void a_real_shop_in_the_demonstrations_place_is_left_alone() throws Exception {
        Path place = Homes.demonstration(directory);
        CommandRoom.empty(place).run("load", file(SMALL_SHOP).toString());
        Said said = CommandRoom.empty(directory).run("demo", "--fresh");
        assertEquals(1, said.status());
        assertTrue(said.err().contains("no demonstration"), said.err());
        assertTrue(CommandRoom.empty(place).run("day").out().startsWith("Small Shed, "));
    }
}
