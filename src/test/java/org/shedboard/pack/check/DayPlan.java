package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** A problem with a legal plan of it, line by line. */
final class DayPlan {
    final Problem problem;
    final Plan plan;
    private final List<At> tasks = new ArrayList<>();
    private final List<StayAt> stays = new ArrayList<>();

    /** A task and its line in the plan. */
    static final class At {
        final Problem.Job job;
        final Problem.Stay stay;
        final Problem.Task task;
        final Plan.TaskTime time;

        At(Problem.Job job, Problem.Stay stay, Problem.Task task, Plan.TaskTime time) {
            this.job = job;
            this.stay = stay;
            this.task = task;
            this.time = time;
        }

        boolean isGoing() {
            return task.done().isEmpty()
                    && task.started().flatMap(Problem.Started::person).isPresent();
        }
    }

    /** A stay and its line in the plan. */
    static final class StayAt {
        final Problem.Job job;
        final Problem.Stay stay;
        final Plan.StayPlace place;

        StayAt(Problem.Job job, Problem.Stay stay, Plan.StayPlace place) {
            this.job = job;
            this.stay = stay;
            this.place = place;
        }
    }

    DayPlan(Problem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        for (Problem.Job job : problem.jobs()) {
            for (int index = 0; index < job.stays().size(); index++) {
                Problem.Stay stay = job.stays().get(index);
                for (Problem.Task task : stay.tasks()) {
                    plan.findTask(job.id(), index, task.id())
                            .ifPresent(time -> tasks.add(new At(job, stay, task, time)));
                }
                plan.findStay(job.id(), index).ifPresent(place -> stays.add(new StayAt(job, stay, place)));
            }
        }
    }

    BentPlan bent() {
        return new BentPlan(problem, plan);
    }

    List<At> tasks() {
        return tasks;
    }

    /** Those that have not begun. */
    List<At> open() {
        return tasks.stream().filter(at -> !at.task.hasBegun()).toList();
    }

    List<StayAt> stays() {
        return stays;
    }

    List<StayAt> openStays() {
        return stays.stream().filter(at -> !at.stay.hasBegun()).toList();
    }

    At at(Problem.Job job, int stay, String task) {
        return tasks.stream()
                .filter(at ->
                        at.job == job && at.time.stay() == stay && at.task.id().equals(task))
                .findFirst()
                .orElseThrow();
    }

    int completeOf(Problem.Job job, int stay) {
        return tasks.stream()
                .filter(at -> at.job == job && at.time.stay() == stay)
                .mapToInt(at -> at.time.end() + at.task.unattended())
                .max()
                .orElseThrow();
    }

    /** The minutes from now on during which both are there. */
    Span commonMinutes(StayAt one, StayAt other) {
        int from = Math.max(problem.now(), Math.max(one.place.from(), other.place.from()));
        return Span.of(from, Math.max(from, Math.min(one.place.to(), other.place.to())));
    }

    /** The first minute after the task's end at which nobody of its crew is in; empty when it has no crew. */
    OptionalInt breakAfter(At at) {
        BentPlan bent = bent();
        if (at.time.people().isEmpty()) {
            return OptionalInt.empty();
        }
        int minute = at.time.end() + 1;
        while (isAnyIn(bent, at, minute)) {
            minute++;
        }
        return OptionalInt.of(minute);
    }

    private static boolean isAnyIn(BentPlan bent, At at, int minute) {
        return at.time.people().stream()
                .anyMatch(person -> bent.hours.get(person).isIn(minute));
    }
}
