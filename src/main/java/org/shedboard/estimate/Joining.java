package org.shedboard.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;

/** Work found on the way being joined to the stays that a visit has already. */
final class Joining {
    private final List<Stay> stays;

    Joining(List<Stay> stays) {
        this.stays = new ArrayList<>(stays);
    }

    /** The stays with those of the added lines, each of which has the tasks of its own step only. */
    List<Stay> with(List<Stay> added) {
        for (Stay more : added) {
            int open = openStayOf(more.step());
            if (more.step() == Step.DRIVE) {
                stays.set(open, lastStay(stays.get(open), more));
            } else if (open >= 0) {
                stays.set(open, widened(stays.get(open), more));
            } else {
                stays.add(openStayOf(Step.DRIVE), renamed(more));
            }
        }
        return List.copyOf(stays);
    }

    private int openStayOf(Step step) {
        for (int index = stays.size() - 1; index >= 0; index--) {
            if (stays.get(index).step() == step && !stays.get(index).isDone()) {
                return index;
            }
        }
        return -1;
    }

    /** The open stay with the tasks it lacks, ahead of lowering, which now waits for them too. */
    private static Stay widened(Stay stay, Stay more) {
        String lower = Usual.LOWER.idIn(stay.step());
        List<Task> missing = more.tasks().stream()
                .filter(task -> !task.lines().isEmpty())
                .filter(task -> stay.findTask(task.id()).isEmpty())
                .map(task -> task.withAfter(known(task.after(), stay, more)))
                .toList();
        List<String> missingIds = missing.stream().map(Task::id).toList();
        List<Task> tasks = new ArrayList<>();
        for (Task task : stay.tasks()) {
            if (task.id().equals(lower)) {
                tasks.addAll(missing);
                tasks.add(task.withAfter(union(task.after(), missingIds)));
            } else {
                tasks.add(task);
            }
        }
        if (stay.findTask(lower).isEmpty()) {
            tasks.addAll(missing);
        }
        return stay.withTasks(tasks);
    }

    private static List<String> known(List<String> after, Stay stay, Stay more) {
        return after.stream()
                .filter(id -> stay.findTask(id).isPresent() || more.findTask(id).isPresent())
                .toList();
    }

    /** The last stay: the added tasks come first, and the signature minds who did the added work too. */
    private static Stay lastStay(Stay stay, Stay more) {
        String signOff = Usual.SIGN_OFF.idIn(Step.DRIVE);
        List<Task> added = more.tasks().stream()
                .filter(task -> !task.id().equals(signOff))
                .filter(task -> stay.findTask(task.id()).isEmpty())
                .toList();
        List<String> addedIds = added.stream().map(Task::id).toList();
        List<String> notBy = more.findTask(signOff).orElseThrow().notBy();
        List<Task> tasks = new ArrayList<>(added);
        for (Task task : stay.tasks()) {
            boolean last = task.id().equals(signOff);
            tasks.add(
                    last ? task.withAfter(union(task.after(), addedIds)).withNotBy(union(task.notBy(), notBy)) : task);
        }
        return stay.withTasks(tasks);
    }

    /** A second stay for a step that is over: its tasks get names of their own, since ids are unique within a visit. */
    private Stay renamed(Stay more) {
        Set<String> taken = stays.stream()
                .flatMap(stay -> stay.tasks().stream())
                .map(Task::id)
                .collect(Collectors.toSet());
        List<Task> tasks =
                more.tasks().stream().map(task -> renamed(task, taken)).toList();
        return more.withTasks(tasks);
    }

    private static Task renamed(Task task, Set<String> taken) {
        return new Task(
                fresh(task.id(), taken),
                task.name(),
                task.kind(),
                task.skill(),
                task.handsOn(),
                task.unattended(),
                task.after().stream().map(id -> fresh(id, taken)).toList(),
                task.notBy(),
                task.lines(),
                task.caution(),
                task.progress());
    }

    private static String fresh(String id, Set<String> taken) {
        int round = 2;
        String name = id;
        while (taken.contains(name)) {
            name = id + "-" + round;
            round++;
        }
        return name;
    }

    private static List<String> union(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).distinct().toList();
    }
}
