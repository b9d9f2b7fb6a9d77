package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.board.Msg;
import org.shedboard.day.Act;
import org.shedboard.day.Outcome;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.store.Address;
import org.shedboard.store.Backups;

class SafeguardingTest {
    private static final ZoneId ZONE = ZoneId.of("Pacific/Auckland");
    private static final Instant MORNING = Instant.parse("2026-11-26T20:00:00Z");

    @TempDir
    Path directory;

    private Path home;
    private CommandRoom room;

    @BeforeEach
    void make() throws Exception {
        home = directory.resolve("home");
        room = CommandRoom.empty(home);
        Path file = Files.writeString(directory.resolve("shop.json"), LoadCommandTest.SMALL_SHOP);
        assertEquals(0, room.run("load", file.toString()).status());
    }

    private Workshop at(Instant now) {
        return Workshop.open(new Address.InHome(home), "board", reader -> Clock.fixed(now, ZONE));
    }

    private List<String> complaintsOf(String... words) {
        return room.run(words).complaints();
    }

    @Test
    void a_backup_is_made_and_gone_back_to_and_what_was_done_since_is_there() {
        assertEquals(0, room.run("backup").status());
        room.run("open", "--by", "Ash");
        assertTrue(room.run("day").out().contains("1 here"));
        Said tried = room.run("restore", "newest", "--try", "--json");
        assertEquals(1, tried.json().get("redone").asInt(), tried.err());
        Said done = room.run("restore", "newest", "--json");
        assertEquals(1, done.json().get("redone").asInt(), done.err());
        assertTrue(Files.exists(Path.of(done.json().get("kept").asString())));
        assertTrue(room.run("day").out().contains("1 here"));
    }

    @Test
    void a_damaged_database_names_the_way_and_the_way_leads_back() throws Exception {
        room.run("backup");
        room.run("open", "--by", "Ash");
        Files.write(home.resolve("shop.mv.db"), new byte[100_000]);
        List<String> said = complaintsOf("day");
        assertEquals(1, said.size());
        assertTrue(said.get(0).contains("shedboard restore newest"), said.get(0));
        assertEquals(0, room.run("restore", "newest").status());
        assertTrue(room.run("day").out().contains("1 here"));
    }

    @Test
    void a_second_place_gets_a_copy_from_then_on_and_can_be_given_up() throws Exception {
        Path second = Files.createDirectory(directory.resolve("stick"));
        Said said = room.run("backup", "--also-to", second.toString(), "--json");
        assertEquals(second.toString(), said.json().get("copiedTo").asString(), said.err());
        assertEquals(1, Backups.in(second).all().size());
        assertEquals(0, room.run("backup", "--no-second-place").status());
        assertEquals(1, Backups.in(second).all().size());
        assertEquals(
                List.of("There is no directory /nowhere/at/all; make it, or bring its disk, then say it again."),
                complaintsOf("backup", "--also-to", "/nowhere/at/all"));
    }

    @Test
    void a_copy_that_is_two_days_old_is_fine_and_one_that_is_older_is_told() throws Exception {
        Path second = Files.createDirectory(directory.resolve("stick"));
        try (Workshop shop = at(MORNING)) {
            shop.safekeeping().copyBackupsTo(second, "P1");
            assertEquals(1, shop.safekeeping().warnings().size());
            shop.safekeeping().backUp(Optional.empty());
            assertEquals(List.of(), shop.safekeeping().warnings());
        }
        try (Workshop shop = at(MORNING.plusSeconds(2 * 86_400))) {
            assertEquals(List.of(), shop.safekeeping().warnings());
        }
        try (Workshop shop = at(MORNING.plusSeconds(3 * 86_400))) {
            assertTrue(
                    shop.safekeeping().warnings().get(0).contains(second.toString()),
                    shop.safekeeping().warnings().toString());
        }
    }

    @Test
    void the_days_backup_is_made_beside_the_screen_and_a_failure_is_told_once() throws Exception {
        Files.createFile(home.resolve("backups"));
        List<Msg> told = new ArrayList<>();
        try (Workshop shop = at(MORNING)) {
            watchUntil(shop, told, 1);
            assertTrue(((Msg.Warned) told.get(0)).sentences().get(0).startsWith("Today's backup could not be made: "));
            Files.delete(home.resolve("backups"));
            told.clear();
            SafeWatch again = new SafeWatch(msg -> {});
            again.start();
            again.watch(shop);
            while (Backups.in(home.resolve("backups")).all().isEmpty()) {
                Thread.sleep(5);
            }
            again.close();
        }
    }

    private static void watchUntil(Workshop shop, List<Msg> told, int count) throws InterruptedException {
        SafeWatch watch = new SafeWatch(msg -> {
            synchronized (told) {
                told.add(msg);
                told.notifyAll();
            }
        });
        watch.start();
        watch.watch(shop);
        synchronized (told) {
            while (told.size() < count) {
                told.wait();
            }
        }
        watch.close();
    }

    private static Act opening() {
        Act.OpenDay.Here here = new Act.OpenDay.Here("P1", MORNING.minusSeconds(7200), MORNING.plusSeconds(7200));
        return new Act.OpenDay("P1", List.of(here), List.of());
    }

    @Test
    void a_clock_that_differs_from_that_of_the_records_by_over_a_minute_is_told() {
        assertEquals(Optional.empty(), SafeWarnings.apart(Duration.ofSeconds(60)));
        assertEquals(Optional.empty(), SafeWarnings.apart(Duration.ofSeconds(-60)));
        String ahead = SafeWarnings.apart(Duration.ofSeconds(61)).orElseThrow();
        assertTrue(ahead.contains("is 1 min ahead of the one that has the records"), ahead);
        String behind = SafeWarnings.apart(Duration.ofMinutes(-75)).orElseThrow();
        assertTrue(behind.contains("is 75 min behind the one that has the records"), behind);
    }

    @Test
    void a_clock_set_back_an_hour_is_told_and_no_entry_runs_backwards() {
        try (Workshop shop = at(MORNING)) {
            shop.carryOut(opening(), "P1");
            Outcome outcome = shop.carryOut(new Act.DoOther("P1", Activity.OtherWork.Kind.FETCHING), "P1");
            assertTrue(outcome instanceof Outcome.Done, outcome.toString());
        }
        try (Workshop shop = at(MORNING.minusSeconds(3600))) {
            assertEquals(1, shop.safekeeping().warnings().size());
            assertTrue(
                    shop.safekeeping().warnings().get(0).contains("put the clock right"),
                    shop.safekeeping().warnings().get(0));
            shop.carryOut(new Act.Stop("P1", false, Optional.empty()), "P1");
            assertEquals(1, shop.day().entries().size());
            for (ClockEntry entry : shop.day().entries()) {
                assertTrue(entry.to().isEmpty() || !entry.to().get().isBefore(entry.from()), entry.toString());
            }
        }
        try (Workshop shop = at(MORNING.plusSeconds(60))) {
            assertEquals(List.of(), shop.safekeeping().warnings());
        }
    }
}
