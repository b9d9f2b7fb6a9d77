package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;
import static org.shedboard.store.Samples.at;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.WashDown;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Activity.OtherWork;
import org.shedboard.hours.BreakRule;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.Errand;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.pack.Plan;
import org.shedboard.register.Loan;
import org.shedboard.register.Logbook;
import org.shedboard.register.Movement;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.register.Order;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.register.Serviced;
import org.shedboard.register.Shelf;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.WrongTries;
import org.shedboard.testing.Records;

@Tag("records")
class RoundTripTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path home;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.create(Records.at(home));
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
        store = Store.open(Records.at(home));
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

    @Test
    void readings_and_calls_come_back_oldest_first() {
        Reading first = reading("r1", 10, Reading.Unit.HOURS, 412.3, Reading.Told.AS_EXPECTED);
        Reading second = reading("r2", 20, Reading.Unit.KILOMETRES, 9000, Reading.Told.NEW_METER);
        Rung again = new Rung("g1", "m1", at(30), "kea", Rung.Said.AGAIN, Optional.of(TODAY), "after \u00e4 shower");
        Rung booked = new Rung("g2", "m2", at(40), "kea", Rung.Said.BOOKED, Optional.empty(), "");
        save(Samples::base);
        save(tx -> tx.saveReadings(List.of(second, first)));
        save(tx -> tx.saveRung(List.of(booked, again)));
        Logbook logbook = reread(Reader::logbook);
        assertEquals(List.of(first, second), logbook.readings());
        assertEquals(List.of(again, booked), logbook.rung());
    }

    private static Reading reading(String id, int minute, Reading.Unit unit, double value, Reading.Told told) {
        return new Reading(id, "m1", at(minute), unit, value, told, "kea");
    }

    @Test
    void a_finished_visit_comes_back_with_those_of_its_works_that_come_again() {
        save(Samples::base);
        save(tx -> tx.saveCatalogue(Samples.catalogue()));
        Visit done = serviced(Samples.fullVisit("v1", 7), "oil", "look").finishedAt(at(300));
        save(tx -> tx.saveVisit(done));
        Serviced expected = new Serviced(
                done.machineId(),
                "v1",
                done.intake().arrives(),
                at(300),
                done.intake().mud(),
                List.of("look"));
        assertEquals(List.of(expected), reread(Reader::logbook).serviced());
    }

    private static Visit serviced(Visit visit, String... works) {
        List<Line> lines = Arrays.stream(works)
                .map(work -> new Line("l " + work, work, work, Payer.OWNER, List.of()))
                .toList();
        return visit.withLines(lines);
    }

    @Test
    void a_visit_that_is_not_finished_is_no_service() {
        save(Samples::base);
        save(tx -> tx.saveVisit(Samples.fullVisit("v1", 7)));
        assertEquals(List.of(), reread(Reader::logbook).serviced());
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
        assertEquals(gone.finished(), store.read(reader -> reader.finishOfNewestBut(1, at(201))));
        assertEquals(Optional.empty(), store.read(reader -> reader.finishOfNewestBut(1, at(200))));
        assertEquals(Optional.empty(), store.read(reader -> reader.finishOfNewestBut(2, at(201))));
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

    private static ClockEntry entry(String id, Activity activity, int from, int to) {
        return new ClockEntry(id, "abe", activity, at(from), Optional.of(at(to)));
    }

    private static ClockEntry correction(String id, Optional<String> replaces, boolean struck, int from, int to) {
        Correction why = new Correction(replaces, struck, "kea", at(700), "forgot; as told \\ by hand");
        return new ClockEntry(id, "abe", otherWork(), at(from), Optional.of(at(to)), Optional.of(why));
    }

    @Test
    void whatever_people_are_on_comes_back_as_it_was() {
        saveVisits(Samples.fullVisit("v1", 1));
        OnStay own = new OnStay("v1", Step.UNDERSIDE, Optional.of("boot"));
        List<ClockEntry> all = List.of(
                entry("c1", new Activity.AtWork(), 0, 10),
                entry("c2", own, 10, 20),
                entry("c3", new Activity.Lent(new OnStay("v1", Step.WASH), own), 20, 30),
                entry("c4", new Activity.Break(Activity.Break.Kind.REST), 30, 40),
                entry("c5", new Activity.Break(Activity.Break.Kind.OFF_DUTY), 40, 50),
                correction("c6", Optional.empty(), false, 50, 60));
        save(tx -> tx.saveEntries(all));
        assertEquals(all, reread(reader -> reader.entries(at(0), at(60))));
    }

    @Test
    void a_span_brings_what_stands_for_its_rows_wherever_that_was_moved() {
        ClockEntry old = entry("c1", otherWork(), 100, 130);
        ClockEntry moved = correction("c2", Optional.of("c1"), false, 3000, 3030);
        ClockEntry far = entry("c3", otherWork(), 5000, 5030);
        save(tx -> tx.saveEntries(List.of(old, moved, far)));
        assertEquals(List.of(old, moved), reread(reader -> reader.entries(at(90), at(140))));
        assertEquals(List.of(moved), reread(reader -> reader.entries(at(2990), at(3040))));
    }

    @Test
    void a_span_brings_what_stands_for_the_presences_of_its_days() {
        ClockEntry right = correction("c1", Optional.of("A" + TODAY + ".1"), false, 90_000, 90_010);
        ClockEntry other = correction("c2", Optional.of("A" + TODAY.plusDays(40) + ".1"), false, 90_020, 90_030);
        save(tx -> tx.saveEntries(List.of(right, other)));
        assertEquals(List.of(right), reread(reader -> reader.entries(at(0), at(60))));
    }

    @Test
    void the_shelf_has_what_is_there_and_the_orders_that_are_still_waited_for() {
        Stock oil = new Stock("oil", "rack 2", new Amount(12_500));
        Order waited = new Order("R1", "oil", Amount.of(20), at(0), at(600), Optional.empty());
        Order here = new Order("R2", "short", Amount.of(5), at(0), at(30), Optional.empty());
        save(tx -> {
            tx.saveStock(List.of(oil));
            tx.saveOrders(List.of(waited, here));
        });
        save(tx -> tx.saveOrders(List.of(here.cameAt(at(40)))));
        assertEquals(new Shelf(List.of(oil), List.of(waited)), reread(Reader::shelf));
    }

    @Test
    void what_moved_is_kept_row_by_row_in_order() {
        Movement counted =
                new Movement("S1", "oil", Movement.Kind.COUNTED, Amount.of(20), at(0), "abe", Optional.empty());
        Movement taken =
                new Movement("S2", "oil", Movement.Kind.TAKEN, new Amount(-2_500), at(30), "kea", Optional.of("V1"));
        Movement other =
                new Movement("S3", "short", Movement.Kind.CAME, Amount.of(5), at(40), "kea", Optional.of("R2"));
        save(tx -> tx.saveMovements(List.of(taken, counted, other)));
        assertEquals(List.of(counted, taken), reread(reader -> reader.movementsOf("oil")));
    }

    @Test
    void makers_notices_and_what_became_of_them_come_back() {
        Notice narrow = new Notice(
                "N-1",
                "Hose\nrubs",
                List.of("quad", "mower"),
                "Burr",
                OptionalInt.of(2019),
                OptionalInt.of(2021),
                new NumberRange("AB", OptionalLong.of(7), OptionalLong.of(99_999_999_999L)),
                "oil");
        Notice wide = new Notice(
                "N-2", "All", List.of(), "x", OptionalInt.empty(), OptionalInt.empty(), NumberRange.ANY, "oil");
        save(tx -> tx.saveNotices(List.of(narrow, wide)));
        assertEquals(List.of(narrow, wide), reread(Reader::notices));
        save(tx -> tx.saveNotices(List.of(wide)));
        assertEquals(List.of(wide), reread(Reader::notices));
        NoticeTaken first = new NoticeTaken("N-1", "m1", "v1", "l1", NoticeTaken.State.TAKEN);
        NoticeTaken second = new NoticeTaken("N-2", "m1", "v1", "l2", NoticeTaken.State.TAKEN);
        save(tx -> tx.saveNoticesTaken(List.of(first, second)));
        save(tx -> tx.saveNoticesTaken(List.of(first.with(NoticeTaken.State.DONE))));
        assertEquals(List.of(first.with(NoticeTaken.State.DONE), second), reread(Reader::noticesTaken));
    }

    @Test
    void what_is_lent_comes_back_with_when_it_was_returned() {
        Loan known = new Loan("B1", Optional.of("m1"), "our quad", "v1", "o1", at(10), Optional.empty());
        Loan named = new Loan("B2", Optional.empty(), "the ute", "v1", "o1", at(20), Optional.empty());
        save(tx -> tx.saveLoans(List.of(known, named)));
        save(tx -> tx.saveLoans(List.of(named.backAt(at(60)))));
        assertEquals(List.of(known, named.backAt(at(60))), reread(Reader::loans));
    }

    @Test
    void a_property_that_is_washed_down_first_comes_back_so_with_the_minutes_it_takes() {
        Owner owner = new Owner("o9", "Ruddock", "0000 9", true);
        save(tx -> tx.saveOwner(owner));
        assertEquals(List.of(owner), reread(Reader::owners));
        Catalogue usual = Samples.catalogue();
        Catalogue longer = new Catalogue(
                usual.classes(),
                usual.works(),
                usual.usual(),
                usual.spreads(),
                usual.testDriveMinutes(),
                usual.signOffMinutes(),
                usual.items(),
                new WashDown(9, 31));
        save(tx -> tx.saveCatalogue(longer));
        assertEquals(Optional.of(longer), reread(Reader::findCatalogue));
    }

    @Test
    void errands_are_found_while_they_are_open() {
        Errand planned =
                new Errand("e1", "abe", OtherWork.Kind.FETCHING, at(60), 30, "the quad at Tarn", Errand.State.PLANNED);
        Errand begun = new Errand("e2", "kea", OtherWork.Kind.TRAINING, at(10), 20, "", Errand.State.BEGUN);
        save(tx -> tx.saveErrands(List.of(planned, begun)));
        assertEquals(List.of(begun, planned), reread(Reader::openErrands));
        save(tx -> tx.saveErrands(List.of(planned.with(Errand.State.DONE), begun.with(Errand.State.DROPPED))));
        assertEquals(List.of(), reread(Reader::openErrands));
    }

    @Test
    void the_rules_for_hours_are_as_usual_until_others_are_saved() {
        assertEquals(HoursRules.USUAL, reread(Reader::hoursRules));
        HoursRules rules = new HoursRules(
                new Rounding(Rounding.Unit.QUARTER, Rounding.Direction.UP),
                new Rounding(Rounding.Unit.FIVE, Rounding.Direction.NEAREST),
                HoursRules.Basis.AGREED,
                new BreakRule(10, 25, false),
                15);
        save(tx -> tx.saveHoursRules(rules));
        assertEquals(rules, reread(Reader::hoursRules));
    }

    @Test
    void what_was_agreed_for_a_line_comes_back() {
        Visit visit = Samples.fullVisit("v1", 1);
        Visit agreed = visit.withLines(
                List.of(visit.lines().get(0).agreedAt(90), visit.lines().get(1)));
        saveVisits(agreed);
        assertEquals(Optional.of(agreed), reread(reader -> reader.findVisit("v1")));
    }

    @Test
    void visits_are_found_by_the_days_they_were_with_us_and_were_promised_for() {
        Visit here = Samples.fullVisit("v1", 1);
        Visit gone = Samples.fullVisit("v2", 2).finishedAt(at(100)).withState(VisitState.GONE);
        saveVisits(here, gone);
        List<Visit> early = store.read(reader -> reader.visitsDuring(at(0), at(90)));
        assertTrue(early.contains(here) && early.contains(gone), early.toString());
        List<Visit> late = store.read(reader -> reader.visitsDuring(at(5000), at(6000)));
        assertEquals(List.of(here), late);
        Instant promised = here.promise().orElseThrow().at();
        Visit left = here.finishedAt(at(200)).withTag(OptionalInt.empty()).withState(VisitState.GONE);
        saveVisits(left);
        List<Visit> due =
                store.read(reader -> reader.visitsDuring(promised.minusSeconds(60), promised.plusSeconds(60)));
        assertTrue(due.contains(left), due.toString());
    }

    @Test
    void days_that_nobody_closed_are_found() {
        Opening.Closed closed = new Opening.Closed(at(500), "kea");
        save(tx -> tx.saveOpening(Samples.opening(TODAY.minusDays(2))));
        save(tx -> tx.saveOpening(Samples.opening(TODAY.minusDays(1)).closed(closed)));
        save(tx -> tx.saveOpening(Samples.opening(TODAY)));
        assertEquals(Optional.of(TODAY.minusDays(2)), reread(reader -> reader.unclosedBefore(TODAY)));
        assertEquals(
                List.of(TODAY.minusDays(1), TODAY),
                store.read(reader -> reader.openings(TODAY.minusDays(1), TODAY.plusDays(1))).stream()
                        .map(Opening::date)
                        .toList());
    }

    @Test
    void the_journal_is_asked_for_changes_of_a_name_and_what_they_touched() {
        saveVisits(Samples.fullVisit("v1", 1));
        Visit visit = Samples.fullVisit("v1", 1);
        List<Line> lines = new ArrayList<>(visit.lines());
        lines.add(new Line("3", "boot", "Another boot; see note", Payer.OWNER, List.of()));
        Stamp stamp = new Stamp(at(50), "kea", "bench");
        store.save(stamp, "AddWork", tx -> tx.saveVisit(visit.withLines(lines)));
        store.save(new Stamp(at(60), "kea", "bench"), "Release", tx -> tx.saveSetting("x", "y"));
        List<JournalRow> rows = store.read(reader -> reader.journal(List.of("AddWork", "HoldVisit"), at(0), at(100)));
        assertEquals(1, rows.size());
        assertEquals(
                List.of(List.of("v1", "3")),
                rows.get(0).touched("visit_line").stream()
                        .map(JournalRow.Touched::key)
                        .toList());
        assertTrue(rows.get(0).touched("visit_line").get(0).columns().contains("payer"));
        assertEquals(List.of(), rows.get(0).touched("visit"));
    }
}
