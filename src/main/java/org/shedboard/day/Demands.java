package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.ahead.Bay;
import org.shedboard.ahead.Claim;
import org.shedboard.ahead.Demand;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;

/** What is left of a visit, as minutes of people and of places. Minutes are the catalogue's. */
final class Demands {
    private final Day day;
    private final Visit visit;
    private final Instant now;

    private Demands(Day day, Visit visit, Instant now) {
        this.day = day;
        this.visit = visit;
        this.now = now;
    }

    static Demand of(Day day, Visit visit, Instant now) {
        return new Demands(day, visit, now).demand();
    }

    /** Ids of the people who may do work of a skill. */
    static Set<String> holders(Day day, Skill skill) {
        return day.shop().people().stream()
                .filter(person -> person.may(skill))
                .map(Person::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Demand demand() {
        List<Claim<Skill>> people = new ArrayList<>();
        List<Claim<Bay>> places = new ArrayList<>();
        for (Stay stay : visit.stays()) {
            stay.tasks().stream()
                    .filter(task -> handsOn(task) > 0)
                    .forEach(task -> people.add(new Claim<>(task.skill(), holders(day, task.skill()), handsOn(task))));
            if (stay.needsPlace() && !stay.isDone()) {
                places.add(claim(stay));
            }
        }
        return new Demand(visit.id(), date(), people, places);
    }

    /** The date on which it comes, or may go on. */
    private LocalDate date() {
        Instant from =
                visit.hold().map(hold -> hold.until()).orElse(visit.intake().arrives());
        boolean isToCome = visit.state() == VisitState.BOOKED || visit.state() == VisitState.HELD;
        LocalDate date = LocalDate.ofInstant(isToCome ? from : now, day.zone());
        return date.isBefore(day.date()) ? day.date() : date;
    }

    private Claim<Bay> claim(Stay stay) {
        List<String> fit = stay.placeId()
                .map(List::of)
                .orElseGet(() -> standable(stay, day.machineOf(visit).massKg()));
        boolean isAny = fit.size() == standable(stay, 0).size();
        return new Claim<>(new Bay(stay.kinds(), isAny ? List.of() : fit), Set.copyOf(fit), minutes(stay));
    }

    /** Ids of the places that are of the right kind and carry so much. */
    private List<String> standable(Stay stay, int massKg) {
        return day.shop().places().stream()
                .filter(place -> stay.kinds().contains(place.kind()) && place.carries(massKg))
                .map(Place::id)
                .toList();
    }

    /**
     * Minutes the machine stands there: one person does the tasks one after the other, and what drains or soaks meanwhile takes no
     * longer than its own way through them. Two people may be quicker; waiting for somebody makes it longer.
     */
    private int minutes(Stay stay) {
        int alone = stay.tasks().stream().mapToInt(this::handsOn).sum();
        Map<String, Integer> ends = new HashMap<>();
        int last = 0;
        for (Task task : inOrder(stay.tasks())) {
            int from = task.after().stream()
                    .mapToInt(id -> ends.getOrDefault(id, 0))
                    .max()
                    .orElse(0);
            ends.put(task.id(), from + handsOn(task) + (task.isDone() ? 0 : task.unattended()));
            last = Math.max(last, ends.get(task.id()));
        }
        return Math.max(alone, last);
    }

    /** Each task after those it waits for. */
    private static List<Task> inOrder(List<Task> tasks) {
        List<Task> ordered = new ArrayList<>();
        List<Task> waiting = new ArrayList<>(tasks);
        while (!waiting.isEmpty()) {
            Set<String> open = waiting.stream().map(Task::id).collect(Collectors.toSet());
            List<Task> ready = waiting.stream()
                    .filter(task -> task.after().stream().noneMatch(open::contains))
                    .toList();
            if (ready.isEmpty()) {
                throw new IllegalStateException("tasks of %s wait for each other: %s".formatted(open, open));
            }
            ordered.addAll(ready);
            waiting.removeAll(ready);
        }
        return ordered;
    }

    private int handsOn(Task task) {
        if (task.isDone()) {
            return 0;
        }
        return task.hasBegun() ? left(task) : task.handsOn();
    }

    /** What is left of a begun task, which whoever is on it has at their own pace, at the catalogue's. */
    private int left(Task task) {
        Progress progress = task.progress();
        int pace = progress.person()
                .flatMap(day.shop()::findPerson)
                .map(Person::pacePercent)
                .orElse(100);
        return Math.max(1, Spell.minutesLeft(day, task, now) * 100 / pace);
    }
}
