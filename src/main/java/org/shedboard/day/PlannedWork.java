package org.shedboard.day;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

/** The tasks of a plan by their names, with what the day knows of each: looked up once for a plan, since screens ask at every key. */
record PlannedWork(Map<Name, Planned> tasks) {
    PlannedWork {
        tasks = Map.copyOf(tasks);
    }

    /** A task is named alone within its visit. */
    record Name(String visitId, String taskId) {
        static Name of(Plan.TaskTime time) {
            return new Name(time.job(), time.task());
        }
    }

    /** @param handsFrom the minute from which there are hands on it; of a paused one, which began long ago, when it goes on */
    record Planned(Plan.TaskTime time, Task task, int handsFrom) {}

    /** What a plan of the problem has of the day's visits; tasks that are not the day's are left out. */
    static PlannedWork of(Day day, Problem problem, Plan plan) {
        Map<Name, Task> ofDay = new HashMap<>();
        for (Visit visit : day.visits()) {
            visit.tasks().forEach(task -> ofDay.put(new Name(visit.id(), task.id()), task));
        }
        Map<Name, Problem.Task> ofProblem = new HashMap<>();
        for (Problem.Job job : problem.jobs()) {
            job.stays().stream()
                    .flatMap(stay -> stay.tasks().stream())
                    .forEach(task -> ofProblem.put(new Name(job.id(), task.id()), task));
        }
        Map<Name, Planned> tasks = new HashMap<>();
        for (Plan.TaskTime time : plan.tasks()) {
            Name name = Name.of(time);
            if (ofDay.containsKey(name)) {
                tasks.put(name, planned(time, ofDay.get(name), Optional.ofNullable(ofProblem.get(name))));
            }
        }
        return new PlannedWork(tasks);
    }

    private static Planned planned(Plan.TaskTime time, Task task, Optional<Problem.Task> packed) {
        int left =
                packed.flatMap(Problem.Task::started).map(Problem.Started::left).orElse(0);
        boolean isPaused = task.progress().status() == Progress.Status.PAUSED;
        return new Planned(time, task, isPaused ? Math.max(time.start(), time.end() - left) : time.start());
    }

    Optional<Planned> find(String visitId, String taskId) {
        return Optional.ofNullable(tasks.get(new Name(visitId, taskId)));
    }

    Planned expect(Plan.TaskTime time) {
        return find(time.job(), time.task())
                .orElseThrow(() -> new IllegalArgumentException(
                        "no task %s of visit %s today".formatted(time.task(), time.job())));
    }
}
