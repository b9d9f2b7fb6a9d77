package org.shedboard.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.day.Tried;
import org.shedboard.pack.Plan;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/**
 * A task in the foreman's hand: where it lay, where it is held, and what comes of dropping it there.
 *
 * @param lay its time in the plan when it was picked up
 * @param pin what was changed of it by hand; empty while nothing was
 * @param tried the move tried; empty while nothing was changed
 */
public record Hand(String visitId, String taskId, Plan.TaskTime lay, Optional<TaskPin> pin, Optional<Tried> tried) {
    /** A task that is in the plan and has not begun, picked up. */
    static Optional<Hand> pickUp(Outlook outlook, Visit visit, Task task) {
        return outlook.timeOf(visit.id(), task.id())
                .filter(time -> !task.hasBegun())
                .map(time -> new Hand(visit.id(), task.id(), time, task.pin(), Optional.empty()));
    }

    /** The first task of a visit that can be picked up. */
    static Optional<Hand> pickUpFirst(Outlook outlook, Visit visit) {
        return inOrder(outlook, visit).stream()
                .flatMap(task -> pickUp(outlook, visit, task).stream())
                .findFirst();
    }

    /** The next one of the same visit, the first again after the last. */
    Hand next(Outlook outlook) {
        Visit visit = outlook.day().expectVisit(visitId);
        List<Task> tasks = inOrder(outlook, visit).stream()
                .filter(task -> pickUp(outlook, visit, task).isPresent())
                .toList();
        int index = tasks.stream().map(Task::id).toList().indexOf(taskId);
        return pickUp(outlook, visit, tasks.get((index + 1) % tasks.size())).orElseThrow();
    }

    private static List<Task> inOrder(Outlook outlook, Visit visit) {
        return visit.tasks().stream()
                .filter(task -> outlook.timeOf(visit.id(), task.id()).isPresent())
                .sorted(Comparator.comparingInt(task ->
                        outlook.timeOf(visit.id(), task.id()).orElseThrow().start()))
                .toList();
    }

    /** When it starts as it is held. */
    public Instant start(Day day) {
        return pin.flatMap(TaskPin::at).orElse(day.instantOf(lay.start()));
    }

    /** Who does it as it is held; empty where nobody is needed. */
    public Optional<String> person() {
        return pin.flatMap(TaskPin::personId).or(lay::person);
    }

    /** Where it is done as it is held; empty where it takes no place. */
    public Optional<String> place(Outlook outlook) {
        return pin.flatMap(TaskPin::placeId)
                .or(() -> outlook.plan().findStay(visitId, lay.stay()).map(Plan.StayPlace::place));
    }

    /** Held so many minutes later; whoever does it does it then, as nobody else may be in. */
    Hand later(Outlook outlook, int minutes) {
        Day day = outlook.day();
        int now = outlook.problem().now();
        int last = outlook.problem().horizon() - 1;
        int at = Math.max(now, Math.min(last, day.minuteOf(start(day)) + minutes));
        return held(outlook, new TaskPin(pin.flatMap(TaskPin::placeId), Optional.of(day.instantOf(at)), person()));
    }

    /** Held in another place: so many further down among those of its kinds. */
    Hand inPlace(Outlook outlook, int by) {
        Stay stay = stay(outlook);
        List<String> places = placesFor(outlook, stay);
        int index = place(outlook).map(places::indexOf).orElse(0);
        String place = places.get(Math.max(0, Math.min(places.size() - 1, index + by)));
        return held(outlook, new TaskPin(Optional.of(place), pin.flatMap(TaskPin::at), pin.flatMap(TaskPin::personId)));
    }

    /** Those that cannot take the machine too: that they are refused says why. */
    private static List<String> placesFor(Outlook outlook, Stay stay) {
        return outlook.day().shop().places().stream()
                .filter(place -> stay.kinds().contains(place.kind()))
                .map(Place::id)
                .toList();
    }

    /** Held by the next of the people. */
    Hand byNext(Outlook outlook) {
        List<String> people =
                outlook.day().shop().people().stream().map(Person::id).toList();
        int index = person().map(people::indexOf).orElse(-1);
        String next = people.get((index + 1) % people.size());
        return held(outlook, new TaskPin(pin.flatMap(TaskPin::placeId), pin.flatMap(TaskPin::at), Optional.of(next)));
    }

    private Hand held(Outlook outlook, TaskPin next) {
        return new Hand(visitId, taskId, lay, Optional.of(next), Optional.empty()).triedOn(outlook);
    }

    /** The same on a day that was read again; empty where it has begun or is no longer there. */
    Optional<Hand> on(Outlook outlook) {
        Optional<Visit> visit = outlook.day().findVisit(visitId);
        return visit.flatMap(found -> found.findTask(taskId))
                .flatMap(task -> pickUp(outlook, visit.orElseThrow(), task))
                .map(fresh -> tried.isEmpty()
                        ? fresh
                        : new Hand(visitId, taskId, fresh.lay(), pin, Optional.empty()).triedOn(outlook));
    }

    private Hand triedOn(Outlook outlook) {
        return new Hand(visitId, taskId, lay, pin, Optional.of(Tried.of(outlook, act())));
    }

    Act.PinTask act() {
        return new Act.PinTask(visitId, taskId, pin.orElseThrow());
    }

    /** Whether there is something to drop that is not refused. */
    boolean canDrop() {
        return tried.filter(each -> each.refused().isEmpty()).isPresent();
    }

    boolean canMoveTo(Outlook outlook) {
        Stay stay = stay(outlook);
        return stay.placeId().isEmpty() && placesFor(outlook, stay).size() > 1;
    }

    private Stay stay(Outlook outlook) {
        return outlook.day().expectVisit(visitId).stays().get(lay.stay());
    }
}
