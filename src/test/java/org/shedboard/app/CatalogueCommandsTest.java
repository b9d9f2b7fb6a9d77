package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Figures that finished work contradicts, and the minutes that are packed, on the command line. */
class CatalogueCommandsTest {
    private static final String QUADS = "inspect:quad:underside";

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    /** The demonstration plans by a catalogue that has half of what looking at the underside of a quad takes. */
    private void quadsAreLookedAtInHalfTheTime() throws IOException {
        ObjectNode catalogue = (ObjectNode) JsonMapper.builder().build().readTree(Path.of("seed/catalogue.json"));
        for (JsonNode each : catalogue.get("classes")) {
            if (each.get("id").asString().equals("quad")) {
                each.get("points").forEach(CatalogueCommandsTest::halve);
            }
        }
        Path file = directory.resolve("catalogue.json");
        Files.writeString(file, catalogue.toString(), StandardCharsets.UTF_8);
        Said said = room.signed("load", file.toString());
        assertEquals(0, said.status(), said.err());
    }

    private static void halve(JsonNode point) {
        if (point.get("step").asString().equals("underside")) {
            int minutes = point.get("inspectMinutes").asInt();
            ((ObjectNode) point).put("inspectMinutes", Math.max(1, minutes / 2));
        }
    }

    private Optional<JsonNode> suggestion(String id) {
        JsonNode all = room.demo("suggest", "--json").json().get("suggestions");
        return StreamSupport.stream(all.spliterator(), false)
                .filter(each -> each.get("id").asString().equals(id))
                .findFirst();
    }

    @Test
    void the_list_has_a_line_a_figure_with_what_speaks_against_it() throws IOException {
        quadsAreLookedAtInHalfTheTime();
        JsonNode all = room.demo("suggest", "--json").json().get("suggestions");
        Said said = room.demo("suggest");
        assertEquals(0, said.status(), said.err());
        List<String> lines = said.out().lines().toList();
        assertEquals(all.size() + 3, lines.size(), said.out());
        assertEquals(QUADS, all.get(0).get("id").asString());
        assertTrue(lines.get(2).contains("inspection, Quad, underside"), lines.get(2));
        assertTrue(all.get(0).get("stays").asInt() >= 8);
        assertTrue(all.get(0).get("low").asDouble() > 1);
    }

    @Test
    void an_accepted_figure_leaves_the_list_and_its_old_value_stays_in_the_journal() throws IOException {
        quadsAreLookedAtInHalfTheTime();
        JsonNode quads = suggestion(QUADS).orElseThrow();
        int proposed = quads.get("proposed").asInt();
        assertTrue(proposed >= 30 && proposed <= 50, quads.toString());
        Said accepted = room.signed("suggest", "--accept", QUADS, "--by", "Marnie");
        assertEquals(0, accepted.status(), accepted.err());
        int was = quads.get("now").asInt();
        assertTrue(accepted.out().contains(proposed + " min from now on, no longer " + was), accepted.out());
        assertEquals(Optional.empty(), suggestion(QUADS));
        assertEquals(
                1, room.signed("suggest", "--accept", QUADS, "--by", "Marnie").status());

        JournalRow row = journaled("AcceptFigure");
        assertEquals("P1", row.who());
        int points = row.touched("point").size();
        assertTrue(points > 1, row.after());
        assertEquals(minutes(row.after()) - minutes(row.before()), proposed - was);
    }

    /** Of all the points that a side of a journal row tells of. */
    private static int minutes(String side) {
        return Pattern.compile("inspect_minutes (\\d+)")
                .matcher(side)
                .results()
                .mapToInt(found -> Integer.parseInt(found.group(1)))
                .sum();
    }

    private JournalRow journaled(String what) {
        try (Store store = Store.open(Homes.demonstration(directory))) {
            List<JournalRow> rows = store.read(reader -> reader.journal(0)).stream()
                    .filter(row -> row.what().equals(what))
                    .toList();
            assertEquals(1, rows.size());
            return rows.get(0);
        }
    }

    @Test
    void what_is_not_proposed_cannot_be_accepted_nor_by_nobody() {
        Said unknown = room.demo("suggest", "--accept", "wash:boat:caked", "--by", "Marnie");
        assertEquals(1, unknown.status());
        assertEquals(
                List.of("No figure \"wash:boat:caked\" is proposed; shedboard suggest lists those that are."),
                unknown.complaints());
        assertEquals(2, room.demo("suggest", "--accept", "wash:quad:caked").status());
        Said stranger = room.demo("suggest", "--accept", "wash:quad:caked", "--by", "Nobody");
        assertEquals(List.of("Nobody called \"Nobody\" works here."), stranger.complaints());
    }

    @Test
    void plans_are_packed_with_what_sixty_in_a_hundred_stay_within_until_somebody_sets_more() {
        assertEquals(60, packed());
        Said set = room.signed("margin", "80", "--by", "Marnie");
        assertEquals(0, set.status(), set.err());
        assertEquals(80, packed());
        assertEquals("P1", journaled("SetPackedPercent").who());
        assertTrue(room.demo("margin").out().contains("80 in a hundred"));
    }

    private int packed() {
        return room.demo("margin", "--json").json().get("packedPercent").asInt();
    }

    @Test
    void a_share_outside_fifty_to_ninety_is_refused_and_nothing_changes() {
        for (String percent : List.of("49", "91", "-1", "1000")) {
            assertTrue(room.demo("margin", percent, "--by", "Marnie").status() != 0, percent);
        }
        assertEquals(2, room.demo("margin", "half", "--by", "Marnie").status());
        assertEquals(2, room.demo("margin", "80").status());
        assertEquals(60, packed());
    }
}
