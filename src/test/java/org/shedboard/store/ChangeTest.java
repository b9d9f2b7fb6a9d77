package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;
import static org.shedboard.store.Samples.at;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.WrongTries;
import org.shedboard.testing.Records;

@Tag("records")
class ChangeTest {
    @TempDir
    private Path home;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.create(Records.at(home));
        store.save(STAMP, "begin", Samples::base);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private List<JournalRow> journal() {
        return store.read(reader -> reader.journal(0));
    }

    private JournalRow newest() {
        List<JournalRow> rows = journal();
        return rows.get(rows.size() - 1);
    }

    @Test
    void a_change_is_one_row_of_the_journal() {
        Stamp stamp = new Stamp(at(7), "abe", "wash pad");
        store.save(stamp, "rang", tx -> {
            tx.saveOwner(new Owner("o1", "Wiremu O'Connor", "021 555 0199"));
            tx.saveSetting("rung", "yes");
        });
        assertEquals(2, journal().size());
        JournalRow row = newest();
        assertEquals(store.read(Reader::lastJournal), row.id());
        assertEquals(at(7), row.at());
        assertEquals("abe", row.who());
        assertEquals("wash pad", row.terminal());
        assertEquals("rang", row.what());
        assertEquals("owner o1; phone 021 555 0101", row.before());
        assertEquals("owner o1; phone 021 555 0199\nsetting rung; text yes", row.after());
        assertEquals(List.of(row), store.read(reader -> reader.journal(row.id())));
    }

    /** Both are this machine's here, and nothing takes minutes between them. */
    @Test
    void the_records_tell_what_the_clock_says_where_they_are() {
        Instant before = Instant.now().minusSeconds(30);
        Instant told = store.read(Reader::clockOfRecords);
        assertTrue(told.isAfter(before) && told.isBefore(Instant.now().plusSeconds(30)), told.toString());
    }

    @Test
    void the_journal_tells_only_what_differs() {
        Visit visit = Samples.fullVisit("v1", 14);
        store.save(STAMP, "came", tx -> tx.saveVisit(visit));
        Visit begun = visit.withTask("drain", task -> task.with(Progress.TO_DO.started("abe", at(5), 10)));
        store.save(STAMP, "start", tx -> tx.saveVisit(begun));
        assertEquals(
                "task v1 drain; status TO_DO; person_id -; began_at -; since_at -; minutes_left 0", newest().before());
        assertEquals(
                "task v1 drain; status RUNNING; person_id abe; began_at %1$s; since_at %1$s; minutes_left 10"
                        .formatted(at(5)),
                newest().after());
        store.save(STAMP, "again", tx -> tx.saveVisit(begun));
        assertEquals("", newest().before() + newest().after());
    }

    @Test
    void the_journal_tells_nothing_of_what_is_kept_of_a_pin() {
        KeptPin pin = new KeptPin("kea", new PinHash("5a17", "4a54", 600_000), WrongTries.NONE);
        store.save(STAMP, "a PIN is set", tx -> tx.savePin(pin));
        assertEquals("a PIN is set", newest().what());
        assertEquals("", newest().before() + newest().after());
    }

    @Test
    void many_things_at_once_are_counted_in_the_journal() {
        store.save(STAMP, "history", tx -> tx.saveVisits(Samples.visits(60)));
        assertEquals(2, journal().size());
        assertEquals("", newest().before());
        assertTrue(newest().after().startsWith("visit 60 rows\ntag 60 rows\n"), newest().after());
    }

    @Test
    void work_that_throws_leaves_nothing() {
        IllegalStateException thrown = assertThrows(
                IllegalStateException.class,
                () -> store.save(STAMP, "half", tx -> {
                    tx.saveVisit(Samples.fullVisit("v1", 14));
                    throw new IllegalStateException("on purpose");
                }));
        assertEquals(0, thrown.getSuppressed().length);
        assertEquals(Optional.empty(), store.read(reader -> reader.findVisit("v1")));
        assertEquals(1, journal().size());
        store.save(STAMP, "whole", tx -> tx.saveVisit(Samples.fullVisit("v1", 14)));
        assertEquals(2, journal().size());
    }

    @Test
    void a_change_reads_what_it_saved_and_others_do_not_until_it_is_made() {
        List<Optional<String>> seen = store.change(STAMP, "look", tx -> {
            tx.saveSetting("a", "b");
            return List.of(tx.setting("a"), store.read(reader -> reader.setting("a")));
        });
        assertEquals(List.of(Optional.of("b"), Optional.empty()), seen);
        assertEquals(Optional.of("b"), store.read(reader -> reader.setting("a")));
    }

    @Test
    void a_reader_sees_one_moment_however_long_it_reads() {
        store.read(reader -> {
            assertEquals(Optional.empty(), reader.setting("a"));
            store.save(STAMP, "meanwhile", tx -> tx.saveSetting("a", "b"));
            assertEquals(Optional.empty(), reader.setting("a"));
            return null;
        });
    }

    private void assertRefused(String constraint, java.util.function.Consumer<Tx> work) {
        StoreFailure failure = assertThrows(StoreFailure.class, () -> store.save(STAMP, "wrong", work));
        assertEquals(StoreFailure.Kind.CONSTRAINT, failure.kind());
        assertEquals(Optional.of(constraint), failure.constraint());
    }

    @Test
    void a_broken_rule_is_told_by_its_name() {
        store.save(STAMP, "came", tx -> tx.saveVisit(Samples.fullVisit("v1", 14)));
        assertRefused("tag_taken", tx -> tx.saveVisit(Samples.fullVisit("v2", 14)));
        assertRefused(
                "machine_of_owner",
                tx -> tx.saveMachine(
                        new Machine("m9", "o9", "quad", "", OptionalInt.empty(), "", 1, OptionalInt.empty())));
        assertRefused(
                "clock_entry_of_visit",
                tx -> tx.saveEntry(
                        new ClockEntry("c1", "abe", new Activity.OnStay("v9", Step.WASH), at(0), Optional.empty())));
        KeptPin nobodys = new KeptPin("nobody", new PinHash("5a17", "4a54", 1), WrongTries.NONE);
        assertRefused("pin_of_person", tx -> tx.savePin(nobodys));
        assertEquals(2, journal().size());
    }

    @Test
    void a_tag_comes_back_when_its_machine_goes() {
        Visit first = Samples.fullVisit("v1", 14);
        store.save(STAMP, "came", tx -> tx.saveVisit(first));
        Visit gone = first.withState(VisitState.GONE);
        Visit second = Samples.fullVisit("v2", 14);
        store.save(STAMP, "swap", tx -> tx.saveVisits(List.of(second, gone)));
        assertEquals(Optional.of(gone), store.read(reader -> reader.findVisit("v1")));
        assertEquals(Optional.of(second), store.read(reader -> reader.findVisit("v2")));
    }

    @Test
    void two_visits_saved_together_may_swap_their_tags() {
        store.save(STAMP, "came", tx -> tx.saveVisits(List.of(Samples.fullVisit("v1", 1), Samples.fullVisit("v2", 2))));
        store.save(STAMP, "swap", tx -> tx.saveVisits(List.of(Samples.fullVisit("v1", 2), Samples.fullVisit("v2", 1))));
        assertEquals(
                OptionalInt.of(2),
                store.read(reader -> reader.findVisit("v1")).orElseThrow().tag());
        assertRefused("tag_taken", tx -> tx.saveVisit(Samples.fullVisit("v3", 1)));
    }

    @Test
    void a_closed_store_says_so() {
        store.close();
        store.close();
        assertThrows(IllegalStateException.class, () -> store.read(Reader::lastJournal));
    }
}
