package org.shedboard.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Resolution;
import org.shedboard.estimate.Variant;
import org.shedboard.estimate.WorkPart;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Part;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/**
 * The parts that a visit takes from the shelf, each with the task that uses it.
 *
 * <p>A task that two lines share is done once, and takes the parts that both name once: as much as the line that asks for more. What
 * is found dirty and must not be cleaned is needed too, while the task that renews it is not done.
 */
public final class Needs {
    private final Catalogue catalogue;
    private final Machine machine;
    private final Visit visit;
    /** By task and part, so that what two lines name is there once. */
    private final Map<String, Need> found = new LinkedHashMap<>();

    private Needs(Day day, Visit visit) {
        this.catalogue = day.books().catalogue();
        this.machine = day.machineOf(visit);
        this.visit = visit;
    }

    /** Whatever the shelf knows of what this visit needs, of done tasks too, in the order of its lines. */
    public static List<Need> of(Day day, Visit visit) {
        Needs needs = new Needs(day, visit);
        visit.lines().forEach(needs::lookAt);
        needs.renewals();
        return List.copyOf(needs.found.values());
    }

    public static List<Need> of(Day day, Visit visit, Task task) {
        return of(day, visit).stream()
                .filter(need -> need.task().id().equals(task.id()))
                .toList();
    }

    /** What is still to be said before a task can be finished. */
    public static Optional<Need> openOf(Day day, Visit visit, Task task) {
        return of(day, visit, task).stream().filter(Need::isOpen).findFirst();
    }

    private void lookAt(Line line) {
        for (Part part : line.parts()) {
            catalogue
                    .findWork(line.workId())
                    .flatMap(work -> work.findPart(part.name()))
                    .filter(wanted -> !wanted.variantsFor(machine.classId()).isEmpty())
                    .ifPresent(
                            wanted -> taskOf(line, wanted.taskId()).ifPresent(task -> add(line, part, wanted, task)));
        }
    }

    private void add(Line line, Part part, WorkPart wanted, Task task) {
        Resolution resolution = wanted.resolve(machine.classId(), machine.modelYear(), machine.number());
        Need need = new Need(visit, Optional.of(line), part, task, wanted.amount(), resolution);
        found.merge(task.id() + " " + part.name(), need, (one, other) -> one.ofAtLeast(other.amount()));
    }

    /** The line's own task of this name, else the one that it shares with work that was there before it. */
    private Optional<Task> taskOf(Line line, String taskId) {
        List<Task> named =
                visit.tasks().stream().filter(task -> task.isCalled(taskId)).toList();
        return named.stream()
                .filter(task -> task.lines().contains(line.id()))
                .findFirst()
                .or(() -> named.stream().findFirst());
    }

    private void renewals() {
        MachineClass machineClass = catalogue.expectClass(machine.classId());
        for (Point point : dirty(visit, machineClass)) {
            point.renewedWith().flatMap(catalogue::findItem).ifPresent(this::renew);
        }
    }

    /** Points at which something was found that must not be cleaned. */
    private static List<Point> dirty(Visit visit, MachineClass machineClass) {
        return visit.findings().stream()
                .filter(Finding::isDirt)
                .flatMap(finding -> machineClass.findPoint(finding.pointId()).stream())
                .toList();
    }

    private void renew(Item item) {
        boolean isThere =
                found.values().stream().anyMatch(need -> need.itemIds().contains(item.id()));
        if (!isThere) {
            Resolution plain = new Resolution(List.of(Variant.everywhere(item.id())), Optional.empty());
            renewingTask(item)
                    .ifPresent(task -> found.put(
                            task.id() + " " + item.id(),
                            new Need(visit, Optional.empty(), new Part(item.name(), "1"), task, Amount.of(1), plain)));
        }
    }

    /** A task of this visit that is not done and in some other work renews the item. */
    private Optional<Task> renewingTask(Item item) {
        List<String> taskIds = new ArrayList<>();
        catalogue.worksFor(machine.classId()).stream()
                .flatMap(work -> work.parts().stream())
                .filter(part -> part.variantsFor(machine.classId()).stream()
                        .anyMatch(variant -> variant.itemId().equals(item.id())))
                .forEach(part -> taskIds.add(part.taskId()));
        return visit.tasks().stream()
                .filter(task -> !task.isDone() && taskIds.stream().anyMatch(task::isCalled))
                .findFirst();
    }
}
