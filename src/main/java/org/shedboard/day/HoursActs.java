package org.shedboard.day;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Errand;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;

/** What people clock besides their tasks: breaks, a hand lent, other work that was planned. */
final class HoursActs {
    private final Draft draft;
    private final Instant now;
    private final FloorActs floor;

    HoursActs(Draft draft, Instant now, FloorActs floor) {
        this.draft = draft;
        this.now = now;
        this.floor = floor;
    }

    Outcome takeBreak(Act.TakeBreak act) {
        return here(act.personId()).orElseGet(() -> {
            floor.leaveWork(act.personId());
            floor.clockOn(act.personId(), new Activity.Break(act.kind()));
            return draft.done();
        });
    }

    /** A refusal where the day does not run or the person is not here. */
    private Optional<Outcome> here(String personId) {
        return floor.dayRefusal().or(() -> floor.personRefusal(personId)).map(Outcome.Refused::new);
    }

    Outcome lend(Act.Lend act) {
        return here(act.personId())
                .orElseGet(() -> draft.onVisit(act.visitId(), visit -> lendTo(visit, act.personId())));
    }

    private Outcome lendTo(Visit visit, String personId) {
        Day day = draft.day();
        if (!visit.state().isHere() || visit.currentStay() == visit.stays().size()) {
            String why = visit.state().isHere() ? "is_done" : "not_here_yet";
            return new Outcome.Refused(Refusal.of(why, Names.of(day, visit)));
        }
        Stay stay = visit.newestStay();
        OnStay to = new OnStay(visit.id(), stay.step());
        Optional<OnStay> from = calledFrom(personId);
        if (from.filter(on -> on.visitId().equals(visit.id())).isPresent()) {
            return new Outcome.Refused(Refusal.of("lent_to_own", day.nameOf(personId), Names.of(day, visit)));
        }
        floor.leaveWork(personId);
        floor.clockOn(
                personId, from.<Activity>map(on -> new Activity.Lent(to, on)).orElse(to));
        return draft.doneWith(visit);
    }

    /** The stay a person is on, or was called away from. */
    private Optional<OnStay> calledFrom(String personId) {
        return draft.day().openEntryOf(personId).flatMap(entry -> {
            if (entry.activity() instanceof Activity.Lent lent) {
                return Optional.of(lent.from());
            }
            return entry.activity() instanceof OnStay on ? Optional.of(on) : Optional.empty();
        });
    }

    /** Back on the task, where it still waits and may go on; else only off the other machine. */
    Outcome bringBack(Act.BringBack act) {
        return here(act.personId()).orElseGet(() -> {
            Optional<Activity> on = draft.day().openEntryOf(act.personId()).map(entry -> entry.activity());
            if (!(on.orElse(null) instanceof Activity.Lent lent)) {
                return new Outcome.Refused(Refusal.of("not_lent", draft.day().nameOf(act.personId())));
            }
            floor.leaveWork(act.personId());
            return lent.from()
                    .taskId()
                    .map(task -> new Act.Start(act.personId(), lent.from().visitId(), task, Optional.empty()))
                    .filter(start -> floor.startRefusal(start).isEmpty())
                    .map(floor::start)
                    .orElseGet(draft::done);
        });
    }

    Outcome planErrand(Act.PlanErrand act) {
        Day day = draft.day();
        if (day.shop().findPerson(act.personId()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("person_unknown", act.personId()));
        }
        if (act.minutes() < 1) {
            return new Outcome.Refused(Refusal.of("minutes_below_one", act.minutes()));
        }
        if (!act.from().plusSeconds(60L * act.minutes()).isAfter(now)) {
            return new Outcome.Refused(Refusal.of("errand_is_over", Clocks.sayTime(day, act.from())));
        }
        draft.put(new Errand(
                draft.newId("E"),
                act.personId(),
                act.kind(),
                act.from(),
                act.minutes(),
                act.note(),
                Errand.State.PLANNED));
        return draft.done();
    }

    Outcome runErrand(Act.RunErrand act) {
        return onErrand(
                act.errandId(),
                errand -> here(errand.personId()).orElseGet(() -> {
                    floor.leaveWork(errand.personId());
                    draft.put(errand.begunAt(now));
                    floor.clockOn(errand.personId(), new Activity.OtherWork(errand.kind()));
                    return draft.done();
                }));
    }

    Outcome dropErrand(Act.DropErrand act) {
        return onErrand(act.errandId(), errand -> {
            draft.put(errand.with(Errand.State.DROPPED));
            return draft.done();
        });
    }

    private Outcome onErrand(String id, Function<Errand, Outcome> act) {
        return draft.day().errands().stream()
                .filter(errand -> errand.id().equals(id) && errand.state() == Errand.State.PLANNED)
                .findFirst()
                .map(act)
                .orElseGet(() -> new Outcome.Refused(Refusal.of("errand_unknown", id)));
    }
}
