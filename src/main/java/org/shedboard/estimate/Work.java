package org.shedboard.estimate;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Part;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.ServiceInterval;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;

/**
 * A line of work the shop offers: a service, a repair, an add-on.
 *
 * @param key one or two letters that choose it at take-in
 * @param classes ids of the machine classes it is for
 * @param depth the inspection it usually brings with it
 * @param interval how often it is to be done; empty where it is no service that comes again
 */
public record Work(
        String id,
        String name,
        String key,
        Set<String> classes,
        Depth depth,
        List<WorkTask> tasks,
        List<WorkPart> parts,
        Optional<ServiceInterval> interval) {
    public Work {
        classes = Set.copyOf(classes);
        tasks = List.copyOf(tasks);
        parts = List.copyOf(parts);
    }

    /** Work that is done when it is needed. */
    public Work(
            String id,
            String name,
            String key,
            Set<String> classes,
            Depth depth,
            List<WorkTask> tasks,
            List<WorkPart> parts) {
        this(id, name, key, classes, depth, tasks, parts, Optional.empty());
    }

    /** The parts as a line of a visit carries them. */
    public List<Part> lineParts() {
        return parts.stream().map(WorkPart::asPart).toList();
    }

    public Optional<WorkPart> findPart(String partName) {
        return parts.stream().filter(part -> part.name().equals(partName)).findFirst();
    }

    public Optional<WorkTask> findTask(String taskId) {
        return tasks.stream().filter(task -> task.id().equals(taskId)).findFirst();
    }

    Work withHandsOn(String taskId, int minutes) {
        List<WorkTask> next = tasks.stream()
                .map(task -> task.id().equals(taskId) ? task.withHandsOn(minutes) : task)
                .toList();
        return new Work(id, name, key, classes, depth, next, parts, interval);
    }

    public boolean isFor(String classId) {
        return classes.contains(classId);
    }

    /**
     * A task of a line of work. Two lines that name the same id in the same step share the task: it is done once.
     *
     * @param kinds kinds of place that will do; the step's usual ones when empty
     * @param after ids of tasks of the same step that must be complete first; none means once the machine is in place
     * @param checkedByAnother whether whoever did it may not sign the machine off
     */
    public record WorkTask(
            String id,
            String name,
            Step step,
            Skill skill,
            List<PlaceKind> kinds,
            int handsOn,
            int unattended,
            List<String> after,
            boolean checkedByAnother,
            String caution) {
        public WorkTask {
            kinds = List.copyOf(kinds);
            after = List.copyOf(after);
        }

        WorkTask withHandsOn(int minutes) {
            return new WorkTask(id, name, step, skill, kinds, minutes, unattended, after, checkedByAnother, caution);
        }
    }
}
