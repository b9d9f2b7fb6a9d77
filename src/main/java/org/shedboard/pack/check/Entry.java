package org.shedboard.pack.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** One task of a placed job with the time the plan gives it. */
record Entry(Problem.Job job, int stayIndex, Problem.Task task, Plan.TaskTime time, Map<String, Windows> hours) {
    Problem.Stay stay() {
        return job.stays().get(stayIndex);
    }

    boolean isDone() {
        return task.done().isPresent();
    }

    boolean isGoing() {
        return !isDone() && task.started().flatMap(Problem.Started::person).isPresent();
    }

    boolean isInterrupted() {
        return !isDone() && task.started().isPresent() && !isGoing();
    }

    int complete() {
        return time.end() + task.unattended();
    }

    /** The hands-on minutes this person still has, or had, to do from {@link #workStart} on. */
    int minutesOf(String person) {
        return task.started().map(Problem.Started::left).orElse(task.minutesBy(person));
    }

    /** How many it takes from now on: someone who goes on with a task does so alone. */
    int crew() {
        return task.handsOn() == 0 ? 0 : isGoing() ? 1 : task.people();
    }

    /**
     * The minute at which the work still to be judged starts. An interrupted task is listed from where it began, so that the minute it
     * was picked up again is reckoned back from its end.
     */
    int workStart(int now) {
        if (isGoing()) {
            return now;
        }
        if (!isInterrupted()) {
            return time.start();
        }
        int start = Integer.MAX_VALUE;
        for (String person : time.people()) {
            Optional<Windows> windows = Optional.ofNullable(hours.get(person));
            start = Math.min(
                    start,
                    windows.map(w -> w.startFor(time.end(), minutesOf(person))).orElse(now));
        }
        return start == Integer.MAX_VALUE ? now : start;
    }

    /** The spans in which the person works on it from {@code now} on; empty when their hours do not reach. */
    List<Windows.Stretch> workOf(String person, int now) {
        if (isDone() || !hours.containsKey(person)) {
            return List.of();
        }
        return hours.get(person).work(workStart(now), minutesOf(person));
    }

    Breach breach(Rule rule, String what, Object... values) {
        return new Breach(rule, job.id(), stayIndex, task.id(), what.formatted(values));
    }
}
