package org.shedboard.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Who does what where and when. Everything is listed in the problem's order of jobs, stays and tasks.
 *
 * @param bound proven lower bound on the cost of any plan with as few unplaced jobs, 0 where none is known
 * @param millis how long the search took; 0 until the shell, which has the clock, says so
 */
public record Plan(
        long cost,
        long bound,
        List<Unplaced> unplaced,
        List<StayPlace> stays,
        List<TaskTime> tasks,
        long seed,
        long tries,
        long millis) {

    public Plan {
        unplaced = List.copyOf(unplaced);
        stays = List.copyOf(stays);
        tasks = List.copyOf(tasks);
    }

    /** A job that is left out whole, and the reason. */
    public record Unplaced(String job, String why) {}

    /** Where a stay is, from the start of its first task to the completion of its last one. */
    public record StayPlace(String job, int stay, String place, int from, int to) {}

    /** The hands-on work of one task. {@code with} are further people where it takes more than one. */
    public record TaskTime(
            String job, int stay, String task, Optional<String> person, List<String> with, int start, int end) {
        public TaskTime {
            with = List.copyOf(with);
        }

        /** Everyone on the task, the person named first. */
        public List<String> people() {
            List<String> all = new ArrayList<>(person.stream().toList());
            all.addAll(with);
            return all;
        }
    }

    public Optional<TaskTime> findTask(String job, int stay, String task) {
        return tasks.stream()
                .filter(time -> time.job.equals(job) && time.stay == stay && time.task.equals(task))
                .findFirst();
    }

    public Optional<StayPlace> findStay(String job, int stay) {
        return stays.stream()
                .filter(at -> at.job.equals(job) && at.stay == stay)
                .findFirst();
    }

    public Optional<Unplaced> findUnplaced(String job) {
        return unplaced.stream().filter(left -> left.job.equals(job)).findFirst();
    }

    /** The minute of the job's last completion; empty when the job is not placed. */
    public OptionalInt finishOf(Problem.Job job) {
        return tasks.stream()
                .filter(time -> time.job.equals(job.id()))
                .mapToInt(time -> time.end + unattended(job.stays().get(time.stay), time.task))
                .max();
    }

    private static int unattended(Problem.Stay stay, String taskId) {
        return stay.tasks().stream()
                .filter(task -> task.id().equals(taskId))
                .mapToInt(Problem.Task::unattended)
                .sum();
    }

    /** Fewer unplaced jobs always beat cost. */
    public boolean isBetterThan(Plan other) {
        int fewer = Integer.compare(unplaced.size(), other.unplaced.size());
        return fewer < 0 || (fewer == 0 && cost < other.cost);
    }

    public Plan withMillis(long taken) {
        return new Plan(cost, bound, unplaced, stays, tasks, seed, tries, taken);
    }

    public Plan withSearch(Search search) {
        return new Plan(cost, bound, unplaced, stays, tasks, search.seed(), search.tries(), millis);
    }

    public Plan withBound(long proven) {
        return new Plan(cost, proven, unplaced, stays, tasks, seed, tries, millis);
    }
}
