package org.shedboard.forecast;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.Activity.OnStay;
import org.shedboard.hours.Tally;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Clocked;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * Tells finished visits by what was clocked together, as closely as the clocks do.
 *
 * <p>Where every task of a step has minutes of its own, and nobody was on the step as a whole or lent a hand, each task stands by itself.
 * Otherwise the step's minutes are told together: nobody knows which of its tasks they went to.
 */
final class Clockings {
    private final PartNames names;
    private final Today today;
    private final ZoneId zone;
    private final Map<String, Machine> machines = new LinkedHashMap<>();
    private final Map<String, Integer> paces;
    private final Worked worked;

    private Clockings(Catalogue catalogue, Shop shop, List<Machine> machines, Tally tally) {
        this.names = new PartNames(catalogue);
        this.today = new Today(catalogue);
        this.zone = shop.zone();
        machines.forEach(machine -> this.machines.put(machine.id(), machine));
        this.paces = Lessons.pacesOf(shop.people());
        this.worked = new Worked(tally);
    }

    /** @param tally of all the days on which the visits were worked on */
    static List<Clocked> of(Catalogue catalogue, Shop shop, List<Machine> machines, List<Visit> visits, Tally tally) {
        Clockings clockings = new Clockings(catalogue, shop, machines, tally);
        return visits.stream()
                .filter(visit -> visit.finished().isPresent())
                .flatMap(clockings::of)
                .toList();
    }

    private Stream<Clocked> of(Visit visit) {
        Optional<Machine> machine = Optional.ofNullable(machines.get(visit.machineId()));
        return machine.stream().flatMap(found -> {
            List<Stay> stays = today.staysOf(found.classId(), visit);
            return EnumSet.allOf(Step.class).stream().flatMap(step -> of(visit, found, step, tasksOf(stays, step)));
        });
    }

    private static List<Task> tasksOf(List<Stay> stays, Step step) {
        return stays.stream()
                .filter(stay -> stay.step() == step)
                .flatMap(stay -> stay.tasks().stream())
                .filter(task -> task.handsOn() > 0)
                .toList();
    }

    private Stream<Clocked> of(Visit visit, Machine machine, Step step, List<Task> tasks) {
        Map<Optional<String>, Map<String, Double>> byTask = minutes(visit, step, tasks);
        if (byTask.isEmpty() || tasks.isEmpty()) {
            return Stream.empty();
        }
        boolean isApart = !byTask.containsKey(Optional.<String>empty()) && byTask.size() == tasks.size();
        if (isApart) {
            return tasks.stream()
                    .map(task -> clocked(visit, machine, step, List.of(task), byTask.get(Optional.of(task.id()))));
        }
        Map<String, Double> all = new LinkedHashMap<>();
        byTask.values().forEach(people -> people.forEach((person, count) -> all.merge(person, count, Double::sum)));
        return Stream.of(clocked(visit, machine, step, tasks, all));
    }

    /** Minutes in a step by task, then by person; those on the step as a whole under no task. */
    private Map<Optional<String>, Map<String, Double>> minutes(Visit visit, Step step, List<Task> tasks) {
        Set<String> own = Set.copyOf(tasks.stream().map(Task::id).toList());
        Map<Optional<String>, Map<String, Double>> byTask = new LinkedHashMap<>();
        worked.on(visit.id())
                .forEach((person, onStays) -> onStays.forEach((on, count) -> {
                    if (count > 0 && isIn(visit, step, own, on)) {
                        byTask.computeIfAbsent(on.taskId().filter(own::contains), absent -> new LinkedHashMap<>())
                                .merge(person, (double) count, Double::sum);
                    }
                }));
        return byTask;
    }

    /** What names a task is where that task is, whatever step it names. */
    private static boolean isIn(Visit visit, Step step, Set<String> own, OnStay on) {
        boolean isNamed =
                on.taskId().filter(id -> visit.findTask(id).isPresent()).isPresent();
        return isNamed ? own.contains(on.taskId().orElseThrow()) : on.step() == step;
    }

    private Clocked clocked(Visit visit, Machine machine, Step step, List<Task> tasks, Map<String, Double> people) {
        double all = people.values().stream().mapToDouble(each -> each).sum();
        Map<String, Double> shares = new LinkedHashMap<>();
        people.forEach((person, minutes) -> shares.put(person, minutes / all));
        LocalDate date = LocalDate.ofInstant(visit.finished().orElseThrow(), zone);
        Circumstances under = new Circumstances(
                machine.classId(),
                visit.intake().mud(),
                visit.intake().depth(),
                Lessons.ageOf(machine, date),
                date,
                shares);
        List<Clocked.Part> parts = tasks.stream()
                .map(task -> names.partOf(machine.classId(), visit, step, task))
                .toList();
        return new Clocked(visit.id(), under, parts, Lessons.pace(paces, shares), all);
    }
}
