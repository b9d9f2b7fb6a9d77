package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;
import static org.shedboard.store.Samples.at;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.testing.Records;

/** An owner being forgotten, down to the bytes of the file. */
@Tag("records")
class ForgettingTest {
    private static final Owner BEFORE = new Owner("o1", "Zanderwick, Mossy Bend", "0977 3310 42");
    private static final Owner NOW = new Owner("o1", "Zanderwick, Quillow Bend", "0977 3310 43");
    private static final Owner OTHER = new Owner("o2", "Yarrowmere", "0977 5550 11");

    /** All that could tell who it was, in the letters and figures in which it was typed anywhere. */
    private static final List<String> TRACES =
            List.of("Zanderwick", "zanderwick", "Mossy", "Quillow", "3310 42", "3310 43", "0977331043", "his brother");

    @TempDir
    private Path home;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.create(Records.at(home));
        store.save(STAMP, "begin", tx -> {
            Samples.base(tx);
            tx.saveOwner(BEFORE);
            tx.saveOwner(OTHER);
        });
        store.save(STAMP, "moved", tx -> tx.saveOwner(NOW));
        store.save(STAMP, "came", tx -> tx.saveVisit(visit()));
        store.save(STAMP, "hours", tx -> {
            tx.saveEntry(entry());
            tx.saveErrands(List.of(new Errand(
                    "e1",
                    "kea",
                    Activity.OtherWork.Kind.FETCHING,
                    at(0),
                    30,
                    "fetch zanderwick's quad, 0977331043, and Yarrowmere's",
                    Errand.State.PLANNED)));
        });
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static Visit visit() {
        Visit full = Samples.fullVisit("v1", 14);
        return full.withIntake(new Intake(
                        full.intake().arrives(),
                        full.intake().mud(),
                        full.intake().depth(),
                        full.intake().condition(),
                        "ring Zanderwick on 0977-331043 before noon"))
                .plusPromise(new Promise(at(400), "kea", "Zanderwick, Quillow Bend", at(20), "Zanderwick rang", true));
    }

    private static ClockEntry entry() {
        return new ClockEntry(
                "c1", "abe", new Activity.OnStay("v1", Step.WASH), at(0), Optional.of(at(30)), Optional.empty());
    }

    private void forget() {
        store.compactWhenClosed();
        store.save(STAMP, "ForgetOwner", tx -> tx.forget(NOW.forgotten()));
    }

    @Test
    void only_our_own_id_is_left_of_the_owner_and_nothing_of_others_is_touched() {
        forget();
        assertEquals(List.of(new Owner("o1", "o1", ""), OTHER), store.read(Reader::owners));
        assertEquals(
                "fetch o1's quad, o1, and Yarrowmere's",
                store.read(Reader::openErrands).get(0).note());
    }

    @Test
    void hours_and_history_are_kept_without_names() {
        forget();
        Visit kept = store.read(reader -> reader.findVisit("v1")).orElseThrow();
        assertEquals("ring o1 on o1 before noon", kept.intake().note());
        assertEquals(
                List.of("o1", "o1", "o1"),
                kept.promises().stream().map(Promise::to).toList());
        assertEquals("o1 rang", kept.promises().get(2).why());
        assertEquals(visit().stays(), kept.stays());
        assertEquals(visit().lines(), kept.lines());
        assertEquals(
                visit().findings().stream()
                        .map(finding -> finding.unnamed("o1"))
                        .toList(),
                kept.findings());
        assertEquals(List.of(entry()), store.read(reader -> reader.entries(at(0), at(60))));
    }

    @Test
    void the_journal_still_tells_what_happened_but_not_to_whom() {
        int rows = store.read(reader -> reader.journal(0)).size();
        forget();
        List<JournalRow> journal = store.read(reader -> reader.journal(0));
        assertEquals(rows + 1, journal.size());
        String told = String.join(
                "\n", journal.stream().map(row -> row.before() + row.after()).toList());
        assertTrue(told.contains("owner o1; name o1"), told);
        assertTrue(told.contains("owner o2; name Yarrowmere"), told);
        TRACES.forEach(trace -> assertFalse(told.contains(trace), trace));
        assertEquals("ForgetOwner", journal.get(rows).what());
    }

    @Test
    @Tag("file")
    void the_closed_file_has_no_byte_left_of_the_name_or_the_telephone() throws IOException {
        assertFalse(traces().isEmpty(), "the test would not see what it looks for");
        forget();
        store.close();
        assertEquals(List.of(), traces());
        store = Store.open(Records.at(home));
        assertEquals("o1", store.read(Reader::owners).get(0).name());
    }

    @Test
    @Tag("file")
    void the_file_is_to_be_written_anew_until_somebody_has_closed_it_in_order() {
        forget();
        assertTrue(Files.exists(home.resolve("compact")));
        store.close();
        assertFalse(Files.exists(home.resolve("compact")));
        store = Store.open(Records.at(home));
    }

    /** The traces that stand in any file of the home, as the database writes text: in bytes of its letters. */
    private List<String> traces() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(home)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return TRACES.stream().filter(trace -> all.indexOf(trace) >= 0).toList();
    }
}
