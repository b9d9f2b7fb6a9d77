package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shedboard.store.Samples.at;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.register.Carried;
import org.shedboard.register.Measured;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Handover;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.testing.Records;

/** What machines take home, what was measured at them and how they were handed over, kept in the records. */
@Tag("records")
class CarriedTest {
    @TempDir
    private Path home;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.create(Records.at(home));
        save(Samples::base);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void save(Consumer<Tx> work) {
        store.save(new Stamp(at(0), "kea", "test"), "a test", work);
    }

    private <T> T reread(Function<Reader, T> work) {
        store.close();
        store = Store.open(Records.at(home));
        return store.read(work);
    }

    private static Carried carried(String machineId, int index) {
        return new Carried(
                machineId, "v1", Samples.fullVisit("v1", 14).findings().get(index));
    }

    @Test
    void what_a_machine_took_home_comes_back_in_its_order() {
        List<Carried> both = List.of(carried("m1", 1), carried("m1", 0));
        save(tx -> tx.saveCarried("m1", both));
        assertEquals(both, reread(Reader::carried));
    }

    @Test
    void what_it_takes_home_next_stands_in_the_place_of_that_and_other_machines_keep_theirs() {
        save(tx -> tx.saveCarried("m1", List.of(carried("m1", 0), carried("m1", 1))));
        save(tx -> tx.saveCarried("m2", List.of(carried("m2", 0))));
        save(tx -> tx.saveCarried("m1", List.of(carried("m1", 1))));
        assertEquals(List.of(carried("m1", 1), carried("m2", 0)), reread(Reader::carried));
        save(tx -> tx.saveCarried("m1", List.of()));
        assertEquals(List.of(carried("m2", 0)), reread(Reader::carried));
    }

    @Test
    void measured_values_come_back_with_the_meter_and_with_the_work_once_the_visit_is_finished() {
        Visit visit = Samples.fullVisit("v1", 14);
        Finding pad = visit.findings().get(1);
        save(tx -> tx.saveVisit(visit));
        assertEquals(
                List.of(new Measured("m1", "v1", OptionalInt.of(812), pad, Set.of())),
                reread(reader -> reader.measured(List.of("m1"))));
        save(tx -> tx.saveVisit(visit.finishedAt(at(100))));
        assertEquals(
                List.of(new Measured("m1", "v1", OptionalInt.of(812), pad, Set.of("oil", "boot"))),
                reread(reader -> reader.measured(List.of("m1"))));
        assertEquals(List.of(), store.read(reader -> reader.measured(List.of("m2"))));
        assertEquals(List.of(), store.read(reader -> reader.measured(List.of())));
    }

    @Test
    void a_handover_comes_back() {
        Visit gone = Samples.fullVisit("v1", 14)
                .finishedAt(at(100))
                .withState(VisitState.GONE)
                .withTag(OptionalInt.empty())
                .handedOver(new Handover("kea", "his brother", "not to be ridden", at(120)));
        save(tx -> tx.saveVisit(gone));
        assertEquals(
                Optional.of(gone.handover()),
                reread(reader -> reader.findVisit("v1")).map(Visit::handover));
    }
}
