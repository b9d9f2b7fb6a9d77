package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Estimator;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Person;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** What is found out about a machine while it is here: findings, reasons to hold it, more work. */
final class MachineActs {
    private final Draft draft;
    private final Instant now;
    private final FloorActs floor;

    MachineActs(Draft draft, Instant now, FloorActs floor) {
        this.draft = draft;
        this.now = now;
        this.floor = floor;
    }

    RegisterActs register() {
        return new RegisterActs(draft, now);
    }

    Outcome tick(Act.Tick act) {
        return draft.onVisit(act.visitId(), visit -> tick(act, visit));
    }

    private Outcome tick(Act.Tick act, Visit visit) {
        if (draft.day().shop().findPerson(act.personId()).isEmpty()) {
            return new Outcome.Refused(Refusal.of("person_unknown", act.personId()));
        }
        if (!visit.state().isHere()) {
            return new Outcome.Refused(Refusal.of("not_here_yet", Names.of(draft.day(), visit)));
        }
        boolean known = draft.day()
                .books()
                .catalogue()
                .expectClass(draft.day().machineOf(visit).classId())
                .findPoint(act.pointId())
                .isPresent();
        if (!known) {
            return new Outcome.Refused(Refusal.of("point_unknown", act.pointId(), Names.of(draft.day(), visit)));
        }
        Optional<Refusal> stands = fixStands(act, visit);
        if (stands.isPresent()) {
            return new Outcome.Refused(stands.get());
        }
        Visit ticked = visit.plusFinding(
                new Finding(act.pointId(), act.mark(), act.measured(), act.note(), act.personId(), now));
        draft.put(ticked);
        return draft.doneWith(ticked);
    }

    /** A fix that stops riding is not ticked away by a slip of a key: only who may sign off says that it is mended. */
    private Optional<Refusal> fixStands(Act.Tick act, Visit visit) {
        Person person = draft.day().shop().expectPerson(act.personId());
        return Riding.stoppedBy(draft.day(), visit).stream()
                .filter(point -> point.id().equals(act.pointId()) && act.mark() != Mark.FIX)
                .filter(point -> !person.may(Skill.SIGN_OFF))
                .map(point -> Refusal.of("fix_stands", point.name()))
                .findFirst();
    }

    Outcome hold(Act.HoldVisit act) {
        return draft.onVisit(act.visitId(), visit -> hold(act, visit));
    }

    private Outcome hold(Act.HoldVisit act, Visit visit) {
        if (visit.state() != VisitState.IN_YARD && visit.state() != VisitState.IN_HAND) {
            return new Outcome.Refused(Refusal.of("nothing_to_hold", Names.of(draft.day(), visit)));
        }
        if (act.until().filter(until -> !until.isAfter(now)).isPresent()) {
            return new Outcome.Refused(
                    Refusal.of("until_is_over", draft.day().timeOf(act.until().get())));
        }
        for (Task task : visit.tasks()) {
            if (task.progress().isRunning()) {
                floor.leaveWork(task.progress().person().orElseThrow());
            }
        }
        Hold hold = new Hold(act.reason(), act.note(), now, act.until().orElseGet(this::nextMorning));
        Visit held = draft.day().expectVisit(act.visitId()).held(hold);
        draft.put(held);
        return draft.doneWith(held);
    }

    /** The start of the next working day: when a hold is looked at again if nobody said. */
    private Instant nextMorning() {
        Day day = draft.day();
        return Mornings.of(day.shop(), Mornings.dateAfter(day.shop(), day.date(), 1));
    }

    Outcome release(Act.Release act) {
        return draft.onVisit(act.visitId(), visit -> release(act, visit));
    }

    private Outcome release(Act.Release act, Visit visit) {
        if (visit.state() != VisitState.HELD) {
            return new Outcome.Refused(Refusal.of("not_held", Names.of(draft.day(), visit)));
        }
        VisitState next = visit.hasBegun() ? VisitState.IN_HAND : VisitState.IN_YARD;
        Visit released = visit.withState(next);
        draft.put(released);
        return draft.doneWith(released);
    }

    Outcome addWork(Act.AddWork act) {
        return draft.onVisit(act.visitId(), visit -> addWork(act, visit));
    }

    private Outcome addWork(Act.AddWork act, Visit visit) {
        if (!visit.state().isOpen()) {
            return new Outcome.Refused(Refusal.of("is_done", Names.of(draft.day(), visit)));
        }
        String classId = draft.day().machineOf(visit).classId();
        Optional<Refusal> no = DoorActs.wantedRefusal(draft.day(), classId, act.wanted());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        List<Line> added = DoorActs.linesOf(draft, act.wanted());
        List<Stay> stays =
                new Estimator(draft.day().books().catalogue()).withAdded(classId, visit.intake(), visit.stays(), added);
        List<Line> lines = new ArrayList<>(visit.lines());
        lines.addAll(added);
        Visit more = visit.withLines(lines).withStays(stays);
        draft.put(more);
        return draft.doneWith(more);
    }
}
