package org.shedboard.shop;

import java.util.List;
import java.util.Optional;

/**
 * A piece of hands-on work in a stay.
 *
 * @param id unique within its visit
 * @param handsOn minutes somebody works on it, at the catalogue's pace
 * @param unattended wall-clock minutes that follow and need nobody
 * @param after ids of tasks in the same stay that must be complete first
 * @param notBy ids of tasks of the same visit whose doer may not do this one
 * @param lines ids of the lines it serves; none for what every visit needs
 * @param caution what the person must mind, may be empty
 * @param pin what the foreman insists on for it, until it is done
 */
public record Task(
        String id,
        String name,
        WorkKind kind,
        Skill skill,
        int handsOn,
        int unattended,
        List<String> after,
        List<String> notBy,
        List<String> lines,
        String caution,
        Progress progress,
        Optional<TaskPin> pin) {
    public Task {
        after = List.copyOf(after);
        notBy = List.copyOf(notBy);
        lines = List.copyOf(lines);
        if (handsOn < 0 || unattended < 0 || handsOn + unattended < 1) {
            throw new IllegalArgumentException(
                    "task %s cannot take %s + %s minutes".formatted(id, handsOn, unattended));
        }
    }

    /** A task on which nobody insists. */
    public Task(
            String id,
            String name,
            WorkKind kind,
            Skill skill,
            int handsOn,
            int unattended,
            List<String> after,
            List<String> notBy,
            List<String> lines,
            String caution,
            Progress progress) {
        this(id, name, kind, skill, handsOn, unattended, after, notBy, lines, caution, progress, Optional.empty());
    }

    /** A pin ends with the work it is about. */
    public Task with(Progress next) {
        Optional<TaskPin> kept = next.isDone() ? Optional.empty() : pin;
        return new Task(id, name, kind, skill, handsOn, unattended, after, notBy, lines, caution, next, kept);
    }

    public Task withAfter(List<String> ids) {
        return new Task(id, name, kind, skill, handsOn, unattended, ids, notBy, lines, caution, progress, pin);
    }

    public Task withNotBy(List<String> ids) {
        return new Task(id, name, kind, skill, handsOn, unattended, after, ids, lines, caution, progress, pin);
    }

    /** The same as another catalogue has it. */
    public Task withMinutes(int nextHandsOn, int nextUnattended) {
        return new Task(
                id, name, kind, skill, nextHandsOn, nextUnattended, after, notBy, lines, caution, progress, pin);
    }

    public Task pinned(Optional<TaskPin> next) {
        return new Task(id, name, kind, skill, handsOn, unattended, after, notBy, lines, caution, progress, next);
    }

    /** Whether a person may do it: with the skill, or where it was lent for this task. */
    public boolean isFor(Person person) {
        return person.may(skill) || pin.filter(held -> held.isTo(person.id())).isPresent();
    }

    /** Whether this is the task of that name, or the same once more in one visit, which has a number behind its name. */
    public boolean isCalled(String name) {
        return id.equals(name)
                || id.startsWith(name + "-") && id.substring(name.length() + 1).matches("\\d+");
    }

    public boolean isDone() {
        return progress.isDone();
    }

    public boolean hasBegun() {
        return progress.hasBegun();
    }
}
