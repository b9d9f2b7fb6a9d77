package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** One task of a problem, and what is known of it before anything is decided. */
final class Work {
    final Problem.Job job;
    final int stayIndex;
    final Problem.Task task;
    /** What must be complete before this starts: named in after, or of the stay before. */
    final List<Work> before = new ArrayList<>();
    /** Who may do it, and the minutes each would take from now on. */
    final Map<String, Integer> able = new LinkedHashMap<>();
    /** When the place is closed to work on it; only what already stands there has to mind. */
    final List<Span> closed = new ArrayList<>();
    /** When the hands-on work is over, or will be, where that is settled; else -1. */
    int settledEnd = -1;
    /** No plan starts it earlier. */
    int earliest;
    /** No plan worth looking at has it complete later. */
    int latestComplete;

    Work(Problem.Job job, int stayIndex, Problem.Task task) {
        this.job = job;
        this.stayIndex = stayIndex;
        this.task = task;
    }

    boolean isSettled() {
        return settledEnd >= 0;
    }

    boolean isInterrupted() {
        return task.started().isPresent() && !isGoing();
    }

    boolean isGoing() {
        return task.done().isEmpty()
                && task.started().flatMap(Problem.Started::person).isPresent();
    }

    /** How many it still takes. */
    int crew() {
        return isSettled() || task.handsOn() == 0 ? 0 : task.people();
    }

    /** The person of a begun task that is not to be picked up by others; empty where anyone may do it. */
    List<String> settledPeople() {
        if (task.done().isPresent()) {
            return task.done().get().person().stream().toList();
        }
        return isGoing() ? task.started().orElseThrow().person().stream().toList() : List.of();
    }

    int latestEnd() {
        return latestComplete - task.unattended();
    }

    boolean is(String jobId, int stay, String taskId) {
        return job.id().equals(jobId) && stayIndex == stay && task.id().equals(taskId);
    }
}
