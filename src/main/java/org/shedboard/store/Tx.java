package org.shedboard.store;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.hours.HoursRules;
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
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;

/**
 * A change under way: what it reads includes what it saved. Nobody else changes anything meanwhile, so what was read here still
 * holds when it is committed. Many things saved by one call cost a few statements, not a few each.
 */
public final class Tx extends Reader {
    private final Sql sql;
    private final Instant now;
    private final Difference difference = new Difference();

    Tx(Sql sql, Instant now) {
        super(sql);
        this.sql = sql;
        this.now = now;
    }

    /** Puts this shop in place of the one before, places and people included. */
    public void saveShop(Shop shop) {
        difference.save(sql, ShopRows.shares(shop));
    }

    /** Saves the PIN of a person who is saved. */
    public void savePin(KeptPin pin) {
        difference.save(sql, List.of(PinRows.share(pin)));
    }

    /** Puts this catalogue in place of the one before. */
    public void saveCatalogue(Catalogue catalogue) {
        difference.save(sql, CatalogueRows.shares(catalogue));
    }

    public void saveOwner(Owner owner) {
        saveOwners(List.of(owner));
    }

    public void saveOwners(Collection<Owner> owners) {
        difference.save(sql, List.of(OwnerRows.shareOfOwners(owners)));
    }

    /** Saves a machine whose owner is saved. */
    public void saveMachine(Machine machine) {
        saveMachines(List.of(machine));
    }

    public void saveMachines(Collection<Machine> machines) {
        difference.save(sql, List.of(OwnerRows.shareOfMachines(machines)));
    }

    /** Saves a record as merged into a machine that is saved, and lets all that names it name that machine. */
    public void merge(Merged merged) {
        List<Merged> along = merged().stream()
                .filter(each -> each.into().equals(merged.machine().id()))
                .map(each -> new Merged(each.machine(), merged.into(), each.at()))
                .toList();
        difference.save(sql, List.of(OwnerRows.shareOfMerged(along)));
        difference.save(sql, List.of(OwnerRows.shareOfMerged(List.of(merged))));
        Merging.of(merged).move(sql, difference);
    }

    /** Erases what an owner was called and by what number they were reached, wherever it stands; the journal does not tell it. */
    public void forget(Owner forgotten) {
        new Forgetting(sql, forgotten).run();
    }

    /** Saves a visit of a machine that is saved. */
    public void saveVisit(Visit visit) {
        saveVisits(List.of(visit));
    }

    /** Saves visits, each at most once; among themselves they may pass tags on. */
    public void saveVisits(Collection<Visit> visits) {
        difference.save(sql, VisitRows.shares(sql, visits, now));
    }

    /** Saves a clock entry on a visit that is saved. */
    public void saveEntry(ClockEntry entry) {
        saveEntries(List.of(entry));
    }

    public void saveEntries(Collection<ClockEntry> entries) {
        difference.save(sql, List.of(EntryRows.share(entries)));
    }

    public void saveErrands(Collection<Errand> errands) {
        difference.save(sql, List.of(ErrandRows.share(errands)));
    }

    /** Puts these notices in place of those before. */
    public void saveNotices(Collection<Notice> notices) {
        difference.save(sql, List.of(NoticeRows.shareOfNotices(notices)));
    }

    public void saveNoticesTaken(Collection<NoticeTaken> taken) {
        difference.save(sql, List.of(NoticeRows.shareOfTaken(taken)));
    }

    public void saveLoans(Collection<Loan> loans) {
        difference.save(sql, List.of(NoticeRows.shareOfLoans(loans)));
    }

    /** Saves all that a machine, which is saved, takes home. */
    public void saveCarried(String machineId, List<Carried> carried) {
        difference.save(sql, List.of(CarriedRows.share(machineId, carried)));
    }

    /** Saves readings of machines that are saved. */
    public void saveReadings(Collection<Reading> readings) {
        difference.save(sql, List.of(LogbookRows.shareOfReadings(readings)));
    }

    public void saveRung(Collection<Rung> rung) {
        difference.save(sql, List.of(LogbookRows.shareOfRung(rung)));
    }

    public void saveHoursRules(HoursRules rules) {
        difference.save(sql, List.of(HoursRulesRows.share(rules)));
    }

    public void saveStock(Collection<Stock> stock) {
        difference.save(sql, List.of(ShelfRows.shareOfStock(stock)));
    }

    public void saveOrders(Collection<Order> orders) {
        difference.save(sql, List.of(ShelfRows.shareOfOrders(orders)));
    }

    public void saveMovements(Collection<Movement> movements) {
        difference.save(sql, List.of(ShelfRows.shareOfMovements(movements)));
    }

    public void saveOpening(Opening opening) {
        difference.save(sql, OpeningRows.shares(opening));
    }

    /** Posts a plan whose minutes count from that moment, in place of the one before. */
    public void savePosted(Plan plan, Instant origin) {
        difference.save(sql, PlanRows.shares(plan, origin));
    }

    public void saveNextNumber(long next) {
        difference.save(sql, List.of(SettingRows.shareOfNextNumber(next)));
    }

    public void saveSetting(String name, String text) {
        difference.save(sql, List.of(SettingRows.share(name, text)));
    }

    Difference difference() {
        return difference;
    }
}
