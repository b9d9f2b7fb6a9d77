package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.disk.OwnersEyes;
import org.shedboard.store.Backups;
import org.shedboard.store.Store;
import tools.jackson.databind.JsonNode;

/** Looking whether everything is sound, with one thing wrong at a time. */
class DoctorTest {
    @TempDir
    Path directory;

    private CommandRoom room;
    private Path place;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
        place = Homes.demonstration(directory);
        // the copied demonstration stands in a directory that was made by the umask
        OwnersEyes.only(place);
    }

    private void sql(String text) throws SQLException {
        String url = "jdbc:h2:file:" + place.resolve("shop") + ";IFEXISTS=TRUE";
        try (Connection connection = DriverManager.getConnection(url, "shop", "");
                Statement statement = connection.createStatement()) {
            assertEquals(1, statement.executeUpdate(text), text);
        }
    }

    private static JsonNode part(Said said, String part) {
        return StreamSupport.stream(said.json().get("checks").spliterator(), false)
                .filter(each -> each.get("part").asString().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private Said found(int status) {
        Said said = room.demo("doctor", "--json");
        assertEquals(status, said.status(), said.out() + said.err());
        assertEquals(status == 0, said.json().get("sound").asBoolean());
        return said;
    }

    private void assertWrong(String part, String word) {
        JsonNode looked = part(found(1), part);
        assertEquals("wrong", looked.get("state").asString(), looked.toString());
        assertTrue(looked.get("said").asString().contains(word), looked.toString());
        assertFalse(looked.get("todo").asString().isEmpty(), looked.toString());
    }

    @Test
    void a_shop_that_was_worked_in_is_sound() {
        room.demo("pause", "Wren");
        room.demo("take-in", "--class", "quad", "--owner", "Sorrel; note here", "--work", "o", "--mud", "1");
        room.demo("correct-owner", "Sorrel; note here", "--phone", "-");
        room.signed("merge", "M10", "M12");
        Said said = room.demo("doctor");
        assertEquals(0, said.status(), said.out());
        assertEquals(
                "All that was looked at is sound.",
                said.out().lines().reduce((one, other) -> other).orElseThrow());
        assertTrue(part(found(0), "journal").get("said").asString().startsWith("6 changes agree"), said.out());
    }

    @Test
    void so_is_one_in_which_an_owner_was_forgotten() {
        room.demo(
                "take-in",
                "--class",
                "quad",
                "--owner",
                "Passing Stranger",
                "--work",
                "o",
                "--mud",
                "1",
                "--tag",
                "33");
        room.demo("call-off", "33");
        room.signed("forget", "Quillgate, Nettle Flat", "--yes");
        found(0);
    }

    @Test
    void it_looks_through_the_terminal_that_has_the_records_open() {
        try (Store open = Store.open(place)) {
            assertTrue(open.isOwner());
            assertTrue(part(found(0), "database").get("said").asString().contains("through the terminal"));
        }
    }

    @Test
    void a_row_that_was_changed_behind_the_programs_back_is_named_and_not_shown() throws Exception {
        room.demo("take-in", "--class", "quad", "--owner", "Sorrelwick", "--work", "o", "--mud", "1", "--tag", "33");
        sql("UPDATE owner SET name = 'Tarragon' WHERE name = 'Sorrelwick'");
        assertWrong("journal", "another content: owner ");
        Said said = room.demo("doctor");
        assertFalse(said.out().contains("Tarragon") || said.out().contains("Sorrelwick"), said.out());
    }

    @Test
    void a_row_that_was_taken_out_is_missed() throws Exception {
        room.demo("errand", "Wren", "training", "--from", "14:00", "--minutes", "20");
        sql("DELETE FROM errand WHERE minutes = 20");
        assertWrong("journal", "not there: errand ");
    }

    @Test
    void clock_entries_that_overlap_are_told_with_how_to_put_them_right() throws Exception {
        sql(
                "INSERT INTO clock_entry (id, person_id, other_kind, from_at, to_at, struck) SELECT 'X1', person_id, 'TRAINING',"
                        + " from_at, NULL, FALSE FROM clock_entry WHERE to_at IS NULL AND visit_id IS NOT NULL LIMIT 1");
        assertWrong("clock", "overlaps another one: ");
    }

    @Test
    void records_that_cannot_be_opened_leave_the_rest_looked_at() throws IOException {
        Files.write(place.resolve("shop.mv.db"), new byte[8192]);
        Said said = found(1);
        assertEquals("wrong", part(said, "database").get("state").asString());
        assertEquals("not-looked-at", part(said, "journal").get("state").asString());
        assertEquals("sound", part(said, "disk").get("state").asString());
        assertEquals("", said.err());
    }

    @Test
    void a_home_that_others_can_read_is_told() throws IOException {
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwxr-xr-x"));
        assertWrong("home", "others on this machine can read");
    }

    @Test
    void where_there_is_no_shop_that_is_what_is_wrong() {
        Said said = room.run("doctor", "--home", directory.resolve("nowhere").toString());
        assertEquals(1, said.status());
        assertTrue(said.out().contains("there is no shop in "), said.out());
        assertFalse(Files.exists(directory.resolve("nowhere")));
    }

    @Test
    void a_backup_that_is_too_old_is_told_and_a_young_one_is_sound() throws IOException {
        CommandRoom small = CommandRoom.empty(directory.resolve("small"));
        Path file = Files.writeString(directory.resolve("shop.json"), LoadCommandTest.SMALL_SHOP);
        assertEquals(0, small.run("load", file.toString()).status());
        assertEquals(
                "noted",
                part(small.run("doctor", "--json"), "backups").get("state").asString());
        Path backups = Files.createDirectory(directory.resolve("small").resolve("backups"));
        Files.createFile(backups.resolve("some.zip"));
        assertEquals(
                "noted",
                part(small.run("doctor", "--json"), "backups").get("state").asString());
        assertEquals(0, small.run("backup").status());
        Path zip = Backups.in(backups).all().get(0);
        assertEquals(
                "sound",
                part(small.run("doctor", "--json"), "backups").get("state").asString());
        Files.setLastModifiedTime(zip, FileTime.from(Instant.now().minus(Duration.ofDays(3))));
        assertEquals(
                "wrong",
                part(small.run("doctor", "--json"), "backups").get("state").asString());
    }

    @Test
    void every_part_is_there_once() {
        List<String> parts = StreamSupport.stream(found(0).json().get("checks").spliterator(), false)
                .map(each -> each.get("part").asString())
                .toList();
        assertEquals(
                List.of("java", "terminal", "home", "disk", "backups", "database", "time", "journal", "clock", "plan"),
                parts);
    }
}
