package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
import org.shedboard.register.Register;
import org.shedboard.register.Rung;
import org.shedboard.register.Serviced;
import org.shedboard.register.Stock;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** The day while one act is carried out: every value put into it is also noted as a change to save, the last one of each id. */
final class Draft {
    private final Day before;
    private Day day;
    private final Map<String, Change> changes = new LinkedHashMap<>();

    Draft(Day day) {
        this.before = day;
        this.day = day;
    }

    Day day() {
        return day;
    }

    void put(Owner owner) {
        day = day.with(day.books().with(owner));
        changes.put("owner " + owner.id(), new Change.OwnerSaved(owner));
    }

    void put(Machine machine) {
        day = day.with(day.books().with(machine));
        changes.put("machine " + machine.id(), new Change.MachineSaved(machine));
    }

    void put(Merged merged) {
        day = day.with(day.books().with(merged));
        changes.put("merged " + merged.machine().id(), new Change.MachineMerged(merged));
    }

    /** Nothing of it is saved in the usual way, for the journal would tell what was there before. */
    void forget(Owner forgotten) {
        day = day.with(day.books().with(forgotten));
        for (Visit visit : day.visits()) {
            day = day.ownerOf(visit).equals(forgotten) ? day.with(RegisterActs.forgotten(visit, forgotten)) : day;
        }
        for (Machine machine : day.books().machines()) {
            if (machine.ownerId().equals(forgotten.id())) {
                Register register = day.books().register().unnamed(machine.id(), forgotten.id());
                day = day.with(day.books().with(register));
            }
        }
        changes.put("forgotten " + forgotten.id(), new Change.OwnerForgotten(forgotten));
    }

    void put(Visit visit) {
        day = day.with(visit);
        changes.put("visit " + visit.id(), new Change.VisitSaved(visit));
        settleNotices(visit);
        if (visit.state() == VisitState.DONE || visit.state() == VisitState.GONE) {
            visit.finished()
                    .ifPresent(finished -> day = day.with(
                            day.books().with(day.books().register().logbook().with(serviced(visit, finished)))));
        }
    }

    /** What a finish that is taken back had told is no longer so. */
    void unfinish(String visitId) {
        day = day.with(day.books().with(day.books().register().logbook().without(visitId)));
    }

    /** A notice is carried out when its visit is done with it, and open again when the booking is called off. */
    private void settleNotices(Visit visit) {
        Optional<NoticeTaken.State> next = switch (visit.state()) {
            case DONE, GONE -> Optional.of(NoticeTaken.State.DONE);
            case CANCELLED, NO_SHOW -> Optional.of(NoticeTaken.State.DROPPED);
            default -> Optional.empty();
        };
        next.ifPresent(state -> day.books().register().takenOn(visit.id()).stream()
                .filter(taken -> taken.state() == NoticeTaken.State.TAKEN)
                .forEach(taken -> put(taken.with(state))));
    }

    void put(NoticeTaken taken) {
        day = day.with(day.books().with(day.books().register().with(taken)));
        changes.put("notice " + taken.noticeId() + " " + taken.visitId(), new Change.NoticeTakenSaved(taken));
    }

    void putNotices(List<Notice> notices) {
        day = day.with(day.books().with(day.books().register().withNotices(notices)));
        changes.put("notices", new Change.NoticesSaved(notices));
    }

    void put(Loan loan) {
        day = day.with(day.books().with(day.books().register().with(loan)));
        changes.put("loan " + loan.id(), new Change.LoanSaved(loan));
    }

    /** The machine takes these findings home, and no others. */
    void carry(String machineId, List<Carried> carried) {
        Books books = day.books();
        day = day.with(books.with(books.register().carrying(machineId, carried)));
        changes.put("carried " + machineId, new Change.CarriedSaved(machineId, carried));
    }

    private static Serviced serviced(Visit visit, Instant finished) {
        return new Serviced(
                visit.machineId(),
                visit.id(),
                visit.intake().arrives(),
                finished,
                visit.intake().mud(),
                visit.lines().stream().map(Line::workId).toList());
    }

    void put(ClockEntry entry) {
        day = day.with(entry);
        changes.put("entry " + entry.id(), new Change.EntrySaved(entry));
    }

    void put(Errand errand) {
        day = day.with(errand);
        changes.put("errand " + errand.id(), new Change.ErrandSaved(errand));
    }

    void put(Reading reading) {
        day = day.with(day.books().with(day.books().register().logbook().plus(reading)));
        changes.put("reading " + reading.id(), new Change.ReadingSaved(reading));
    }

    void put(Rung rung) {
        day = day.with(day.books().with(day.books().register().logbook().plus(rung)));
        changes.put("rung " + rung.id(), new Change.RungSaved(rung));
    }

    void put(HoursRules rules) {
        day = day.with(day.books().with(rules));
        changes.put("hours rules", new Change.HoursRulesSaved(rules));
    }

    void put(Catalogue catalogue) {
        day = day.with(day.books().with(catalogue));
        changes.put("catalogue", new Change.CatalogueSaved(catalogue));
    }

    void putPacked(int percent) {
        Books books = day.books();
        day = day.with(books.with(books.foresight().withPacked(percent)));
        changes.put("packed percent", new Change.PackedPercentSaved(percent));
    }

    void put(Opening opening) {
        day = day.with(opening);
        changes.put("opening", new Change.OpeningSaved(opening));
    }

    void put(Posted posted) {
        day = day.with(posted);
        changes.put("plan", new Change.PlanPosted(posted));
    }

    void put(Stock stock) {
        day = day.with(day.books().with(day.books().shelf().with(stock)));
        changes.put("stock " + stock.itemId(), new Change.StockSaved(stock));
    }

    void put(Order order) {
        day = day.with(day.books().with(day.books().shelf().with(order)));
        changes.put("order " + order.id(), new Change.OrderSaved(order));
    }

    /** What moved is only kept in the records: the shelf itself says what is there. */
    void put(Movement movement) {
        changes.put("movement " + movement.id(), new Change.MovementSaved(movement));
    }

    /** What comes of an act on a visit; a refusal where there is no such visit today. */
    Outcome onVisit(String id, Function<Visit, Outcome> act) {
        return day.findVisit(id).map(act).orElseGet(() -> new Outcome.Refused(Refusal.of("visit_unknown", id)));
    }

    /** A new id that no other thing has: the letter and the shop's next number. */
    String newId(String letter) {
        long number = day.nextNumber();
        day = day.withNextNumber(number + 1);
        changes.put("number", new Change.NumberUsed(number + 1));
        return letter + number;
    }

    Outcome done() {
        return done(Optional.empty());
    }

    Outcome doneWith(Visit visit) {
        return done(Optional.of(visit.id()));
    }

    Outcome done(Optional<String> subject) {
        List<Change> all = new ArrayList<>(changes.values());
        return new Outcome.Done(day, all, subject, Trace.of(before, day, all));
    }
}
