package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.forecast.Foresight;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Movement;
import org.shedboard.register.Register;
import org.shedboard.register.Shelf;
import org.shedboard.register.Stock;
import org.shedboard.shop.Visit;

/**
 * What a shop starts with, carried out: its past visits are told as visits that are over, and its morning is replayed act by
 * act, the way it would have happened at a terminal.
 *
 * @param day the day as it is when all acts of the morning are done; without a morning, the date that was asked for
 * @param changes everything to save besides the shop and the catalogue
 */
public record Beginning(Day day, List<Change> changes) {
    public Beginning {
        changes = List.copyOf(changes);
    }

    /** The beginning of a shop on this date; the date of its morning where it has one. */
    public static Beginning of(Catalogue catalogue, Setup setup, LocalDate date) {
        return new Replay(catalogue, setup, date).run(setup);
    }

    private static final class Replay {
        private final Map<String, String> visitIds = new HashMap<>();
        private final List<Change> changes = new ArrayList<>();
        private Day day;

        Replay(Catalogue catalogue, Setup setup, LocalDate date) {
            Books books = new Books(
                    setup.shop(),
                    catalogue,
                    setup.owners(),
                    setup.machines(),
                    HoursRules.USUAL,
                    setup.pins().keySet(),
                    Register.EMPTY.withNotices(setup.notices()),
                    new Shelf(setup.stock(), List.of()),
                    Foresight.none(catalogue, setup.shop().people()).withPacked(Foresight.USUAL_PERCENT));
            day = Day.blank(books, date);
            changes.add(new Change.NoticesSaved(setup.notices()));
            setup.owners().forEach(owner -> changes.add(new Change.OwnerSaved(owner)));
            setup.machines().forEach(machine -> changes.add(new Change.MachineSaved(machine)));
            setup.stock().forEach(this::counted);
        }

        /** The shelf of a new shop is as its first person counted it. */
        private void counted(Stock stock) {
            changes.add(new Change.StockSaved(stock));
            changes.add(new Change.MovementSaved(new Movement(
                    "S-" + stock.itemId(),
                    stock.itemId(),
                    Movement.Kind.COUNTED,
                    stock.amount(),
                    day.origin(),
                    day.inCharge(),
                    Optional.empty())));
        }

        Beginning run(Setup setup) {
            Outcome.Done told = Past.of(day, setup.past());
            changes.addAll(told.changes());
            learn(setup.morning().map(Morning::date).orElse(day.date()));
            // what was long ago stays in the records; the day only goes on counting from it, and knows the register
            day = day.withNextNumber(told.day().nextNumber());
            day = day.with(day.books().with(told.day().books().register()));
            setup.morning().ifPresent(this::morning);
            return new Beginning(day, changes);
        }

        /** From all that was finished before today. */
        private void learn(LocalDate today) {
            Map<String, Visit> visits = new LinkedHashMap<>();
            List<ClockEntry> entries = new ArrayList<>();
            for (Change change : changes) {
                if (change instanceof Change.VisitSaved saved) {
                    visits.put(saved.visit().id(), saved.visit());
                } else if (change instanceof Change.EntrySaved saved) {
                    entries.add(saved.entry());
                }
            }
            day = day.with(day.books()
                    .learningFrom(
                            List.copyOf(visits.values()),
                            entries,
                            today.atStartOfDay(day.zone()).toInstant()));
        }

        private void morning(Morning morning) {
            for (TimedAct timed : morning.acts()) {
                turnTo(LocalDate.ofInstant(timed.at(), day.zone()));
                carryOut(timed);
            }
            turnTo(morning.date());
            Instant opens =
                    morning.date().atTime(morning.opensAt()).atZone(day.zone()).toInstant();
            if (day.isOpened()) {
                Posted plan = Planning.firstPlan(day, opens);
                day = day.with(plan);
                changes.add(new Change.PlanPosted(plan));
            }
        }

        private void turnTo(LocalDate date) {
            if (!date.equals(day.date())) {
                day = day.on(date);
            }
        }

        private void carryOut(TimedAct timed) {
            Outcome outcome = Acts.apply(day, Handle.resolved(timed.act(), visitIds), timed.at());
            if (outcome instanceof Outcome.Refused refused) {
                throw new IllegalArgumentException(
                        "at %s %s cannot be carried out: %s".formatted(timed.at(), timed.act(), refused.refusal()));
            }
            Outcome.Done done = (Outcome.Done) outcome;
            day = done.day();
            changes.addAll(done.changes());
            timed.handle()
                    .ifPresent(handle -> visitIds.put(handle, done.subject().orElseThrow()));
        }
    }
}
