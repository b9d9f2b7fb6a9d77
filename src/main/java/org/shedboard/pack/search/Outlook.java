package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * The least that every plan costs: each job's earliest finish if it had the shop to itself and everyone worked day and night. From
 * it come the bound of a plan, and the point at which a plan being made is known to be too dear to go on with.
 */
final class Outlook {
    private final FlatProblem flat;
    private final int latest;
    /** Per job the points for each minute until it is finished. */
    private final long[] flow;
    /** Per job the points for each minute after its promise. */
    private final long[] late;

    private final int[] promise;

    /** The least minutes from a task's completion to its job's. */
    final int[] tail;
    /** The earliest finish of each job. */
    final int[] finish;

    private final int[] shortest;
    private final boolean[] isFilled;

    Outlook(FlatProblem flat) {
        this.flat = flat;
        latest = flat.problem.horizon() * 2 + 1;
        flow = new long[flat.jobs];
        late = new long[flat.jobs];
        promise = new int[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            Problem.Job values = flat.job(job);
            flow[job] = flat.problem.costs().flow() * values.weight();
            late[job] = values.promise().isPresent() ? flat.problem.costs().late() * values.weight() : 0;
            promise[job] = values.promise().orElse(Integer.MAX_VALUE);
        }
        shortest = new int[flat.tasks];
        Arrays.setAll(shortest, this::shortestOf);
        tail = new int[flat.tasks];
        isFilled = new boolean[flat.tasks];
        finish = new int[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            fillTails(job);
            finish[job] = flat.hopeless[job] == null ? earliestFinish(job) : 0;
        }
    }

    private int shortestOf(int task) {
        if (flat.state[task] == FlatProblem.DONE) {
            return 0;
        }
        if (flat.crew[task] == 0 || flat.able[task].length == 0) {
            return flat.unattended[task];
        }
        int least = Integer.MAX_VALUE;
        for (int person : flat.able[task]) {
            least = Math.min(least, flat.minutes[task][person]);
        }
        return least + flat.unattended[task];
    }

    private void fillTails(int job) {
        int later = 0;
        for (int stay = flat.firstStay[job + 1] - 1; stay >= flat.firstStay[job]; stay--) {
            int longest = 0;
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                longest = Math.max(longest, shortest[task] + fillBehind(task));
            }
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                tail[task] += later;
            }
            later += longest;
        }
    }

    /** The least minutes from the task's completion to its stay's, found once and kept in {@link #tail}. */
    private int fillBehind(int task) {
        if (!isFilled[task]) {
            isFilled[task] = true;
            for (int next : flat.behind[task]) {
                tail[task] = Math.max(tail[task], shortest[next] + fillBehind(next));
            }
        }
        return tail[task];
    }

    private int earliestFinish(int job) {
        int earliest = 0;
        for (int task = flat.firstTaskOfJob(job); task < flat.lastTaskOfJob(job); task++) {
            earliest = Math.max(earliest, earliestCompletion(task) + tail[task]);
        }
        return earliest;
    }

    private int earliestCompletion(int task) {
        if (flat.state[task] == FlatProblem.DONE) {
            return flat.task[task].done().orElseThrow().end() + flat.unattended[task];
        }
        if (flat.state[task] == FlatProblem.GOING) {
            int left = flat.task[task].started().orElseThrow().left();
            return flat.problem.now() + left + flat.unattended[task];
        }
        return flat.earliest[task] + shortest[task];
    }

    /** What the job's finish alone costs. */
    long points(int job, int minute) {
        int capped = cap(minute);
        return flow[job] * capped + late[job] * Math.max(0, capped - promise[job]);
    }

    /** A minute so late that it only says that a job does not fit counts as the last of those. */
    int cap(int minute) {
        return Math.min(minute, latest);
    }

    /** Lower bound on the cost of any plan that leaves out so many jobs, be it the dearest ones. */
    long bound(int unplaced) {
        long[] points = new long[flat.jobs];
        Arrays.setAll(points, job -> points(job, finish[job]));
        Arrays.sort(points);
        long sum = 0;
        for (int index = 0; index < flat.jobs - unplaced; index++) {
            sum += points[index];
        }
        int last = unplaced > 0 ? 0 : Arrays.stream(finish).max().orElse(0);
        return sum + flat.problem.costs().makespan() * last;
    }
}
