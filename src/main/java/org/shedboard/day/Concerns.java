package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.shedboard.estimate.Point;
import org.shedboard.register.Loan;
import org.shedboard.shop.HoistCheck;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** Goes over the day for what needs the foreman now. */
public final class Concerns {
    /** Chances, in a hundred, below which a promise is in danger, and at risk. */
    static final int IN_DANGER = 50;

    private static final int AT_RISK = 80;

    private final Outlook outlook;
    private final Day day;
    private final List<Concern> found = new ArrayList<>();

    private Concerns(Outlook outlook) {
        this.outlook = outlook;
        this.day = outlook.day();
    }

    /** What needs the foreman, the most urgent first. */
    public static List<Concern> of(Outlook outlook) {
        Concerns concerns = new Concerns(outlook);
        outlook.day().visits().forEach(concerns::lookAt);
        concerns.lookAtParts();
        concerns.lookAtHoists();
        concerns.lookAtLoans();
        concerns.lookBack();
        concerns.lookAtKnockOff();
        return concerns.found.stream()
                .sorted(Comparator.comparing(Concern::kind))
                .toList();
    }

    private void lookAt(Visit visit) {
        if (visit.state().isHere() && Riding.isStopped(day, visit)) {
            String points =
                    Riding.stoppedBy(day, visit).stream().map(Point::name).collect(Collectors.joining(", "));
            add(Concern.Kind.NOT_TO_BE_RIDDEN, visit, points);
        }
        if (visit.state().isOpen()) {
            lookAtPromise(visit);
            lookAtFixes(visit);
        }
        visit.hold().ifPresent(hold -> lookAtHold(visit, hold));
        if (visit.state() == VisitState.BOOKED && visit.intake().arrives().isBefore(outlook.at())) {
            add(Concern.Kind.BOOKING_LATE, visit, clock(visit.intake().arrives()));
        }
        if (visit.state().isHere() && WashDowns.isAwaited(visit)) {
            add(Concern.Kind.WASH_DOWN_AWAITED, visit);
        }
        if (visit.state() == VisitState.DONE) {
            add(Concern.Kind.OWNER_TO_RING, visit, day.ownerOf(visit).phone());
        }
        visit.tasks().stream().filter(task -> task.progress().isRunning()).forEach(task -> lookAtOverrun(visit, task));
    }

    private void lookAtFixes(Visit visit) {
        String points = FixOffer.toAsk(day, visit).stream().map(Point::name).collect(Collectors.joining(", "));
        if (visit.state().isHere() && !points.isEmpty()) {
            add(Concern.Kind.FIX_TO_ASK, visit, points);
        }
    }

    private void lookAtPromise(Visit visit) {
        Optional<Instant> ready = outlook.readyAt(visit.id());
        if (Problems.isBeyond(day, visit, outlook.problem().horizon())) {
            return;
        }
        if (ready.isEmpty() && visit.state() != VisitState.HELD && day.isOpened()) {
            add(Concern.Kind.NOT_IN_PLAN, visit, outlook.whyNotIn(visit.id()).orElse(""));
            return;
        }
        if (visit.promise().isEmpty()) {
            if (visit.state() == VisitState.IN_YARD || visit.state() == VisitState.IN_HAND) {
                add(Concern.Kind.NO_PROMISE, visit, ready.map(this::clock).orElse(""));
            }
            return;
        }
        Promise promise = visit.promise().get();
        if (promise.at().isBefore(outlook.at())) {
            add(
                    Concern.Kind.PROMISE_MISSED,
                    visit,
                    clock(promise.at()),
                    ready.map(this::clock).orElse(""));
            return;
        }
        OptionalInt chance = outlook.chanceOfPromise(visit);
        if (chance.isPresent() && chance.getAsInt() < AT_RISK) {
            Concern.Kind kind =
                    chance.getAsInt() < IN_DANGER ? Concern.Kind.PROMISE_IN_DANGER : Concern.Kind.PROMISE_AT_RISK;
            add(
                    kind,
                    visit,
                    clock(promise.at()),
                    chance.getAsInt(),
                    ready.map(this::clock).orElse(""));
        }
    }

    private void lookAtHold(Visit visit, Hold hold) {
        Concern.Kind kind = switch (hold.reason()) {
            case PARTS -> Concern.Kind.HELD_FOR_PARTS;
            case OWNERS_WORD -> Concern.Kind.OWNER_TO_ASK;
            case ANOTHER_LOOK -> Concern.Kind.HELD_FOR_LOOK;
        };
        add(kind, visit, hold.note(), clock(hold.until()));
    }

    private void lookAtOverrun(Visit visit, Task task) {
        Person person = day.shop().expectPerson(task.progress().person().orElseThrow());
        int over = outlook.minutesOver(task);
        if (over > 0) {
            add(Concern.Kind.RUNS_OVER, visit, task.name(), person.name(), over);
        }
    }

    /** Who is clocked on after they meant to leave works longer, or forgot: that is asked, not guessed. */
    private void lookAtKnockOff() {
        day.opening().stream()
                .flatMap(opening -> opening.here().stream())
                .forEach(presence -> day.openEntryOf(presence.personId())
                        .filter(entry -> presence.until().isBefore(outlook.at()))
                        .filter(entry -> !entry.from().isAfter(presence.until()))
                        .ifPresent(entry -> found.add(new Concern(
                                Concern.Kind.ON_AFTER_KNOCK_OFF,
                                Optional.empty(),
                                List.of(day.nameOf(entry.personId()), clock(presence.until()))))));
    }

    /** What was left open on an earlier day comes before everything of today. */
    private void lookBack() {
        day.unsettled()
                .forEach(entry -> found.add(new Concern(
                        Concern.Kind.UNSETTLED,
                        Optional.empty(),
                        List.of(day.nameOf(entry.personId()), clock(entry.from())))));
        day.unclosed()
                .ifPresent(date -> found.add(
                        new Concern(Concern.Kind.DAY_NOT_CLOSED, Optional.empty(), List.of(date.toString()))));
    }

    /** What is lent is asked for when the owner's own machine is done, and from then on until it is back. */
    private void lookAtLoans() {
        for (Loan loan : day.books().register().loansOut()) {
            Optional<Visit> visit = day.findVisit(loan.visitId());
            if (visit.filter(each -> each.state().isOpen()).isEmpty()) {
                found.add(new Concern(
                        Concern.Kind.LOAN_OUT,
                        Optional.empty(),
                        List.of(
                                loan.label(),
                                day.books().expectOwner(loan.ownerId()).name(),
                                clock(loan.out()))));
            }
        }
    }

    private void lookAtHoists() {
        if (!day.isOpened() || day.isClosed()) {
            return;
        }
        for (Place hoist : day.shop().hoists()) {
            lookAt(hoist);
        }
    }

    /** A hoist that somebody locked out was looked at: it is not asked to be checked. */
    private void lookAt(Place hoist) {
        Optional<HoistCheck> check = day.opening().orElseThrow().checkOf(hoist.id());
        if (check.isEmpty()) {
            found.add(new Concern(Concern.Kind.HOIST_UNCHECKED, Optional.empty(), List.of(hoist.name())));
        }
        check.flatMap(HoistCheck::lockedOut)
                .ifPresent(why -> found.add(
                        new Concern(Concern.Kind.HOIST_LOCKED_OUT, Optional.empty(), List.of(hoist.name(), why))));
    }

    /** What is short and not on order, of machines that are here or expected before tomorrow is over. */
    private void lookAtParts() {
        LocalDate tomorrow = Mornings.dateAfter(day.shop(), day.date(), 1);
        Instant over = tomorrow.plusDays(1).atStartOfDay(day.zone()).toInstant();
        SetAside.of(day, outlook.at()).covers().stream()
                .filter(cover -> cover.state() == Cover.State.NOT_ORDERED)
                .filter(cover -> cover.need().visit().intake().arrives().isBefore(over))
                .forEach(cover -> add(
                        Concern.Kind.PART_SHORT,
                        cover.need().visit(),
                        day.books().catalogue().nameOfItem(cover.itemId()),
                        clock(cover.from().orElseThrow())));
    }

    private String clock(Instant at) {
        return Clocks.sayTime(day, at);
    }

    private void add(Concern.Kind kind, Visit visit, Object... values) {
        List<String> all = new ArrayList<>(List.of(Names.of(day, visit)));
        for (Object value : values) {
            all.add(String.valueOf(value));
        }
        found.add(new Concern(kind, Optional.of(visit.id()), all));
    }
}
