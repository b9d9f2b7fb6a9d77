package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.shop.Person;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/**
 * What the foreman insists on, as a packing problem has it. A pin that the day has overtaken yields: first its minute, then
 * all of it; what has begun keeps only the skill it was lent.
 *
 * @param minutesYield ids of visits whose pins hold no minute any more
 * @param allYield ids of visits whose pins hold nothing any more
 */
record Pins(Day day, Instant now, Set<String> minutesYield, Set<String> allYield) {
    Pins {
        minutesYield = Set.copyOf(minutesYield);
        allYield = Set.copyOf(allYield);
    }

    static Pins of(Day day, Instant now) {
        return new Pins(day, now, Set.of(), Set.of());
    }

    /** A task and the one who was lent the skill for it. */
    private record Lent(Visit visit, Task task, String personId) {}

    /** With less insisted on for these visits: nothing where their minutes have yielded already. */
    Pins yielding(Set<String> visits) {
        Set<String> minutes = new HashSet<>(minutesYield);
        Set<String> all = new HashSet<>(allYield);
        visits.forEach(visit -> (minutesYield.contains(visit) ? all : minutes).add(visit));
        return new Pins(day, now, minutes, all);
    }

    /** With all that there is insisted on for a visit. */
    Pins insisting(String visitId) {
        Set<String> minutes = new HashSet<>(minutesYield);
        Set<String> all = new HashSet<>(allYield);
        minutes.remove(visitId);
        all.remove(visitId);
        return new Pins(day, now, minutes, all);
    }

    Pins on(Day next) {
        return new Pins(next, now, minutesYield, allYield);
    }

    /** Ids of the visits on which something is still insisted that has not begun. */
    Set<String> visits() {
        Set<String> ids = new LinkedHashSet<>();
        for (Visit visit : day.visits()) {
            if (visit.state().isOpen()
                    && visit.tasks().stream()
                            .anyMatch(task -> inForce(visit, task).isPresent())) {
                ids.add(visit.id());
            }
        }
        return ids;
    }

    private Optional<TaskPin> inForce(Visit visit, Task task) {
        return task.hasBegun() || allYield.contains(visit.id()) ? Optional.empty() : task.pin();
    }

    /** The minute a task is pinned to; empty where that is past. */
    Optional<Instant> startOf(Visit visit, Task task) {
        return inForce(visit, task)
                .flatMap(TaskPin::at)
                .filter(at -> !minutesYield.contains(visit.id()) && day.minuteOf(at) >= day.minuteOf(now));
    }

    /** The place that one of the stay's tasks is pinned to. */
    Optional<String> placeOf(Visit visit, Stay stay) {
        return stay.tasks().stream()
                .flatMap(task -> inForce(visit, task).stream())
                .flatMap(pin -> pin.placeId().stream())
                .findFirst();
    }

    /** The task with what is insisted on for it. */
    Problem.Task task(Visit visit, Task task, Problem.Task plain) {
        Problem.Task lent = isLent(task) ? plain.withSkill(lentSkill(visit, task)) : plain;
        Problem.Task held = inForce(visit, task)
                .flatMap(TaskPin::personId)
                .filter(person -> task.handsOn() > 0)
                .map(lent::withPerson)
                .orElse(lent);
        return startOf(visit, task).map(day::minuteOf).map(held::withAt).orElse(held);
    }

    /** Whether somebody is to do it who has not its skill. */
    private boolean isLent(Task task) {
        return lentTo(task).isPresent();
    }

    private Optional<String> lentTo(Task task) {
        return task.pin()
                .flatMap(TaskPin::personId)
                .filter(id -> day.shop()
                        .findPerson(id)
                        .filter(person -> !person.may(task.skill()))
                        .isPresent());
    }

    /** A skill of its own, which those who have the true one hold too. */
    private static String lentSkill(Visit visit, Task task) {
        return "%s for %s %s".formatted(Problems.skill(task.skill()), visit.id(), task.id());
    }

    /** The skills that are lent, as far as a person holds them. */
    List<String> lentSkillsOf(Person person) {
        return lent().filter(each -> each.personId().equals(person.id())
                        || person.may(each.task().skill()))
                .map(each -> lentSkill(each.visit(), each.task()))
                .toList();
    }

    private Stream<Lent> lent() {
        return day.visits().stream()
                .filter(visit -> visit.state().isOpen())
                .flatMap(visit -> visit.tasks().stream()
                        .flatMap(task -> lentTo(task).map(person -> new Lent(visit, task, person)).stream()));
    }

    /** A person's overtime, with windows for what is insisted on outside of all their hours. */
    List<Span> overtimeOf(Person person, List<Span> shifts, List<Span> overtime, Minutes minutes) {
        List<Span> added = new ArrayList<>(overtime);
        for (Visit visit : day.visits()) {
            for (Task task : visit.tasks()) {
                Optional<Instant> start = startOf(visit, task);
                boolean isTheirs =
                        task.pin().filter(pin -> pin.isTo(person.id())).isPresent();
                if (visit.state().isOpen() && isTheirs && start.isPresent()) {
                    int from = day.minuteOf(start.get());
                    addAround(added, shifts, new Span(from, from + Math.max(1, minutes.of(visit, task, person))));
                }
            }
        }
        added.sort(Comparator.comparingInt(Span::from));
        return added;
    }

    /** How long a person takes for a task. */
    interface Minutes {
        int of(Visit visit, Task task, Person person);
    }

    /** Nothing where it begins in their hours: what is left at their end goes on when the next ones begin. */
    private static void addAround(List<Span> added, List<Span> shifts, Span wanted) {
        List<Span> known = Stream.concat(shifts.stream(), added.stream())
                .filter(span -> span.minutes() > 0)
                .sorted(Comparator.comparingInt(Span::from))
                .toList();
        if (known.stream().anyMatch(span -> span.contains(wanted.from()))) {
            return;
        }
        int from = wanted.from();
        for (Span span : known) {
            if (from < Math.min(wanted.to(), span.from())) {
                added.add(new Span(from, Math.min(wanted.to(), span.from())));
            }
            from = Math.max(from, Math.min(wanted.to(), span.to()));
        }
        if (from < wanted.to()) {
            added.add(new Span(from, wanted.to()));
        }
    }
}
