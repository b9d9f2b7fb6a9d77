package org.shedboard.pack.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * The earliest that all jobs can be finished, seen from the work that only certain people can do between them. However it is shared
 * out, it is not done before all of them together have had so many minutes, counted from the earliest start of any of it (McNaughton
 * 1959); and after the last of it comes at least the least that follows any of it.
 */
final class Together {
    private final FlatProblem flat;
    private final Earliest earliest;

    Together(FlatProblem flat, Earliest earliest) {
        this.flat = flat;
        this.earliest = earliest;
    }

    /** No plan that leaves out none but hopeless jobs is finished before this minute. */
    int finish() {
        Set<List<Integer>> groups = new LinkedHashSet<>();
        for (int task = 0; task < flat.tasks; task++) {
            if (isAhead(task)) {
                groups.add(Arrays.stream(flat.able[task]).sorted().boxed().toList());
            }
        }
        return groups.stream().mapToInt(this::finish).max().orElse(0);
    }

    private boolean isAhead(int task) {
        boolean isStaffed = flat.state[task] == FlatProblem.OPEN && flat.crew[task] > 0;
        return isStaffed && flat.hopeless[flat.jobOfTask[task]] == null;
    }

    private int finish(List<Integer> people) {
        boolean[] isIn = new boolean[flat.people];
        people.forEach(person -> isIn[person] = true);
        List<Integer> tasks = new ArrayList<>();
        for (int task = 0; task < flat.tasks; task++) {
            if (isAhead(task) && Arrays.stream(flat.able[task]).allMatch(person -> isIn[person])) {
                tasks.add(task);
            }
        }
        int from = tasks.stream().mapToInt(task -> earliest.start[task]).min().orElse(0);
        long work = tasks.stream().mapToLong(this::leastWork).sum();
        int behind =
                tasks.stream().mapToInt(task -> flat.unattended[task]).min().orElse(0);
        return Math.min(flat.problem.horizon(), whenWorked(people, from, work)) + behind;
    }

    private long leastWork(int task) {
        int least = Arrays.stream(flat.able[task])
                .map(person -> flat.minutes[task][person])
                .min()
                .orElse(0);
        return (long) least * flat.crew[task];
    }

    /** The first minute before which the people have worked so long, or the horizon. */
    private int whenWorked(List<Integer> people, int from, long work) {
        int low = from;
        int high = Math.max(from, flat.problem.horizon());
        while (low < high) {
            int middle = low + (high - low) / 2;
            long worked = people.stream()
                    .mapToLong(person -> flat.hours[person].worked(middle) - flat.hours[person].worked(from))
                    .sum();
            if (worked >= work) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
