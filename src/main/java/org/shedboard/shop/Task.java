package org.shedboard.shop;

import java.util.List;

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
        Progress progress) {
    public Task {
        after = List.copyOf(after);
        notBy = List.copyOf(notBy);
        lines = List.copyOf(lines);
        if (handsOn < 0 || unattended < 0 || handsOn + unattended < 1) {
            throw new IllegalArgumentException(
                    "task %s cannot take %d + %d minutes".formatted(id, handsOn, unattended));
        }
    }

    public Task with(Progress next) {
        return new Task(id, name, kind, skill, handsOn, unattended, after, notBy, lines, caution, next);
    }

    public Task withAfter(List<String> ids) {
        return new Task(id, name, kind, skill, handsOn, unattended, ids, notBy, lines, caution, progress);
    }

    public Task withNotBy(List<String> ids) {
        return new Task(id, name, kind, skill, handsOn, unattended, after, ids, lines, caution, progress);
    }

    /** The same as another catalogue has it. */
    public Task withMinutes(int nextHandsOn, int nextUnattended) {
        return new Task(id, name, kind, skill, nextHandsOn, nextUnattended, after, notBy, lines, caution, progress);
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
