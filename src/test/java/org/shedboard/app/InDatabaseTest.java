package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.testing.PostgresServer;
import tools.jackson.databind.JsonNode;

/** Commands about shops in a PostgreSQL database. */
class InDatabaseTest {
    @TempDir
    private Path directory;

    private CommandRoom room;
    private String database = "";

    @BeforeEach
    void demand() throws IOException {
        PostgresServer.demand();
        room = CommandRoom.withDemonstration(directory);
    }

    /** In a database of its own where one test looks at all shops there are, and beside those of other tests else. */
    private String shop(String name) {
        String own = name + directory.getFileName().toString().replaceAll("[^a-z0-9]", "");
        return database.isEmpty()
                ? PostgresServer.url() + "&currentSchema=" + own
                : database + "&currentSchema=" + name;
    }

    private Said load(String shop) throws IOException {
        Path file = Files.writeString(directory.resolve("file.json"), LoadCommandTest.SMALL_SHOP);
        return room.run("load", file.toString(), "--db", shop(shop));
    }

    @Test
    void a_shop_is_set_up_in_a_database_once_and_its_day_is_seen_there() throws IOException {
        assertEquals(1, room.run("day", "--db", shop("river")).status());
        assertEquals(0, load("river").status());
        assertTrue(room.run("day", "--db", shop("river")).out().startsWith("Small Shed, "));
        Said again = load("river");
        assertEquals(1, again.status());
        assertTrue(again.err().contains("shop river"), again.err());
    }

    @Test
    void a_shop_that_was_moved_answers_as_before_and_is_still_where_it_was() {
        String before = room.demo("tally", "--json").out();
        Said moved = room.run("move", "--to", shop("hill"), "--demo", "--json");
        assertEquals(0, moved.status(), moved.err());
        assertTrue(moved.json().get("rows").asInt() > 1000, moved.out());
        assertEquals(
                before,
                room.run("tally", "--json", "--at", CommandRoom.MORNING, "--db", shop("hill"))
                        .out());
        assertEquals(before, room.demo("tally", "--json").out());
    }

    @Test
    void a_shop_is_not_moved_onto_another() throws IOException {
        load("hill");
        Said moved = room.run("move", "--to", shop("hill"), "--demo");
        assertEquals(1, moved.status());
        assertTrue(moved.err().contains("already"), moved.err());
        assertTrue(room.run("day", "--db", shop("hill")).out().startsWith("Small Shed, "));
    }

    @Test
    void all_shops_of_a_database_stand_side_by_side_and_add_up() throws IOException {
        database = PostgresServer.urlOfNew();
        load("river");
        room.run("move", "--to", shop("hill"), "--demo");
        JsonNode said = room.run("all-shops", "--month", "2026-05", "--json", "--db", database)
                .json();
        JsonNode hill = said.get("shops").get(0);
        JsonNode river = said.get("shops").get(1);
        assertEquals("hill", hill.get("key").asString());
        assertEquals("Small Shed", river.get("name").asString());
        JsonNode alone = room.run("tally", "--month", "2026-05", "--json", "--db", shop("hill"))
                .json();
        assertEquals(
                alone.findValue("promisesKept").asInt(),
                hill.get("figures").get("promisesKept").asInt());
        assertTrue(hill.get("figures").get("attendedMinutes").asInt() > 0, said.toString());
        assertTrue(river.get("figures").get("openAheadMinutes").asInt() > 0, said.toString());
        for (String figure : hill.get("figures").propertyNames()) {
            assertEquals(
                    hill.get("figures").get(figure).asInt()
                            + river.get("figures").get(figure).asInt(),
                    said.get("together").get(figure).asInt(),
                    figure);
        }
    }

    @Test
    void a_shop_that_cannot_be_read_keeps_nobody_from_the_others() throws IOException {
        database = PostgresServer.urlOfNew();
        load("river");
        load("hill");
        PostgresServer.run(shop("hill"), "INSERT INTO schema_history (version, name, checksum) VALUES (999, 'x', 'x')");
        Said said = room.run("all-shops", "--db", database);
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("Small Shed"), said.out());
        assertTrue(said.out().contains("hill could not be read: "), said.out());
    }

    @Test
    void all_shops_needs_a_database() {
        Said said = room.run("all-shops");
        assertEquals(2, said.status());
        assertTrue(said.err().contains("--db"), said.err());
    }

    @Test
    void a_password_on_the_command_line_is_refused_and_said_nowhere() {
        Said said = room.run("day", "--db", shop("hill") + "&password=hazel");
        assertEquals(1, said.status());
        assertEquals(1, said.complaints().size());
        assertTrue(!said.err().contains("hazel"), said.err());
    }
}
