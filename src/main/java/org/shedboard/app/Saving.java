package org.shedboard.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.shedboard.day.Change;
import org.shedboard.day.Posted;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.hours.HoursRules;
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
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;
import org.shedboard.store.Tx;

/** Saves what acts leave to be saved: of each thing only its last state, in the order in which things refer to each other. */
final class Saving {
    /** The setting that says which minutes a plan gives a task; the likely ones where it is not there. */
    static final String PACKED_PERCENT = "plan.packedPercent";

    private final Tx tx;
    private final Map<String, Owner> owners = new LinkedHashMap<>();
    private final Map<String, Machine> machines = new LinkedHashMap<>();
    private final Map<String, Visit> visits = new LinkedHashMap<>();
    private final Map<String, ClockEntry> entries = new LinkedHashMap<>();
    private final Map<String, Errand> errands = new LinkedHashMap<>();
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final Map<String, Rung> rung = new LinkedHashMap<>();
    private final Map<Object, Opening> openings = new LinkedHashMap<>();
    private final Map<String, NoticeTaken> taken = new LinkedHashMap<>();
    private final Map<String, Loan> loans = new LinkedHashMap<>();
    private Optional<List<Notice>> notices = Optional.empty();
    private final Map<String, List<Carried>> carried = new LinkedHashMap<>();
    private final Map<String, Stock> stock = new LinkedHashMap<>();
    private final Map<String, Order> orders = new LinkedHashMap<>();
    private final Map<String, Movement> movements = new LinkedHashMap<>();
    private final List<Merged> merged = new ArrayList<>();
    private final List<Owner> forgotten = new ArrayList<>();
    private Optional<Catalogue> catalogue = Optional.empty();
    private OptionalInt packedPercent = OptionalInt.empty();
    private Optional<HoursRules> hoursRules = Optional.empty();
    private Optional<Posted> posted = Optional.empty();
    private OptionalLong nextNumber = OptionalLong.empty();

    Saving(Tx tx) {
        this.tx = tx;
    }

    void all(List<Change> changes) {
        changes.forEach(this::note);
        save();
    }

    private void note(Change change) {
        if (change instanceof Change.OwnerSaved saved) {
            owners.put(saved.owner().id(), saved.owner());
        } else if (change instanceof Change.MachineSaved saved) {
            machines.put(saved.machine().id(), saved.machine());
        } else if (change instanceof Change.VisitSaved saved) {
            visits.put(saved.visit().id(), saved.visit());
        } else if (change instanceof Change.EntrySaved saved) {
            entries.put(saved.entry().id(), saved.entry());
        } else if (change instanceof Change.ErrandSaved saved) {
            errands.put(saved.errand().id(), saved.errand());
        } else if (change instanceof Change.ReadingSaved saved) {
            readings.put(saved.reading().id(), saved.reading());
        } else if (change instanceof Change.RungSaved saved) {
            rung.put(saved.rung().id(), saved.rung());
        } else if (change instanceof Change.HoursRulesSaved saved) {
            hoursRules = Optional.of(saved.rules());
        } else if (change instanceof Change.CatalogueSaved saved) {
            catalogue = Optional.of(saved.catalogue());
        } else if (change instanceof Change.PackedPercentSaved saved) {
            packedPercent = OptionalInt.of(saved.percent());
        } else if (change instanceof Change.OpeningSaved saved) {
            openings.put(saved.opening().date(), saved.opening());
        } else if (change instanceof Change.NoticesSaved saved) {
            notices = Optional.of(saved.notices());
        } else if (change instanceof Change.NoticeTakenSaved saved) {
            taken.put(saved.taken().visitId() + " " + saved.taken().noticeId(), saved.taken());
        } else if (change instanceof Change.LoanSaved saved) {
            loans.put(saved.loan().id(), saved.loan());
        } else if (change instanceof Change.CarriedSaved saved) {
            carried.put(saved.machineId(), saved.carried());
        } else if (change instanceof Change.PlanPosted saved) {
            posted = Optional.of(saved.posted());
        } else if (change instanceof Change.StockSaved saved) {
            stock.put(saved.stock().itemId(), saved.stock());
        } else if (change instanceof Change.OrderSaved saved) {
            orders.put(saved.order().id(), saved.order());
        } else if (change instanceof Change.MovementSaved saved) {
            movements.put(saved.movement().id(), saved.movement());
        } else if (change instanceof Change.MachineMerged saved) {
            merged.add(saved.merged());
        } else if (change instanceof Change.OwnerForgotten saved) {
            forgotten.add(saved.owner());
        } else if (change instanceof Change.NumberUsed used) {
            nextNumber = OptionalLong.of(used.next());
        } else {
            throw new IllegalArgumentException("nothing saves " + change);
        }
    }

    private void save() {
        nextNumber.ifPresent(tx::saveNextNumber);
        catalogue.ifPresent(tx::saveCatalogue);
        packedPercent.ifPresent(percent -> tx.saveSetting(PACKED_PERCENT, String.valueOf(percent)));
        tx.saveOwners(owners.values());
        tx.saveMachines(machines.values());
        tx.saveVisits(visits.values());
        tx.saveEntries(entries.values());
        tx.saveErrands(errands.values());
        notices.ifPresent(tx::saveNotices);
        tx.saveNoticesTaken(taken.values());
        tx.saveLoans(loans.values());
        carried.forEach(tx::saveCarried);
        tx.saveReadings(readings.values());
        tx.saveRung(rung.values());
        tx.saveStock(stock.values());
        tx.saveOrders(orders.values());
        tx.saveMovements(movements.values());
        hoursRules.ifPresent(tx::saveHoursRules);
        openings.values().forEach(tx::saveOpening);
        merged.forEach(tx::merge);
        forgotten.forEach(tx::forget);
        posted.ifPresent(plan -> tx.savePosted(plan.plan(), plan.origin()));
    }
}
