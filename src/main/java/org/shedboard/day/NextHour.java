package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * What starts within the hour: people have put their tools out for it, so that it is moved for a promise or for one machine more,
 * and for nothing less.
 */
public final class NextHour {
    static final int MINUTES = 60;

    private NextHour() {}

    /** The same problem in which every task that the plan starts within the hour is pinned to its minute, person and place. */
    public static Problem kept(Problem problem, Plan plan) {
        return problem.withJobs(problem.jobs().stream()
                .map(job -> job.withStays(IntStream.range(0, job.stays().size())
                        .mapToObj(stay -> kept(problem, plan, job, stay))
                        .toList()))
                .toList());
    }

    private static Problem.Stay kept(Problem problem, Plan plan, Problem.Job job, int index) {
        Problem.Stay stay = job.stays().get(index);
        List<Problem.Task> tasks = stay.tasks().stream()
                .map(task -> startOf(plan, job, index, task)
                        .filter(time -> !task.hasBegun() && isWithin(problem, time.start()))
                        .map(time -> pinned(task, time))
                        .orElse(task))
                .toList();
        Optional<Plan.StayPlace> place = plan.findStay(job.id(), index);
        boolean isKept = !tasks.equals(stay.tasks()) && place.isPresent();
        return (isKept ? stay.withPlace(place.get().place()) : stay).withTasks(tasks);
    }

    private static Problem.Task pinned(Problem.Task task, Plan.TaskTime time) {
        Problem.Task there = task.withAt(time.start());
        return time.person().map(there::withPerson).orElse(there);
    }

    private static Optional<Plan.TaskTime> startOf(Plan plan, Problem.Job job, int stay, Problem.Task task) {
        return plan.tasks().stream()
                .filter(time -> time.job().equals(job.id())
                        && time.stay() == stay
                        && time.task().equals(task.id()))
                .findFirst();
    }

    static boolean isWithin(Problem problem, int minute) {
        return minute >= problem.now() && minute < problem.now() + MINUTES;
    }
}
