package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.register.Movement;
import org.shedboard.shop.Amount;
import org.shedboard.store.Store;
import tools.jackson.databind.JsonNode;

/** The commands about the shelf, in the demonstration. */
class ShelfCommandsTest {
    private static final String[] ASHENFOLD = {
        "take-in", "--machine", "ashenfold hauler", "--work", "o", "--mud", "0", "--tag", "31"
    };

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    private Said done(String... words) {
        Said said = room.demo(words);
        assertEquals("", said.err());
        assertEquals(0, said.status());
        return said;
    }

    private JsonNode item(String id) {
        return StreamSupport.stream(done("stock", "--json").json().get("items").spliterator(), false)
                .filter(each -> each.get("item").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_shelf_says_what_is_short_first() {
        List<String> lines = done("stock").out().lines().toList();
        assertTrue(lines.get(0).strip().startsWith("Id"), lines.get(0));
        assertTrue(
                lines.get(1).matches("  belt-deck-wide +Deck belt, wide deck +C1 +0 +0 +1 +1 +R\\d+: 1, Wed 09:00"),
                lines.get(1));
    }

    @Test
    void an_item_is_counted_by_its_name() {
        done("stock", "count", "engine oil", "30.5", "--bin", "drum", "--by", "Wren");
        assertEquals("30.5", item("oil-engine").get("there").asString());
        assertEquals("drum", item("oil-engine").get("bin").asString());
    }

    @Test
    void an_order_is_noted_for_a_date_and_comes() {
        done("stock", "order", "boot-kit", "4", "--due", "2026-05-15");
        JsonNode order = item("boot-kit").get("orders").get(0);
        assertEquals("2026-05-15T06:45:00+10:00", order.get("due").asString());
        done("stock", "come", order.get("order").asString());
        assertEquals("6", item("boot-kit").get("there").asString());
        assertEquals(0, item("boot-kit").get("orders").size());
    }

    @Test
    void what_cannot_be_is_said_in_a_sentence() {
        assertEquals(
                "There is no item \"tea\" in the catalogue.\n",
                room.demo("stock", "count", "tea", "1").err());
        assertEquals(
                "Nothing called \"R0\" is on order.\n",
                room.demo("stock", "come", "R0").err());
        assertEquals(2, room.demo("stock", "count", "boot-kit").status());
        assertEquals(2, room.demo("stock", "order").status());
    }

    @Test
    void at_the_door_it_is_said_what_to_look_for() {
        String said = done(ASHENFOLD).out();
        assertTrue(said.contains("Plug washer: look which is on it (Plug washer 12 mm, Plug washer 14 mm)."), said);
    }

    @Test
    void before_a_time_is_promised_it_is_said_what_is_short_and_until_when() {
        done("stock", "count", "washer-14", "0");
        String said = done("promise", "--machine", "kestrelby trudge", "--work", "o", "--mud", "0")
                .out();
        assertTrue(said.contains("Plug washer 14 mm is short and not ordered: usually here Thu 06:45"), said);
        assertTrue(said.contains("as the day is posted: Thu "), said);
    }

    @Test
    void the_pick_list_has_both_parts_that_it_can_be_until_it_is_said_which() {
        done(ASHENFOLD);
        assertEquals(List.of("washer-12", "washer-14"), picked("Plug washer"));
        done("fit", "31", "plug washer", "washer-14", "--by", "Tobin");
        assertEquals(List.of("washer-14"), picked("Plug washer"));
    }

    /** Ids of what is fetched today for tag 31 with this in its name. */
    private List<String> picked(String name) {
        JsonNode picks = done("pick", "--date", "2026-05-12", "--json").json().get("picks");
        return StreamSupport.stream(picks.spliterator(), false)
                .filter(pick -> pick.get("tag").asInt() == 31)
                .filter(pick -> pick.get("name").asString().startsWith(name))
                .map(pick -> pick.get("item").asString())
                .toList();
    }

    @Test
    void the_pick_list_for_tomorrow_goes_bin_by_bin_and_marks_what_is_short() {
        List<String> lines = done("pick").out().lines().toList();
        assertEquals("To fetch for 2026-05-13", lines.get(0));
        int bin = lines.indexOf("Bin C1");
        assertEquals("  [ ] 1  Deck belt, wide deck  for 11 (Pennyfold, Bent Willow)", lines.get(bin + 1));
        assertEquals("      SHORT: Deck belt, wide deck is not here: its order is due Wed 09:00.", lines.get(bin + 2));
    }

    @Test
    void who_is_on_the_plug_hears_what_to_look_for_and_cannot_finish_it_unsaid() {
        done(ASHENFOLD);
        for (int task = 0; task < 4; task++) {
            done("start", "Marnie", "31");
            done("finish", "Marnie", "--rest", "good");
        }
        String check =
                "Plug washer: Plug washer 12 mm to 2014, Plug washer 14 mm from 2015; this one is 2014: look which is on it.";
        room.at("2026-05-12T09:56", "start", "Marnie", "31");
        String next = done("next", "Marnie").out();
        assertTrue(next.contains("  Now: New washer, plug tight") && next.contains("  " + check), next);
        assertEquals(
                "\"New washer, plug tight\" cannot be finished yet: say first which Plug washer was fitted.\n",
                room.demo("finish", "Marnie").err());
        done("fit", "31", "plug washer", "washer-12", "--by", "Marnie");
        done("finish", "Marnie");
        assertEquals("13", item("washer-12").get("there").asString());
    }

    @Test
    void a_part_is_only_what_it_can_be() {
        done(ASHENFOLD);
        assertEquals(
                "\"Deck belt, wide deck\" is none of those that Plug washer can be.\n",
                room.demo("fit", "31", "Plug washer", "belt-deck-wide").err());
    }

    @Test
    void all_movements_of_an_item_add_up_to_what_is_there() {
        done("stock", "count", "boot-kit", "7");
        done("stock", "order", "boot-kit", "4");
        String order = item("boot-kit").get("orders").get(0).get("order").asString();
        done("stock", "come", order);
        try (Store store = Store.open(Homes.demonstration(room.home()))) {
            Amount sum = store.read(reader -> reader.movementsOf("boot-kit")).stream()
                    .map(Movement::change)
                    .reduce(Amount.NOTHING, Amount::plus);
            assertEquals(Amount.of(11), sum);
        }
    }
}
