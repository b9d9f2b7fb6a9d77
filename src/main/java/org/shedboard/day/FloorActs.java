package org.shedboard.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.estimate.Point;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.shop.Attendance;
import org.shedboard.shop.Person;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** What people do in the shed: start, pause, finish, hand over, and everything the clock must know of it. */
final class FloorActs {
    private final Draft draft;
    private final Instant now;

    FloorActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    MachineActs machine() {
        return new MachineActs(draft, now, this);
    }

    HoursActs hours() {
        return new HoursActs(draft, now, this);
    }

    ShelfActs shelf() {
        return new ShelfActs(draft, now);
    }

    BookActs books() {
        return new BookActs(draft, now);
    }

    Outcome start(Act.Start act) {
        Optional<Refusal> no = startRefusal(act);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Visit before = draft.day().expectVisit(act.visitId());
        Stay stay = before.stayOf(act.taskId()).orElseThrow();
        Optional<String> place = act.placeId().or(() -> new Places(draft.day(), before, stay).choose());
        if (stay.needsPlace()) {
            Optional<Refusal> noPlace = placeRefusal(before, stay, place);
            if (noPlace.isPresent()) {
                return new Outcome.Refused(noPlace.get());
            }
            draft.put(placed(before, stay, place.get()));
        }
        return begin(act.visitId(), act.taskId(), act.personId());
    }

    /** A person goes on a task that they may go on. */
    Outcome begin(String visitId, String taskId, String personId) {
        leaveWork(personId);
        Day day = draft.day();
        Person person = day.shop().expectPerson(personId);
        Visit visit = day.expectVisit(visitId);
        Task task = visit.findTask(taskId).orElseThrow();
        int left = task.hasBegun()
                ? Spell.minutesLeft(day, task, now)
                : day.forecastOf(visit).minutes(task, person);
        Visit started = visit.withState(VisitState.IN_HAND)
                .withTask(taskId, each -> each.with(each.progress().started(personId, now, left)));
        draft.put(started);
        clockOn(
                personId,
                new Activity.OnStay(
                        visitId, started.stayOf(taskId).orElseThrow().step(), Optional.of(taskId)));
        return draft.doneWith(started);
    }

    private static Visit placed(Visit visit, Stay stay, String place) {
        return visit.withStays(visit.stays().stream()
                .map(each -> each.equals(stay) ? each.at(place) : each)
                .toList());
    }

    private Optional<Refusal> placeRefusal(Visit visit, Stay stay, Optional<String> place) {
        Places places = new Places(draft.day(), visit, stay);
        if (place.isEmpty()) {
            return Optional.of(Refusal.of("no_place_free", Names.of(draft.day(), visit)));
        }
        if (stay.hasBegun() && !stay.placeId().equals(place)) {
            return Optional.of(Refusal.of(
                    "stands_elsewhere",
                    Names.of(draft.day(), visit),
                    stay.placeId().orElse("")));
        }
        return places.refusal(place.get());
    }

    Optional<Refusal> startRefusal(Act.Start act) {
        Day day = draft.day();
        return dayRefusal()
                .or(() -> personRefusal(act.personId()))
                .or(() -> taskRefusal(act.visitId(), act.taskId()))
                .or(() -> skillRefusal(
                        act.personId(),
                        day.expectVisit(act.visitId()),
                        day.expectVisit(act.visitId()).findTask(act.taskId()).orElseThrow()))
                .or(() -> orderRefusal(day.expectVisit(act.visitId()), act.taskId()));
    }

    Optional<Refusal> dayRefusal() {
        if (!draft.day().isOpened()) {
            return Optional.of(Refusal.of("day_not_open"));
        }
        return draft.day().isClosed()
                ? Optional.of(Refusal.of("day_already_closed", draft.day().date()))
                : Optional.empty();
    }

    Optional<Refusal> personRefusal(String personId) {
        Optional<Person> person = draft.day().shop().findPerson(personId);
        if (person.isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", personId));
        }
        return draft.day().isHere(person.get())
                ? Optional.empty()
                : Optional.of(Refusal.of("person_not_here", person.get().name()));
    }

    private Optional<Refusal> taskRefusal(String visitId, String taskId) {
        Day day = draft.day();
        Optional<Visit> visit = day.findVisit(visitId);
        if (visit.isEmpty()) {
            return Optional.of(Refusal.of("visit_unknown", visitId));
        }
        String name = Names.of(day, visit.get());
        if (visit.get().state() == VisitState.BOOKED) {
            return Optional.of(Refusal.of("not_here_yet", name));
        }
        if (visit.get().state() == VisitState.HELD) {
            return Optional.of(Refusal.of("is_held", name));
        }
        if (!visit.get().state().isOpen()) {
            return Optional.of(Refusal.of("is_done", name));
        }
        Optional<Task> task = visit.get().findTask(taskId);
        if (task.isEmpty()) {
            return Optional.of(Refusal.of("task_unknown", taskId, name));
        }
        return statusRefusal(task.get());
    }

    private Optional<Refusal> statusRefusal(Task task) {
        return switch (task.progress().status()) {
            case DONE -> Optional.of(Refusal.of("task_done", task.name()));
            case RUNNING ->
                Optional.of(Refusal.of(
                        "task_running",
                        task.name(),
                        draft.day()
                                .shop()
                                .expectPerson(task.progress().person().orElseThrow())
                                .name()));
            case TO_DO, PAUSED -> Optional.empty();
        };
    }

    private Optional<Refusal> skillRefusal(String personId, Visit visit, Task task) {
        Person person = draft.day().shop().expectPerson(personId);
        if (!task.isFor(person)) {
            return Optional.of(Refusal.of("skill_missing", person.name(), task.name(), Problems.skill(task.skill())));
        }
        return OwnWork.isBarred(draft.day(), visit, task, person)
                ? Optional.of(Refusal.of("own_work", person.name(), task.name()))
                : Optional.empty();
    }

    private Optional<Refusal> orderRefusal(Visit visit, String taskId) {
        Stay stay = visit.stayOf(taskId).orElseThrow();
        Stay current = visit.stays().get(visit.currentStay());
        if (visit.stays().indexOf(stay) > visit.currentStay()) {
            String first = current.tasks().stream()
                    .filter(task -> !task.isDone())
                    .findFirst()
                    .orElseThrow()
                    .name();
            return Optional.of(
                    Refusal.of("not_yet", visit.findTask(taskId).orElseThrow().name(), first));
        }
        return visit.findTask(taskId).orElseThrow().after().stream()
                .flatMap(id -> stay.findTask(id).stream())
                .filter(before -> !before.isDone())
                .findFirst()
                .map(before -> Refusal.of(
                        "not_yet", visit.findTask(taskId).orElseThrow().name(), before.name()));
    }

    Outcome pause(Act.Pause act) {
        Optional<Refusal> no = runningRefusal(act.visitId(), act.taskId());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Task task =
                draft.day().expectVisit(act.visitId()).findTask(act.taskId()).orElseThrow();
        leaveWork(task.progress().person().orElseThrow());
        return draft.doneWith(draft.day().expectVisit(act.visitId()));
    }

    private Optional<Refusal> runningRefusal(String visitId, String taskId) {
        Optional<Visit> visit = draft.day().findVisit(visitId);
        if (visit.isEmpty()) {
            return Optional.of(Refusal.of("visit_unknown", visitId));
        }
        Optional<Task> task = visit.get().findTask(taskId);
        if (task.isEmpty()) {
            return Optional.of(Refusal.of("task_unknown", taskId, Names.of(draft.day(), visit.get())));
        }
        return task.get().progress().isRunning()
                ? Optional.empty()
                : Optional.of(Refusal.of("not_running", task.get().name()));
    }

    Outcome finish(Act.Finish act) {
        Optional<Refusal> no = runningRefusal(act.visitId(), act.taskId()).or(() -> personRefusal(act.personId()));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Visit visit = draft.day().expectVisit(act.visitId());
        Task task = visit.findTask(act.taskId()).orElseThrow();
        List<Point> open = PointsDue.openOf(draft.day(), visit, task);
        if (!open.isEmpty() && act.rest().isEmpty()) {
            return new Outcome.Refused(
                    Refusal.of("points_open", open.size(), open.get(0).name()));
        }
        for (Point point : open) {
            Act.Tick tick = new Act.Tick(
                    act.personId(), visit.id(), point.id(), act.rest().get(), OptionalDouble.empty(), act.why());
            Optional<Refusal> wrong = Marking.refusal(draft.day(), visit, tick, point);
            if (wrong.isPresent()) {
                return new Outcome.Refused(wrong.get());
            }
            visit = visit.plusFinding(Marking.findingOf(tick, now));
        }
        Optional<Refusal> openPart = shelf().openRefusal(visit, task);
        if (openPart.isPresent()) {
            return new Outcome.Refused(openPart.get());
        }
        String worker = task.progress().person().orElseThrow();
        visit = shelf().take(visit, task, worker);
        visit = visit.withTask(act.taskId(), each -> each.with(each.progress().done(worker, now)));
        boolean over = visit.stays().stream().allMatch(Stay::isDone);
        visit = over ? visit.finishedAt(now) : visit;
        draft.put(visit);
        clockOff(worker, now);
        return draft.doneWith(visit);
    }

    Outcome handOver(Act.HandOver act) {
        Optional<Refusal> no = runningRefusal(act.visitId(), act.taskId())
                .or(() -> personRefusal(act.toPersonId()))
                .or(() -> handOverRefusal(act));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Task task =
                draft.day().expectVisit(act.visitId()).findTask(act.taskId()).orElseThrow();
        leaveWork(task.progress().person().orElseThrow());
        return begin(act.visitId(), act.taskId(), act.toPersonId());
    }

    private Optional<Refusal> handOverRefusal(Act.HandOver act) {
        Visit visit = draft.day().expectVisit(act.visitId());
        Task task = visit.findTask(act.taskId()).orElseThrow();
        if (task.progress().isBy(act.toPersonId())) {
            return statusRefusal(task);
        }
        return skillRefusal(act.toPersonId(), visit, task).or(() -> standingRefusal(visit, task));
    }

    /** Whether the place the machine stands in may still be worked in. */
    private Optional<Refusal> standingRefusal(Visit visit, Task task) {
        Stay stay = visit.stayOf(task.id()).orElseThrow();
        return stay.needsPlace() ? placeRefusal(visit, stay, stay.placeId()) : Optional.empty();
    }

    Outcome doOther(Act.DoOther act) {
        Optional<Refusal> no = dayRefusal().or(() -> personRefusal(act.personId()));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        leaveWork(act.personId());
        clockOn(act.personId(), new Activity.OtherWork(act.kind()));
        return draft.done();
    }

    /** Who forgot to clock off yesterday can be clocked off without being here. */
    Outcome stop(Act.Stop act) {
        Optional<Refusal> no = personRefusal(act.personId());
        boolean stillOn = draft.day().openEntryOf(act.personId()).isPresent();
        if (no.isPresent() && !stillOn) {
            return new Outcome.Refused(no.get());
        }
        Optional<Refusal> wrongTime = act.at().flatMap(at -> timeRefusal(act, at));
        if (wrongTime.isPresent()) {
            return new Outcome.Refused(wrongTime.get());
        }
        Instant at = act.at().orElse(now);
        leaveWork(act.personId(), at);
        if (act.leaves()) {
            presenceOf(act.personId())
                    .ifPresent(presence ->
                            draft.put(draft.day().opening().orElseThrow().with(presence.leftAt(at))));
        }
        return draft.done();
    }

    private Optional<Refusal> timeRefusal(Act.Stop act, Instant at) {
        Day day = draft.day();
        if (at.isAfter(now)) {
            return Optional.of(Refusal.of("time_to_come", Clocks.sayTime(day, at)));
        }
        Optional<Instant> came = act.leaves() ? presenceOf(act.personId()).map(Attendance::from) : Optional.empty();
        if (came.filter(at::isBefore).isPresent()) {
            return Optional.of(
                    Refusal.of("leave_before_arrive", Clocks.sayTime(day, at), Clocks.sayTime(day, came.get())));
        }
        return day.openEntryOf(act.personId())
                .map(ClockEntry::from)
                .filter(at::isBefore)
                .map(from -> Refusal.of("off_before_on", Clocks.sayTime(day, at), Clocks.sayTime(day, from)));
    }

    private Optional<Attendance> presenceOf(String personId) {
        return draft.day().opening().stream()
                .flatMap(opening -> opening.here().stream())
                .filter(presence -> presence.personId().equals(personId))
                .findFirst();
    }

    /** A person goes off whatever they are on; a task they leave waits half done. */
    void leaveWork(String personId) {
        leaveWork(personId, now);
    }

    private void leaveWork(String personId, Instant at) {
        draft.day().runningOf(personId).ifPresent(running -> {
            int left = Spell.minutesLeft(draft.day(), running.task(), at);
            draft.put(running.visit()
                    .withTask(
                            running.task().id(),
                            task -> task.with(task.progress().paused(at, left))));
        });
        clockOff(personId, at);
    }

    private void clockOff(String personId, Instant at) {
        draft.day().openEntryOf(personId).ifPresent(entry -> draft.put(entry.endedAt(at)));
        draft.day().errandsOf(personId).stream()
                .filter(errand -> errand.state() == Errand.State.BEGUN)
                .forEach(errand -> draft.put(errand.with(Errand.State.DONE)));
    }

    void clockOn(String personId, Activity activity) {
        draft.put(new ClockEntry(draft.newId("C"), personId, activity, now, Optional.empty()));
    }
}
