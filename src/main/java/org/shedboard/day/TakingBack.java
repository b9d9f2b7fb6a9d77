package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Correction;
import org.shedboard.hours.Errand;
import org.shedboard.register.NoticeTaken;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/**
 * Takes acts back. An act can be taken back while everything it changed is still as it left it: whatever anybody did to the same
 * things since comes first. Then all of it is put back as it was before, except that nothing is wiped out: clock entries get
 * corrections, what was taken off the shelf is put back by a movement of its own, a machine that was taken in is a visit that was
 * called off. What has become of the shed meanwhile may refuse it: another machine may stand in the place, another one have the tag.
 */
final class TakingBack {
    private final Draft draft;
    private final Instant now;
    private final FloorActs floor;

    TakingBack(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
        this.floor = new FloorActs(draft, now);
    }

    Outcome takeBack(Act.TakeBack act) {
        Day day = draft.day();
        Optional<Refusal> no = refusal(act);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        putBack(act);
        return clash(day, act.trace())
                .<Outcome>map(Outcome.Refused::new)
                .orElseGet(() -> draft.done(act.trace().visitIds().stream().findFirst()));
    }

    private Optional<Refusal> refusal(Act.TakeBack act) {
        Day day = draft.day();
        if (day.isClosed()) {
            return Optional.of(Refusal.of("day_already_closed", day.date()));
        }
        if (day.shop().findPerson(act.by()).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", act.by()));
        }
        return changedSince(act.trace());
    }

    /** The first thing that is no longer as the act left it. */
    private Optional<Refusal> changedSince(Trace trace) {
        Day day = draft.day();
        for (Trace.Was<Visit> was : trace.visits()) {
            if (!day.findVisit(was.after().id()).equals(Optional.of(was.after()))) {
                return Optional.of(Refusal.of("changed_since", Names.of(day.books(), was.after())));
            }
        }
        for (Trace.Hours hours : trace.hours()) {
            if (!Trace.Stretch.of(day, hours.personId()).equals(hours.after())) {
                return Optional.of(Refusal.of("hours_changed_since", day.nameOf(hours.personId())));
            }
        }
        return errandChanged(trace).or(() -> planChanged(trace));
    }

    /** An errand that is over is none of the day's any more. */
    private Optional<Refusal> errandChanged(Trace trace) {
        return trace.errands().stream()
                .map(Trace.Was::after)
                .filter(after -> !Trace.find(draft.day(), after)
                        .filter(Errand::isOpen)
                        .equals(Optional.of(after).filter(Errand::isOpen)))
                .findFirst()
                .map(errand -> Refusal.of("errand_changed_since", draft.day().nameOf(errand.personId())));
    }

    /** A plan that only moved along with other acts is another plan. */
    private Optional<Refusal> planChanged(Trace trace) {
        return trace.isOfPlanAlone() && !trace.plans().isStill(draft.day().posted())
                ? Optional.of(Refusal.of("plan_changed_since"))
                : Optional.empty();
    }

    private void putBack(Act.TakeBack act) {
        Trace trace = act.trace();
        trace.visits().forEach(this::putBackVisit);
        trace.errands()
                .forEach(was ->
                        draft.put(was.before().orElseGet(() -> was.after().with(Errand.State.DROPPED))));
        trace.notices()
                .forEach(was ->
                        draft.put(was.before().orElseGet(() -> was.after().with(NoticeTaken.State.DROPPED))));
        trace.hours().forEach(hours -> putRight(hours, act));
        trace.moved().forEach(moved -> floor.shelf().moveBack(moved, act.by()));
    }

    private void putBackVisit(Trace.Was<Visit> was) {
        Visit visit = was.before().orElseGet(() -> calledOff(was.after()));
        draft.put(visit);
        if (was.after().finished().isPresent() && visit.finished().isEmpty()) {
            draft.unfinish(visit.id());
        }
    }

    /** What was taken in by mistake was never here, and its tag is free. */
    private static Visit calledOff(Visit visit) {
        return visit.withState(VisitState.CANCELLED).withTag(OptionalInt.empty());
    }

    /** The rows that must not count are replaced by those that must, one for one, and what is left over is struck out. */
    private void putRight(Trace.Hours hours, Act.TakeBack act) {
        List<ClockEntry> wrong = Trace.Stretch.rows(draft.day(), hours.personId());
        List<Trace.Stretch> missing = new ArrayList<>(hours.before());
        wrong.removeIf(row -> missing.remove(Trace.Stretch.of(row)));
        for (ClockEntry row : wrong) {
            ClockEntry ended = row.isOpen() ? row.endedAt(now) : row;
            draft.put(ended);
            boolean isStruck = missing.isEmpty();
            Trace.Stretch right = isStruck ? Trace.Stretch.of(ended) : missing.remove(0);
            write(hours.personId(), right, new Correction(Optional.of(row.id()), isStruck, act.by(), now, act.why()));
        }
        for (Trace.Stretch right : missing) {
            write(hours.personId(), right, new Correction(Optional.empty(), false, act.by(), now, act.why()));
        }
    }

    private void write(String personId, Trace.Stretch right, Correction correction) {
        draft.put(new ClockEntry(
                draft.newId("C"), personId, right.activity(), right.from(), right.to(), Optional.of(correction)));
    }

    /** Why the shed cannot be again as it was, with everything put back. */
    private Optional<Refusal> clash(Day present, Trace trace) {
        for (Trace.Hours hours : trace.hours()) {
            Optional<Refusal> away = hours.openBefore().flatMap(open -> floor.personRefusal(hours.personId()));
            if (away.isPresent()) {
                return away;
            }
        }
        return trace.visits().stream()
                .map(was -> draft.day().expectVisit(was.after().id()))
                .flatMap(visit -> clash(present, visit).stream())
                .findFirst();
    }

    private Optional<Refusal> clash(Day present, Visit visit) {
        return other(visit, each -> visit.tag().isPresent() && each.tag().equals(visit.tag()))
                .map(each -> Refusal.of("tag_taken", visit.tag().getAsInt(), Names.of(draft.day(), each)))
                .or(() -> machineClash(visit))
                .or(() -> placeClash(present.expectVisit(visit.id()), visit));
    }

    private Optional<Refusal> machineClash(Visit visit) {
        return visit.state().isOpen()
                ? other(visit, each -> each.machineId().equals(visit.machineId()))
                        .map(each -> Refusal.of("machine_here", Names.of(draft.day(), each)))
                : Optional.empty();
    }

    /** A machine that would stand where it does not stand now, or be worked on where nobody is on it now, needs its place sound. */
    private Optional<Refusal> placeClash(Visit now, Visit then) {
        boolean stays = now.standsIn().equals(then.standsIn()) && (!isInHands(then) || isInHands(now));
        if (stays || then.standsIn().isEmpty() || !then.state().isOpen()) {
            return Optional.empty();
        }
        String place = then.standsIn().get();
        Stay stay = then.stays().get(then.currentStay());
        return other(then, each -> each.state().isOpen() && each.standsIn().equals(then.standsIn()))
                .map(each -> Refusal.of("place_taken", place, Names.of(draft.day(), each)))
                .or(() -> new Places(draft.day(), then, stay).refusal(place));
    }

    private static boolean isInHands(Visit visit) {
        return visit.tasks().stream().anyMatch(task -> task.progress().isRunning());
    }

    private Optional<Visit> other(Visit visit, Predicate<Visit> is) {
        return draft.day().visits().stream()
                .filter(each -> !each.id().equals(visit.id()))
                .filter(each -> each.state().isOpen() || each.state().isHere())
                .filter(is)
                .findFirst();
    }

    /** The day with the plan to follow: the one before the act while the plan is still as the act left it. */
    static Day planOf(Day day, Trace trace) {
        if (trace.plans().isStill(day.posted()) && trace.plans().before().isPresent()) {
            return day.with(trace.plans().before().get());
        }
        Day loose = day;
        for (Trace.Was<Visit> was : trace.visits()) {
            boolean goesOn =
                    was.after().state() == VisitState.HELD && loose.posted().isPresent();
            loose = goesOn ? loose.with(loose.posted().get().without(was.after().id())) : loose;
        }
        return loose;
    }
}
