package org.shedboard.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A day some minutes on, with its plan posted: all that should have begun by then has. */
final class LaterDay {
    /** How a task stands that has begun and is not over. */
    interface Underway {
        Problem.Started at(Plan.TaskTime posted, int now);
    }

    private final Plan posted;
    private final int now;
    private final Underway underway;

    private LaterDay(Plan posted, int now, Underway underway) {
        this.posted = posted;
        this.now = now;
        this.underway = underway;
    }

    static Problem of(Problem before, Plan posted, int now, Underway underway) {
        LaterDay later = new LaterDay(posted, now, underway);
        List<Problem.Job> jobs = before.jobs().stream().map(later::later).toList();
        return before.withJobs(jobs).withNow(now).withPosted(posted);
    }

    private Problem.Job later(Problem.Job job) {
        List<Problem.Stay> stays = new ArrayList<>();
        for (int index = 0; index < job.stays().size(); index++) {
            stays.add(later(job, index));
        }
        return job.withStays(stays);
    }

    private Problem.Stay later(Problem.Job job, int index) {
        Problem.Stay stay = job.stays().get(index);
        List<Problem.Task> tasks = new ArrayList<>();
        for (Problem.Task task : stay.tasks()) {
            Optional<Plan.TaskTime> time = posted.findTask(job.id(), index, task.id());
            boolean hasBegun = time.isPresent() && time.get().start() < now;
            tasks.add(hasBegun ? begun(task, time.get()) : task);
        }
        Problem.Stay begun = stay.withTasks(tasks);
        return begun.hasBegun() && !stay.kinds().isEmpty()
                ? begun.withPlace(posted.findStay(job.id(), index).orElseThrow().place())
                : begun;
    }

    private Problem.Task begun(Problem.Task task, Plan.TaskTime time) {
        return time.end() <= now
                ? task.withDone(new Problem.Done(time.person(), time.start(), time.end()))
                : task.withStarted(underway.at(time, now));
    }
}
