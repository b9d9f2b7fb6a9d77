package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;
import static org.shedboard.store.Samples.at;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.register.Logbook;
import org.shedboard.register.Merged;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;
import org.shedboard.testing.Records;

/** Two records of one machine becoming one. */
@Tag("records")
class MergingTest {
    @TempDir
    private Path home;

    private Store store;

    private final Visit visit = Samples.fullVisit("v1", 14);
    private final Merged merged = new Merged(Samples.MACHINE, "m2", at(3));

    @BeforeEach
    void open() {
        store = Store.create(Records.at(home));
        store.save(STAMP, "begin", Samples::base);
        store.save(STAMP, "came", tx -> tx.saveVisits(List.of(visit, Samples.bareVisit("v2"))));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void the_other_record_leaves_the_books_and_stays_to_be_read() {
        store.save(STAMP, "merge", tx -> tx.merge(merged));
        assertEquals(List.of(Samples.BARE_MACHINE), store.read(Reader::machines));
        assertEquals(List.of(merged), store.read(Reader::merged));
    }

    @Test
    void every_visit_of_the_other_record_is_one_of_the_record_kept_and_otherwise_as_it_was() {
        store.save(STAMP, "merge", tx -> tx.merge(merged));
        assertEquals(List.of(), store.read(reader -> reader.visitsOf("m1")));
        assertEquals(
                List.of(visit.withMachine("m2"), Samples.bareVisit("v2")), store.read(reader -> reader.visitsOf("m2")));
    }

    @Test
    void its_readings_and_the_calls_about_it_go_along() {
        Reading reading = new Reading("r1", "m1", at(1), Reading.Unit.HOURS, 12, Reading.Told.AS_EXPECTED, "kea");
        Rung rung = new Rung("g1", "m1", at(2), "kea", Rung.Said.BOOKED, Optional.empty(), "");
        store.save(STAMP, "read", tx -> {
            tx.saveReadings(List.of(reading));
            tx.saveRung(List.of(rung));
        });
        store.save(STAMP, "merge", tx -> tx.merge(merged));
        Logbook logbook = store.read(Reader::logbook);
        assertEquals("m2", logbook.readings().get(0).machineId());
        assertEquals("m2", logbook.rung().get(0).machineId());
    }

    @Test
    void the_journal_tells_which_visits_went_along() {
        store.save(STAMP, "merge", tx -> tx.merge(merged));
        List<JournalRow> rows = store.read(reader -> reader.journal(0));
        JournalRow row = rows.get(rows.size() - 1);
        assertTrue(row.before().contains("visit v1; machine_id m1"), row.before());
        assertTrue(row.after().contains("visit v1; machine_id m2"), row.after());
        assertTrue(row.after().contains("machine m1; merged_into m2"), row.after());
    }

    @Test
    void what_was_merged_before_goes_along() {
        Machine third = new Machine("m3", "o1", "quad", "x", OptionalInt.empty(), "", 300, OptionalInt.empty());
        store.save(STAMP, "merge", tx -> tx.merge(merged));
        store.save(STAMP, "third", tx -> tx.saveMachine(third));
        store.save(STAMP, "merge", tx -> tx.merge(new Merged(Samples.BARE_MACHINE, "m3", at(4))));
        assertEquals(
                List.of("m3", "m3"),
                store.read(Reader::merged).stream().map(Merged::into).toList());
        assertEquals(2, store.read(reader -> reader.visitsOf("m3")).size());
        assertEquals(
                Optional.of("m3"), store.read(reader -> reader.findVisit("v1").map(Visit::machineId)));
    }
}
