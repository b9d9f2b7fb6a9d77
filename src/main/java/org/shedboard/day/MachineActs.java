package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Line;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.When;

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
        Optional<Point> point = draft.day()
                .books()
                .catalogue()
                .expectClass(draft.day().machineOf(visit).classId())
                .findPoint(act.pointId());
        if (point.isEmpty()) {
            return new Outcome.Refused(Refusal.of("point_unknown", act.pointId(), Names.of(draft.day(), visit)));
        }
        Optional<Refusal> wrong = Marking.refusal(draft.day(), visit, act, point.get());
        if (wrong.isPresent()) {
            return new Outcome.Refused(wrong.get());
        }
        Visit ticked = visit.plusFinding(Marking.findingOf(act, now));
        draft.put(ticked);
        return draft.doneWith(ticked);
    }

    Outcome hold(Act.HoldVisit act) {
        return draft.onVisit(act.visitId(), visit -> hold(act, visit));
    }

    private Outcome hold(Act.HoldVisit act, Visit visit) {
        if (visit.state() != VisitState.IN_YARD && visit.state() != VisitState.IN_HAND) {
            return new Outcome.Refused(Refusal.of("nothing_to_hold", Names.of(draft.day(), visit)));
        }
        if (act.until().filter(until -> !until.isAfter(now)).isPresent()) {
            return new Outcome.Refused(Refusal.of(
                    "until_is_over",
                    When.CLOCK.say(draft.day().timeOf(act.until().get()))));
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
        Optional<Refusal> no = DoorActs.wantedRefusal(draft.day(), classId, act.wanted())
                .or(() -> DoorActs.noticeRefusal(draft.day(), Optional.of(visit.machineId()), act.wanted()));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Visit more = withAdded(visit, act.wanted());
        draft.put(more);
        List<Line> added =
                more.lines().subList(visit.lines().size(), more.lines().size());
        DoorActs.takeNotices(draft, more, added, act.wanted());
        return draft.doneWith(more);
    }

    private Visit withAdded(Visit visit, List<Act.Wanted> wanted) {
        String classId = draft.day().machineOf(visit).classId();
        List<Line> added = DoorActs.linesOf(draft, wanted);
        List<Stay> stays =
                new Estimator(draft.day().books().catalogue()).withAdded(classId, visit.intake(), visit.stays(), added);
        List<Line> lines = new ArrayList<>(visit.lines());
        lines.addAll(added);
        return visit.withLines(lines).withStays(stays);
    }

    Outcome ownerSaid(Act.OwnerSaid act) {
        return draft.onVisit(act.visitId(), visit -> ownerSaid(act, visit));
    }

    private Outcome ownerSaid(Act.OwnerSaid act, Visit visit) {
        Optional<Refusal> no = askingRefusal(act).or(() -> FixOffer.refusal(draft.day(), visit, act.pointId()));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        boolean yes = act.answer() == OwnersWord.Answer.YES;
        if (yes && !visit.state().isOpen()) {
            return new Outcome.Refused(Refusal.of("is_done", Names.of(draft.day(), visit)));
        }
        Work work = FixOffer.workFor(draft.day(), visit, act.pointId()).orElseThrow();
        Finding finding = visit.findingAt(act.pointId()).orElseThrow();
        OwnersWord word = new OwnersWord(act.answer(), work.id(), act.by(), act.of(), now);
        Visit asked = visit.plusFinding(finding.with(word));
        Visit next = yes ? withAdded(asked, List.of(new Act.Wanted(work.id(), Payer.OWNER))) : asked;
        draft.put(next);
        return draft.doneWith(next);
    }

    private Optional<Refusal> askingRefusal(Act.OwnerSaid act) {
        if (draft.day().shop().findPerson(act.by()).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", act.by()));
        }
        return act.of().isBlank() ? Optional.of(Refusal.of("who_was_asked")) : Optional.empty();
    }
}
