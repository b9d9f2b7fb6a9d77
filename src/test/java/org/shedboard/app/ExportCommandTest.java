package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.store.Store;

class ExportCommandTest {
    @TempDir
    Path directory;

    @Test
    void a_whole_shop_goes_out_and_into_an_empty_home_and_is_the_same_there() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory.resolve("here"));
        Path file = directory.resolve("all.json");
        Said out = room.demo("export", file.toString(), "--json");
        assertEquals(0, out.status(), out.err());
        int rows = out.json().get("rows").asInt();
        assertTrue(rows > 1000, out.out());
        CommandRoom there = CommandRoom.empty(directory.resolve("there"));
        Said in = there.run("load", file.toString(), "--json");
        assertEquals(0, in.status(), in.err());
        assertEquals("records", in.json().get("loaded").asString());
        Path again = directory.resolve("again.json");
        assertEquals(0, there.run("export", again.toString()).status());
        assertEquals(-1, Files.mismatch(file, again));
        assertEquals(
                room.demo("day").out(),
                there.run("day", "--at", CommandRoom.MORNING).out());
    }

    @Test
    void records_can_be_piped_in_and_are_refused_where_there_is_a_shop() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory.resolve("here"));
        Path file = directory.resolve("all.json");
        room.demo("export", file.toString());
        CommandRoom there = CommandRoom.empty(directory.resolve("there"));
        assertEquals(0, there.piped(Files.readString(file), "load", "-").status());
        Said again = there.run("load", file.toString());
        assertEquals(1, again.status());
        assertTrue(again.err().contains("one is made only where there is none"), again.err());
    }

    @Test
    void a_broken_file_of_records_is_wrong_use_and_makes_nothing() throws Exception {
        CommandRoom room = CommandRoom.empty(directory);
        Path file = Files.writeString(
                directory.resolve("all.json"), "{\"format\": \"shedboard-records\", \"version\": 1, \"schema\": 9, ");
        Said said = room.run("load", file.toString());
        assertEquals(2, said.status());
        assertEquals(1, said.complaints().size(), said.err());
        assertTrue(!Store.exists(directory));
    }
}
