package org.shedboard.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;

/**
 * Work found on the way being joined to the stays that a visit has already.
 *
 * <p>It joins the open stay of its step, ahead of lowering. Where there is none, the machine comes in once more before the last
 * stay; what of the last stay has begun by then stays behind as a stay of its own.
 */
final class Joining {
    private final List<Stay> stays;
    /** The name in this visit of each added task: ids are unique within a visit. */
    private final Map<String, String> names = new HashMap<>();

    Joining(List<Stay> stays) {
        this.stays = new ArrayList<>(stays);
    }

    /** The stays with those of the added lines, each of which has the tasks of its own step only; the last of them is the drive. */
    List<Stay> with(List<Stay> added) {
        Stay drive = added.get(added.size() - 1);
        for (Stay more : added.subList(0, added.size() - 1)) {
            int open = openStayOf(more.step());
            if (open >= 0) {
                stays.set(open, widened(stays.get(open), more));
            } else {
                splitLast(drive);
                stays.add(stays.size() - 1, renamed(more));
            }
        }
        if (find(last(), Usual.SIGN_OFF).filter(Task::hasBegun).isPresent()) {
            splitLast(drive);
        }
        stays.set(stays.size() - 1, lastStay(last(), drive));
        return List.copyOf(stays);
    }

    private Stay last() {
        return stays.get(stays.size() - 1);
    }

    /** Index of a stay of this step that more can be done in: not over, and the machine not on its way down. */
    private int openStayOf(Step step) {
        for (int index = stays.size() - 2; index >= 0; index--) {
            Stay stay = stays.get(index);
            boolean lowering = find(stay, Usual.LOWER).filter(Task::hasBegun).isPresent();
            if (stay.step() == step && !stay.isDone() && !lowering) {
                return index;
            }
        }
        return -1;
    }

    /** What of the last stay has begun becomes a stay of its own, so that another can come between; a begun signature is asked for anew. */
    private void splitLast(Stay drive) {
        Stay last = last();
        if (!last.hasBegun()) {
            return;
        }
        List<Task> begun = last.tasks().stream().filter(Task::hasBegun).toList();
        List<Task> rest = new ArrayList<>(
                last.tasks().stream().filter(task -> !task.hasBegun()).toList());
        if (rest.stream().noneMatch(task -> task.isCalled(signOff(drive).id()))) {
            Task signOff = signOff(drive);
            rest.add(named(signOff, fresh(signOff.id())).withNotBy(signOff(last).notBy()));
        }
        stays.set(stays.size() - 1, last.withTasks(begun));
        stays.add(new Stay(last.step(), last.kinds(), last.placeId(), waitingWithin(rest)));
    }

    private static List<Task> waitingWithin(List<Task> tasks) {
        Set<String> ids = tasks.stream().map(Task::id).collect(Collectors.toSet());
        return tasks.stream()
                .map(task -> task.withAfter(
                        task.after().stream().filter(ids::contains).toList()))
                .toList();
    }

    /** The open stay with the tasks it lacks, ahead of lowering, which now waits for them too. */
    private Stay widened(Stay stay, Stay more) {
        List<Task> missing = missing(stay, more);
        Optional<Task> lower = find(stay, Usual.LOWER);
        List<Task> tasks = new ArrayList<>(stay.tasks());
        lower.ifPresent(tasks::remove);
        tasks.addAll(missing);
        lower.ifPresent(last -> tasks.add(last.withAfter(union(last.after(), ids(missing)))));
        return stay.withTasks(waitingWithin(tasks));
    }

    /** The added lines' tasks that the stay has not, named for this visit. */
    private List<Task> missing(Stay stay, Stay more) {
        List<Task> missing = new ArrayList<>();
        for (Task task : more.tasks()) {
            Optional<Task> same = stay.tasks().stream()
                    .filter(each -> each.isCalled(task.id()))
                    .findFirst();
            if (same.isEmpty() && !task.lines().isEmpty()) {
                missing.add(task);
            }
            names.put(task.id(), same.map(Task::id).orElseGet(() -> fresh(task.id())));
        }
        return missing.stream().map(this::renamed).toList();
    }

    /** The last stay: the added tasks come first, and the signature minds who did the added work too. */
    private Stay lastStay(Stay stay, Stay drive) {
        List<Task> added = missing(stay, drive).stream()
                .filter(task -> !task.isCalled(signOff(drive).id()))
                .toList();
        List<String> notBy = signOff(drive).notBy().stream().map(this::nameOf).toList();
        List<Task> tasks = new ArrayList<>(added);
        for (Task task : stay.tasks()) {
            boolean last = task.isCalled(signOff(drive).id());
            tasks.add(
                    last
                            ? task.withAfter(union(task.after(), ids(added))).withNotBy(union(task.notBy(), notBy))
                            : task);
        }
        return stay.withTasks(tasks);
    }

    private static Task signOff(Stay drive) {
        return find(drive, Usual.SIGN_OFF).orElseThrow();
    }

    /** A second stay for a step that is over. */
    private Stay renamed(Stay more) {
        more.tasks().forEach(task -> names.put(task.id(), fresh(task.id())));
        return more.withTasks(more.tasks().stream().map(this::renamed).toList());
    }

    private Task renamed(Task task) {
        return named(task, nameOf(task.id()))
                .withAfter(task.after().stream().map(this::nameOf).toList());
    }

    private String nameOf(String id) {
        return names.getOrDefault(id, id);
    }

    private static Task named(Task task, String id) {
        return new Task(
                id,
                task.name(),
                task.kind(),
                task.skill(),
                task.handsOn(),
                task.unattended(),
                task.after(),
                task.notBy(),
                task.lines(),
                task.caution(),
                task.progress());
    }

    private String fresh(String id) {
        Set<String> taken = stays.stream()
                .flatMap(stay -> stay.tasks().stream())
                .map(Task::id)
                .collect(Collectors.toSet());
        int round = 2;
        String name = id;
        while (taken.contains(name)) {
            name = id + "-" + round;
            round++;
        }
        return name;
    }

    private static Optional<Task> find(Stay stay, Usual usual) {
        return stay.tasks().stream()
                .filter(task -> task.isCalled(usual.idIn(stay.step())))
                .findFirst();
    }

    private static List<String> ids(List<Task> tasks) {
        return tasks.stream().map(Task::id).toList();
    }

    private static List<String> union(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).distinct().toList();
    }
}
