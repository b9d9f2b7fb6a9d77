package org.shedboard.pack.bound;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * The part of a problem's order that the bound keeps: every task feeds one task that waits for it, or else the end of its stay; the
 * end of a stay feeds one first task of the next stay, or else the end of the job. To leave out the rest of the order only adds
 * plans. Nothing feeds a task that has begun, which waits no more.
 */
final class JobTree {
    static final int STAY_END = -1;

    private final FlatProblem flat;
    private final Earliest earliest;

    /** The task that each task feeds, or {@link #STAY_END}. */
    final int[] feeds;
    /** What feeds each task. */
    final int[][] fedBy;
    /** The task that the end of each stay feeds, -1 for the end of the job. */
    final int[] next;
    /** The task whose start is taken for the moment a stay takes its place; -1 when it has begun. */
    final int[] opener;
    /** Whether the end of the stay before feeds the task. */
    final boolean[] isNext;

    JobTree(FlatProblem flat, Earliest earliest) {
        this.flat = flat;
        this.earliest = earliest;
        feeds = new int[flat.tasks];
        fedBy = new int[flat.tasks][0];
        next = new int[flat.stays];
        opener = new int[flat.stays];
        isNext = new boolean[flat.tasks];
        Arrays.setAll(feeds, task -> longest(flat.behind[task]));
        for (int task = 0; task < flat.tasks; task++) {
            if (feeds[task] >= 0) {
                int[] grown = Arrays.copyOf(fedBy[feeds[task]], fedBy[feeds[task]].length + 1);
                grown[grown.length - 1] = task;
                fedBy[feeds[task]] = grown;
            }
        }
        for (int stay = 0; stay < flat.stays; stay++) {
            int first = longest(firstTasks(stay));
            opener[stay] = flat.stayHasBegun[stay] ? -1 : first;
            next[stay] = -1;
            if (stay > flat.firstStay[flat.jobOfStay[stay]] && first >= 0 && !flat.stayHasBegun[stay]) {
                next[stay - 1] = first;
                isNext[first] = true;
            }
        }
    }

    private int[] firstTasks(int stay) {
        int[] tasks = new int[flat.firstTask[stay + 1] - flat.firstTask[stay]];
        Arrays.setAll(tasks, index -> flat.firstTask[stay] + index);
        return Arrays.stream(tasks)
                .filter(task -> flat.before[task].length == 0)
                .toArray();
    }

    /** The one with the longest way to the end of the stay, of those that have not begun. */
    private int longest(int[] tasks) {
        int found = STAY_END;
        for (int task : tasks) {
            boolean isOpen = flat.state[task] == FlatProblem.OPEN;
            if (isOpen && (found < 0 || earliest.way[task] > earliest.way[found])) {
                found = task;
            }
        }
        return found;
    }
}
