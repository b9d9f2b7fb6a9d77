package org.shedboard.pack;

import java.util.OptionalInt;

/** Takes a task's pin to a minute out again, which nobody but a test does. */
public final class Unpinned {
    private Unpinned() {}

    public static Problem.Task of(Problem.Task task) {
        TaskDraft draft = new TaskDraft(task);
        draft.at = OptionalInt.empty();
        return draft.finish();
    }
}
