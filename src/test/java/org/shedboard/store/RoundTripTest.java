package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.shedboard.store.Samples.STAMP;
import static org.shedboard.store.Samples.at;

import java.nio.file.Path;
import java.time.LocalDate;
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
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.ClockEntry;
import org.shedboard.pack.Plan;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.WrongTries;

@Tag("elsewhere")
class RoundTripTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path home;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.create(home);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void save(Consumer<Tx> work) {
        store.save(STAMP, "test", work);
    }

    /** Read by another opening of the file, so that nothing comes from memory. */
    private <T> T reread(Function<Reader, T> work) {
        store.close();
        store = Store.open(home);
        return store.read(work);
    }

    @Test
    void a_new_shop_is_empty() {
        assertEquals(Optional.empty(), store.read(Reader::findShop));
        assertEquals(Optional.empty(), store.read(Reader::findCatalogue));
        assertEquals(Optional.empty(), store.read(Reader::posted));
        assertEquals(Optional.empty(), store.read(Reader::newestOpening));
        assertEquals(Optional.empty(), store.read(reader -> reader.setting("zone")));
        assertEquals(List.of(), store.read(Reader::owners));
        assertEquals(List.of(), store.read(reader -> reader.visitsOpenOrEndedSince(at(0))));
        assertEquals(1, store.read(Reader::nextNumber));
        assertEquals(0, store.read(Reader::lastJournal));
    }

    @Test
    void the_shop_comes_back_in_its_order() {
        save(tx -> tx.saveShop(Samples.shop()));
        assertEquals(Optional.of(Samples.shop()), reread(Reader::findShop));
    }

    @Test
    void another_shop_takes_the_place_of_the_first() {
        save(tx -> tx.saveShop(Samples.shop()));
        Shop first = Samples.shop();
        Shop other = new Shop(
                "Elsewhere",
                first.zone(),
                Set.of(),
                List.of(first.places().get(2), first.places().get(0)),
                List.of(first.people().get(1)));
        save(tx -> tx.saveShop(other));
        assertEquals(Optional.of(other), reread(Reader::findShop));
    }

    @Test
    void the_catalogue_comes_back_and_gives_way_to_another() {
        Catalogue first = Samples.catalogue();
        save(tx -> tx.saveCatalogue(first));
        assertEquals(Optional.of(first), reread(Reader::findCatalogue));
        Catalogue other =
                new Catalogue(List.of(first.classes().get(1)), List.of(), first.usual(), first.spreads(), 1, 2);
        save(tx -> tx.saveCatalogue(other));
        assertEquals(Optional.of(other), reread(Reader::findCatalogue));
    }

    @Test
    void owners_and_machines_come_back() {
        save(Samples::base);
        assertEquals(List.of(Samples.OWNER), reread(Reader::owners));
        assertEquals(List.of(Samples.MACHINE, Samples.BARE_MACHINE), reread(Reader::machines));
    }

    private static KeptPin pinOf(String personId, WrongTries tries) {
        return new KeptPin(personId, new PinHash("5a17", "4a54", 600_000), tries);
    }

    @Test
    void a_pin_comes_back_and_gives_way_to_the_persons_next() {
        save(Samples::base);
        assertEquals(false, store.read(Reader::hasPins));
        KeptPin first = pinOf("kea", WrongTries.NONE);
        KeptPin others = pinOf("abe", WrongTries.NONE);
        save(tx -> {
            tx.savePin(first);
            tx.savePin(others);
        });
        assertEquals(Optional.of(first), reread(reader -> reader.findPin("kea")));
        KeptPin next = pinOf("kea", new WrongTries(4, Optional.of(at(1))));
        save(tx -> tx.savePin(next));
        assertEquals(Optional.of(next), reread(reader -> reader.findPin("kea")));
        assertEquals(Optional.of(others), store.read(reader -> reader.findPin("abe")));
        assertEquals(Optional.empty(), store.read(reader -> reader.findPin("nobody")));
        assertEquals(true, store.read(Reader::hasPins));
    }

    @Test
    void a_visit_comes_back_with_everything_in_it() {
        Visit full = Samples.fullVisit("v1", 14);
        saveVisits(full);
        assertEquals(Optional.of(full), reread(reader -> reader.findVisit("v1")));
    }

    @Test
    void a_visit_comes_back_with_nothing_in_it() {
        Visit bare = Samples.bareVisit("v2");
        saveVisits(bare);
        assertEquals(Optional.of(bare), reread(reader -> reader.findVisit("v2")));
    }

    @Test
    void a_held_visit_comes_back_with_its_reason() {
        Visit held = Samples.fullVisit("v1", 14).held(Samples.hold());
        saveVisits(held);
        assertEquals(Optional.of(held), reread(reader -> reader.findVisit("v1")));
    }

    @Test
    void a_changed_visit_leaves_nothing_of_the_old_one() {
        Visit full = Samples.fullVisit("v1", 14);
        saveVisits(full);
        Visit less = full.withLines(full.lines().subList(1, 2))
                .withStays(full.stays().subList(1, 2))
                .withTag(OptionalInt.of(3));
        save(tx -> tx.saveVisit(less));
        assertEquals(Optional.of(less), reread(reader -> reader.findVisit("v1")));
        save(tx -> tx.saveVisit(full));
        assertEquals(Optional.of(full), reread(reader -> reader.findVisit("v1")));
    }

    @Test
    void visits_are_found_by_what_became_of_them() {
        Visit booked = Samples.bareVisit("v1");
        Visit gone = Samples.fullVisit("v2", 2).finishedAt(at(100)).withState(VisitState.GONE);
        Visit done = Samples.fullVisit("v3", 3).finishedAt(at(200));
        Visit noShow = Samples.bareVisit("v4").withState(VisitState.NO_SHOW);
        saveVisits(booked, gone, done, noShow);
        assertEquals(
                List.of(done, booked, noShow),
                store.read(reader -> reader.visitsOpenOrEndedSince(at(0))).stream()
                        .filter(visit -> !visit.id().equals("v2"))
                        .toList());
        assertEquals(List.of(done, booked), store.read(reader -> reader.visitsOpenOrEndedSince(at(101))));
        assertEquals(List.of(gone, done), store.read(reader -> reader.finishedVisits(at(100), at(201))));
        assertEquals(List.of(gone), store.read(reader -> reader.finishedVisits(at(100), at(200))));
        assertEquals(List.of(booked, noShow), store.read(reader -> reader.visitsOf("m2")));
    }

    @Test
    void a_machine_that_goes_home_the_day_after_counts_as_ended_then() {
        Visit done = Samples.fullVisit("v1", 1).finishedAt(at(100));
        saveVisits(done);
        Visit gone = done.withState(VisitState.GONE);
        Stamp nextMorning = new Stamp(at(1000), "kea", "bench");
        store.save(nextMorning, "collected", tx -> tx.saveVisit(gone));
        store.save(new Stamp(at(5000), "kea", "bench"), "again", tx -> tx.saveVisit(gone));
        assertEquals(List.of(gone), store.read(reader -> reader.visitsOpenOrEndedSince(at(1000))));
        assertEquals(List.of(), store.read(reader -> reader.visitsOpenOrEndedSince(at(1001))));
    }

    @Test
    void clock_entries_come_back_by_the_span_they_touch() {
        ClockEntry onStay = new ClockEntry("c1", "abe", new OnStay("v1", Step.WASH), at(0), Optional.of(at(30)));
        ClockEntry other = new ClockEntry("c2", "kea", otherWork(), at(10), Optional.of(at(10)));
        ClockEntry open = new ClockEntry("c3", "abe", otherWork(), at(30), Optional.empty());
        saveVisits(Samples.fullVisit("v1", 1));
        save(tx -> tx.saveEntries(List.of(onStay, other, open)));
        assertEquals(List.of(onStay, other, open), reread(reader -> reader.entries(at(0), at(31))));
        assertEquals(List.of(onStay, other), store.read(reader -> reader.entries(at(10), at(30))));
        assertEquals(List.of(open), store.read(reader -> reader.entries(at(30), at(31))));
        assertEquals(List.of(open), store.read(Reader::openEntries));
        save(tx -> tx.saveEntry(open.endedAt(at(40))));
        assertEquals(List.of(), store.read(Reader::openEntries));
    }

    private static OtherWork otherWork() {
        return new OtherWork(OtherWork.Kind.FETCHING);
    }

    @Test
    void an_opening_comes_back_by_its_date() {
        Opening opening = Samples.opening(TODAY);
        save(tx -> tx.saveOpening(opening));
        save(tx -> tx.saveOpening(Samples.opening(TODAY.minusDays(1)).closed(new Opening.Closed(at(0), "kea"))));
        assertEquals(Optional.of(opening), reread(reader -> reader.opening(TODAY)));
        assertEquals(Optional.of(opening), store.read(Reader::newestOpening));
        assertEquals(Optional.empty(), store.read(reader -> reader.opening(TODAY.plusDays(1))));
        Opening closed = opening.closed(new Opening.Closed(at(500), "abe"));
        save(tx -> tx.saveOpening(closed));
        assertEquals(Optional.of(closed), reread(reader -> reader.opening(TODAY)));
    }

    @Test
    void the_posted_plan_comes_back_in_its_order() {
        save(tx -> tx.savePosted(Samples.plan(), at(0)));
        assertEquals(Optional.of(new Posted(Samples.plan(), at(0))), reread(Reader::posted));
        Plan empty = new Plan(0, 0, List.of(), List.of(), List.of(), 0, 0, 0);
        save(tx -> tx.savePosted(empty, at(9)));
        assertEquals(Optional.of(new Posted(empty, at(9))), reread(Reader::posted));
    }

    @Test
    void numbers_and_settings_come_back() {
        save(tx -> {
            tx.saveNextNumber(40_000_000_000L);
            tx.saveSetting("board", "a\nb");
        });
        assertEquals(40_000_000_000L, reread(Reader::nextNumber));
        assertEquals(Optional.of("a\nb"), store.read(reader -> reader.setting("board")));
    }

    @Test
    void odd_texts_come_back_as_they_were() {
        List<String> odd = List.of(
                "",
                " ",
                "O'Connor \"Mac\" --; DROP TABLE visit; /*",
                "\\n \n \\ %s ${x} {0}",
                "🚜🐑 T\u0113n\u0101 koe",
                "\u0645\u0631\u062d\u0628\u0627 \u200f",
                "x".repeat(10_000));
        for (String text : odd) {
            Owner owner = new Owner("id " + text, text, text);
            Machine machine =
                    new Machine("m " + text, owner.id(), text, text, OptionalInt.empty(), text, 1, OptionalInt.empty());
            save(tx -> {
                tx.saveOwner(owner);
                tx.saveMachine(machine);
                tx.saveSetting(text, text);
            });
            assertEquals(true, store.read(Reader::owners).contains(owner), text);
            assertEquals(true, store.read(Reader::machines).contains(machine), text);
            assertEquals(Optional.of(text), store.read(reader -> reader.setting(text)));
        }
        assertEquals(odd, Listed.split(Listed.join(odd)));
        assertEquals(List.of(), Listed.split(Listed.join(List.of())));
    }

    private void saveVisits(Visit... visits) {
        save(tx -> {
            Samples.base(tx);
            tx.saveVisits(List.of(visits));
        });
    }
}
