package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Figures that finished work contradicts, and the minutes that are packed, on the command line. */
@Tag("elsewhere")
class CatalogueCommandsTest {
    private static final String TRACTORS = "wash:tractor:caked";

    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    /** The demonstration plans by a catalogue that has much less for washing a caked tractor than that takes. */
    private void tractorsAreWashedInHalfTheTime() throws IOException {
        ObjectNode catalogue = (ObjectNode) JsonMapper.builder().build().readTree(Path.of("seed/catalogue.json"));
        for (JsonNode each : catalogue.get("classes")) {
            if (each.get("id").asString().equals("tractor")) {
                ArrayNode minutes = (ArrayNode) each.get("washMinutes");
                assertEquals(36, minutes.get(3).asInt());
                minutes.set(2, 18);
                minutes.set(3, 18);
            }
        }
        Path file = directory.resolve("catalogue.json");
        Files.writeString(file, catalogue.toString(), StandardCharsets.UTF_8);
        Said said = room.demo("load", file.toString());
        assertEquals(0, said.status(), said.err());
    }

    private Optional<JsonNode> suggestion(String id) {
        JsonNode all = room.demo("suggest", "--json").json().get("suggestions");
        return StreamSupport.stream(all.spliterator(), false)
                .filter(each -> each.get("id").asString().equals(id))
                .findFirst();
    }

    @Test
    void a_catalogue_that_finished_work_fits_has_no_figure_to_change() {
        Said said = room.demo("suggest");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().startsWith("No figure of the catalogue is contradicted"), said.out());
        assertEquals(0, room.demo("suggest", "--json").json().get("suggestions").size());
    }

    @Test
    void an_accepted_figure_leaves_the_list_and_its_old_value_stays_in_the_journal() throws IOException {
        tractorsAreWashedInHalfTheTime();
        JsonNode tractors = suggestion(TRACTORS).orElseThrow();
        assertEquals(18, tractors.get("now").asInt());
        int proposed = tractors.get("proposed").asInt();
        assertTrue(proposed >= 26 && proposed <= 45, tractors.toString());
        Said list = room.demo("suggest");
        assertTrue(
                list.out().contains("washing, Tractors up to 40 kW, caked")
                        || list.out().contains(TRACTORS),
                list.out());

        Said accepted = room.demo("suggest", "--accept", TRACTORS, "--by", "Marnie");
        assertEquals(0, accepted.status(), accepted.err());
        assertTrue(accepted.out().contains(proposed + " min from now on, no longer 18"), accepted.out());
        assertEquals(Optional.empty(), suggestion(TRACTORS));

        JournalRow row = journaled("AcceptFigure");
        assertEquals("P1", row.who());
        assertTrue(row.before().contains("18,18"), row.before());
        assertTrue(row.after().contains("18," + proposed), row.after());
        assertEquals(
                1, room.demo("suggest", "--accept", TRACTORS, "--by", "Marnie").status());
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
    void plans_are_packed_with_the_likely_minutes_until_somebody_sets_more() {
        assertEquals(50, packed());
        Said set = room.demo("margin", "80", "--by", "Marnie");
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
        assertEquals(50, packed());
    }
}
