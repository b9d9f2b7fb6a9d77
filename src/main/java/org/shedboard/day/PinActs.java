package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.shop.Person;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/**
 * What the foreman insists on. Only what is unsafe or cannot be is refused: a skill is lent, a break is worked through, a promise
 * is missed if they say so.
 */
final class PinActs {
    /** Skills that are lent to nobody: what is done with them wrongly is not seen before the machine is ridden. */
    private static final Set<Skill> NEVER_LENT = EnumSet.of(Skill.BRAKES, Skill.SIGN_OFF);

    private final Draft draft;
    private final Instant now;

    PinActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome pin(Act.PinTask act) {
        return draft.onVisit(act.visitId(), visit -> pin(act, visit));
    }

    private Outcome pin(Act.PinTask act, Visit visit) {
        Optional<Refusal> no = taskRefusal(visit, act.taskId()).or(() -> pinRefusal(act, visit));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Task task = visit.findTask(act.taskId()).orElseThrow();
        Day before = draft.day();
        Visit pinned = alone(visit, act).withTask(task.id(), each -> each.pinned(Optional.of(act.pin())));
        draft.put(pinned);
        Optional<Plan> plan = new PinnedPlan(before, draft.day(), now, pinned.id(), task.id()).find();
        if (plan.isEmpty()) {
            return new Outcome.Refused(Refusal.of("hand_cannot_hold", task.name(), Names.of(draft.day(), visit)));
        }
        draft.put(new Posted(plan.get(), draft.day().origin()));
        return draft.doneWith(pinned);
    }

    /** A stay is in one place: what was insisted on for it before by another of its tasks counts no more. */
    private static Visit alone(Visit visit, Act.PinTask act) {
        if (act.pin().placeId().isEmpty()) {
            return visit;
        }
        Visit next = visit;
        for (Task other : visit.stayOf(act.taskId()).orElseThrow().tasks()) {
            next = next.withTask(other.id(), each -> each.pinned(each.pin().flatMap(TaskPin::withoutPlace)));
        }
        return next;
    }

    Outcome lift(Act.LiftPin act) {
        return draft.onVisit(act.visitId(), visit -> lift(act, visit));
    }

    private Outcome lift(Act.LiftPin act, Visit visit) {
        Optional<Task> task = visit.findTask(act.taskId());
        if (task.isEmpty()) {
            return new Outcome.Refused(Refusal.of("task_unknown", act.taskId(), Names.of(draft.day(), visit)));
        }
        if (task.get().pin().isEmpty() || task.get().hasBegun()) {
            return new Outcome.Refused(Refusal.of("hand_not_there", task.get().name(), Names.of(draft.day(), visit)));
        }
        Visit lifted = visit.withTask(act.taskId(), each -> each.pinned(Optional.empty()));
        draft.put(lifted);
        return draft.doneWith(lifted);
    }

    /** A pin is for its day; one to a time on a later day is kept for that. */
    void endOf(LocalDate date) {
        Day day = draft.day();
        Instant over = date.plusDays(1).atStartOfDay(day.zone()).toInstant();
        for (Visit visit : day.visits()) {
            Visit next = visit;
            for (Task task : visit.tasks()) {
                boolean isLater = task.pin()
                        .flatMap(TaskPin::at)
                        .filter(at -> !at.isBefore(over))
                        .isPresent();
                if (task.pin().isPresent() && !isLater && !task.hasBegun()) {
                    next = next.withTask(task.id(), each -> each.pinned(Optional.empty()));
                }
            }
            if (!next.equals(visit)) {
                draft.put(next);
            }
        }
    }

    private Optional<Refusal> taskRefusal(Visit visit, String taskId) {
        Day day = draft.day();
        String name = Names.of(day, visit);
        if (!day.isOpened()) {
            return Optional.of(Refusal.of("day_not_open"));
        }
        if (day.isClosed()) {
            return Optional.of(Refusal.of("day_already_closed", day.date()));
        }
        if (!visit.state().isOpen()) {
            return Optional.of(Refusal.of("is_done", name));
        }
        Optional<Task> task = visit.findTask(taskId);
        if (task.isEmpty()) {
            return Optional.of(Refusal.of("task_unknown", taskId, name));
        }
        return task.get().hasBegun()
                ? Optional.of(Refusal.of("hand_has_begun", task.get().name(), name))
                : Optional.empty();
    }

    private Optional<Refusal> pinRefusal(Act.PinTask act, Visit visit) {
        Task task = visit.findTask(act.taskId()).orElseThrow();
        Stay stay = visit.stayOf(act.taskId()).orElseThrow();
        return act.pin()
                .placeId()
                .flatMap(place -> placeRefusal(visit, stay, place))
                .or(() -> act.pin().personId().flatMap(person -> personRefusal(act, visit, task, person)))
                .or(() -> act.pin().at().flatMap(at -> timeRefusal(act, visit, task, at)));
    }

    private Optional<Refusal> placeRefusal(Visit visit, Stay stay, String place) {
        if (stay.placeId().isPresent()) {
            return stay.placeId().get().equals(place)
                    ? Optional.empty()
                    : Optional.of(Refusal.of(
                            "stands_elsewhere",
                            Names.of(draft.day(), visit),
                            stay.placeId().get()));
        }
        return new Places(draft.day(), visit, stay).unfit(place);
    }

    private Optional<Refusal> personRefusal(Act.PinTask act, Visit visit, Task task, String personId) {
        Day day = draft.day();
        Optional<Person> found = day.shop().findPerson(personId);
        if (found.isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", personId));
        }
        Person person = found.get();
        if (!person.may(task.skill()) && NEVER_LENT.contains(task.skill())) {
            return Optional.of(Refusal.of("skill_not_lent", person.name(), task.name(), Problems.skill(task.skill())));
        }
        if (OwnWork.isBarred(day, visit, task, person)) {
            return Optional.of(Refusal.of("own_work", person.name(), task.name()));
        }
        boolean isToday = act.pin().at().filter(at -> isToday(at)).isPresent();
        return isToday && !day.isHere(person)
                ? Optional.of(Refusal.of("person_not_here", person.name()))
                : Optional.empty();
    }

    private boolean isToday(Instant at) {
        Day day = draft.day();
        return LocalDate.ofInstant(at, day.zone()).equals(day.date());
    }

    private Optional<Refusal> timeRefusal(Act.PinTask act, Visit visit, Task task, Instant at) {
        Day day = draft.day();
        String said = Clocks.sayTime(day, at);
        if (day.minuteOf(at) < day.minuteOf(now)) {
            return Optional.of(Refusal.of("hand_is_past", said));
        }
        if (at.isBefore(visit.intake().arrives())) {
            return Optional.of(Refusal.of(
                    "hand_before_it_comes",
                    said,
                    Names.of(day, visit),
                    Clocks.sayTime(day, visit.intake().arrives())));
        }
        boolean isManned = act.pin().personId().isPresent()
                || task.handsOn() == 0
                || Problems.of(day, now).people().stream().anyMatch(person -> isIn(person, task, day.minuteOf(at)));
        return isManned ? Optional.empty() : Optional.of(Refusal.of("hand_needs_person", said, task.name()));
    }

    private static boolean isIn(Problem.Person person, Task task, int minute) {
        return person.skills().contains(Problems.skill(task.skill()))
                && (contains(person.shifts(), minute) || contains(person.overtime(), minute));
    }

    private static boolean contains(Iterable<Span> spans, int minute) {
        for (Span span : spans) {
            if (span.contains(minute)) {
                return true;
            }
        }
        return false;
    }
}
