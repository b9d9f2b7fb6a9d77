package org.shedboard.shop;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A run of work in one place, one for each step of a visit.
 *
 * @param kinds kinds of place that will do; none for work that takes no place
 * @param placeId the place it stands in, or is bound to; empty while that is for the plan to say
 */
public record Stay(Step step, List<PlaceKind> kinds, Optional<String> placeId, List<Task> tasks) {
    public Stay {
        kinds = List.copyOf(kinds);
        tasks = List.copyOf(tasks);
        if (tasks.isEmpty()) {
            throw new IllegalArgumentException("the stay for %s has no task".formatted(step));
        }
    }

    public Stay at(String place) {
        return new Stay(step, kinds, Optional.of(place), tasks);
    }

    public Stay withTasks(List<Task> next) {
        return new Stay(step, kinds, placeId, next);
    }

    public Stay withTask(String taskId, UnaryOperator<Task> change) {
        return withTasks(tasks.stream()
                .map(task -> task.id().equals(taskId) ? change.apply(task) : task)
                .toList());
    }

    public boolean isDone() {
        return tasks.stream().allMatch(Task::isDone);
    }

    public boolean hasBegun() {
        return tasks.stream().anyMatch(Task::hasBegun);
    }

    public boolean needsPlace() {
        return !kinds.isEmpty();
    }

    public Optional<Task> findTask(String taskId) {
        return tasks.stream().filter(task -> task.id().equals(taskId)).findFirst();
    }
}
