package org.shedboard.store;

import static org.shedboard.store.Samples.at;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.Errand;
import org.shedboard.pack.Plan;
import org.shedboard.register.Carried;
import org.shedboard.register.Loan;
import org.shedboard.register.Merged;
import org.shedboard.register.Movement;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.register.Order;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.PinHash;
import org.shedboard.shop.Step;
import org.shedboard.shop.Visit;
import org.shedboard.shop.WrongTries;

/** A shop that has something in every table, made by several changes. */
final class WholeShop {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private WholeShop() {}

    static void save(Store store) {
        Stamp stamp = Samples.STAMP;
        store.save(stamp, "the shop", WholeShop::shop);
        store.save(stamp, "the visits", WholeShop::visits);
        store.save(stamp, "the hours", WholeShop::hours);
        store.save(stamp, "the register", WholeShop::register);
        store.save(stamp, "the shelf", WholeShop::shelf);
    }

    private static void shop(Tx tx) {
        Samples.base(tx);
        tx.savePin(new KeptPin("kea", new PinHash("5a17", "4a54", 600_000), new WrongTries(4, Optional.of(at(1)))));
        tx.saveNextNumber(40_000_000_000L);
        tx.saveSetting("a\nb", "\u0645\u0631\u062d\u0628\u0627 \uD83D\uDE9C \\ \" \u0001");
    }

    private static void visits(Tx tx) {
        Visit held = Samples.fullVisit("v2", 15).held(Samples.hold());
        tx.saveVisits(List.of(Samples.fullVisit("v1", 14), held, Samples.bareVisit("v3")));
        tx.savePosted(Samples.plan(), at(0));
        tx.saveOpening(Samples.opening(TODAY));
    }

    private static void hours(Tx tx) {
        Activity.OtherWork fetching = new Activity.OtherWork(Activity.OtherWork.Kind.FETCHING);
        Activity.OnStay own = new Activity.OnStay("v1", Step.WASH, Optional.of("wash"));
        Correction why = new Correction(Optional.of("c1"), false, "kea", at(700), "forgot; as told");
        tx.saveEntries(List.of(
                new ClockEntry("c1", "abe", fetching, at(0), Optional.of(at(30))),
                new ClockEntry("c2", "abe", own, at(30), Optional.empty()),
                new ClockEntry("c3", "abe", fetching, at(1), Optional.of(at(30)), Optional.of(why))));
        tx.saveErrands(List.of(
                new Errand("e1", "kea", Activity.OtherWork.Kind.FETCHING, at(60), 20, "tyres", Errand.State.PLANNED)));
    }

    private static void register(Tx tx) {
        tx.saveReadings(
                List.of(new Reading("r1", "m1", at(10), Reading.Unit.HOURS, 412.3, Reading.Told.AS_EXPECTED, "kea")));
        tx.saveRung(List.of(new Rung("g1", "m1", at(30), "kea", Rung.Said.AGAIN, Optional.of(TODAY), "a shower")));
        tx.saveNotices(List.of(new Notice(
                "N-1",
                "Hose rubs",
                List.of("quad"),
                "Burr",
                OptionalInt.of(2019),
                OptionalInt.empty(),
                new NumberRange("AB", OptionalLong.of(7), OptionalLong.of(99_999_999_999L)),
                "oil")));
        tx.saveNoticesTaken(List.of(new NoticeTaken("N-1", "m1", "v1", "l1", NoticeTaken.State.TAKEN)));
        tx.saveLoans(List.of(new Loan("B1", Optional.of("m1"), "our quad", "v1", "o1", at(10), Optional.empty())));
        tx.saveCarried(
                "m1",
                List.of(new Carried(
                        "m1", "v1", Samples.fullVisit("v1", 1).findings().get(0))));
    }

    private static void shelf(Tx tx) {
        tx.saveStock(List.of(new Stock("oil", "rack 2", new Amount(12_500))));
        tx.saveOrders(List.of(new Order("R1", "oil", Amount.of(20), at(0), at(600), Optional.empty())));
        tx.saveMovements(List.of(
                new Movement("S1", "oil", Movement.Kind.COUNTED, Amount.of(20), at(0), "abe", Optional.empty())));
    }

    /** Changes, moves and takes away something of most of it. */
    static void alter(Store store) {
        Stamp stamp = Samples.STAMP;
        store.save(stamp, "other visits", tx -> {
            Visit less = Samples.fullVisit("v1", 3);
            tx.saveVisit(less.withLines(less.lines().subList(1, 2))
                    .withStays(less.stays().subList(1, 2)));
            tx.savePosted(new Plan(0, 0, List.of(), List.of(), List.of(), 0, 0, 0), at(9));
        });
        store.save(stamp, "one record", tx -> tx.merge(new Merged(Samples.MACHINE, "m2", at(800))));
        store.save(stamp, "no notices", tx -> tx.saveNotices(List.of()));
        store.save(stamp, "another shop", tx -> tx.saveCatalogue(Samples.catalogue()));
    }
}
