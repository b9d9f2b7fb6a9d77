package org.shedboard.pack.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * The earliest start and completion of each task and the earliest finish of each job, as if the job had the shop to itself.
 *
 * <p>Why no plan can be earlier: a task starts after everything it waits for, and whoever does it works inside their own windows
 * without skipping one, so that the best of those who may do it, started as early as can be, is no later than whoever does it. Tasks
 * that only one person can do are done one after the other: of any such tasks none of which can start before some minute, the last
 * ends no earlier than that person is through with all their minutes, counted from there. What has begun waits for nothing more.
 */
final class Earliest {
    private final FlatProblem flat;

    final int[] start;
    final int[] complete;
    final int[] finish;
    /** Who alone can do the task, -1 when nobody or more than one. */
    final int[] only;
    /** The tasks of each stay, every one after those it waits for. */
    final int[] order;
    /** The least minutes from a task's start to its stay's end. */
    final int[] way;

    Earliest(FlatProblem flat) {
        this.flat = flat;
        start = new int[flat.tasks];
        complete = new int[flat.tasks];
        finish = new int[flat.jobs];
        only = new int[flat.tasks];
        order = new int[flat.tasks];
        way = new int[flat.tasks];
        Arrays.setAll(only, this::onlyOf);
        for (int job = 0; job < flat.jobs; job++) {
            int ready = 0;
            for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
                sort(stay);
                ready = Math.max(ready, completeStay(stay, ready));
            }
            finish[job] = ready;
        }
        for (int index = flat.tasks - 1; index >= 0; index--) {
            way[order[index]] = wayFrom(order[index]);
        }
    }

    private int wayFrom(int task) {
        int longest = 0;
        for (int next : flat.behind[task]) {
            longest = Math.max(longest, way[next]);
        }
        return Math.min(Hours.FAR, shortest(task) + longest);
    }

    private int shortest(int task) {
        if (flat.state[task] == FlatProblem.DONE) {
            return 0;
        }
        int least = 0;
        if (only[task] >= 0) {
            least = flat.minutes[task][only[task]];
        } else if (flat.crew[task] > 0) {
            least = Arrays.stream(flat.able[task])
                    .map(person -> flat.minutes[task][person])
                    .min()
                    .orElse(0);
        }
        return least + flat.unattended[task];
    }

    private int onlyOf(int task) {
        if (flat.state[task] == FlatProblem.GOING) {
            return flat.begunBy[task];
        }
        if (flat.state[task] == FlatProblem.DONE || flat.crew[task] == 0) {
            return -1;
        }
        if (flat.state[task] == FlatProblem.OPEN && flat.pinnedTo[task] >= 0 && flat.crew[task] == 1) {
            return flat.pinnedTo[task];
        }
        return flat.able[task].length == 1 ? flat.able[task][0] : -1;
    }

    private void sort(int stay) {
        int[] open = new int[flat.firstTask[stay + 1] - flat.firstTask[stay]];
        int next = flat.firstTask[stay];
        int last = next;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            open[task - flat.firstTask[stay]] = flat.before[task].length;
            if (flat.before[task].length == 0) {
                order[last++] = task;
            }
        }
        while (next < last) {
            for (int behind : flat.behind[order[next++]]) {
                if (--open[behind - flat.firstTask[stay]] == 0) {
                    order[last++] = behind;
                }
            }
        }
    }

    private int completeStay(int stay, int ready) {
        int first = flat.firstTask[stay];
        int opens = flat.stayHasBegun[stay] ? 0 : firstOpen(stay, ready);
        int latest = opens;
        for (int index = first; index < flat.firstTask[stay + 1]; index++) {
            int task = order[index];
            start[task] = startOf(task, opens);
            complete[task] = completeOf(task);
            latest = Math.max(latest, complete[task]);
        }
        int[] all = Arrays.copyOfRange(order, first, flat.firstTask[stay + 1]);
        return Math.max(latest, oneAfterTheOther(all));
    }

    private int firstOpen(int stay, int ready) {
        int earliest = flat.placesOfStay[stay].length == 0 ? ready : Hours.FAR;
        for (int place : flat.placesOfStay[stay]) {
            int from = ready;
            for (Span span : flat.closed[place]) {
                from = span.contains(from) ? span.to() : from;
            }
            earliest = Math.min(earliest, from);
        }
        return earliest;
    }

    private boolean hasBegun(int task) {
        return flat.state[task] != FlatProblem.OPEN;
    }

    private int startOf(int task, int opens) {
        if (hasBegun(task)) {
            return flat.problem.now();
        }
        int earliest = Math.max(Math.max(opens, flat.earliest[task]), flat.at[task]);
        for (int waited : flat.before[task]) {
            earliest = Math.max(earliest, complete[waited]);
        }
        return flat.before[task].length < 2 ? earliest : Math.max(earliest, oneAfterTheOther(waitedFor(task)));
    }

    private int[] waitedFor(int task) {
        int first = flat.firstTask[flat.stayOfTask[task]];
        boolean[] isSeen = new boolean[flat.firstTask[flat.stayOfTask[task] + 1] - first];
        List<Integer> found = new ArrayList<>(List.of(task));
        for (int next = 0; next < found.size(); next++) {
            for (int waited : flat.before[found.get(next)]) {
                if (!isSeen[waited - first] && !hasBegun(found.get(next))) {
                    isSeen[waited - first] = true;
                    found.add(waited);
                }
            }
        }
        return found.stream().skip(1).mapToInt(Integer::intValue).toArray();
    }

    private int completeOf(int task) {
        if (flat.state[task] == FlatProblem.DONE) {
            return flat.task[task].done().orElseThrow().end() + flat.unattended[task];
        }
        int end = start[task];
        if (only[task] >= 0) {
            end = endBy(only[task], start[task], flat.minutes[task][only[task]]);
        } else if (flat.crew[task] > 0 && flat.able[task].length > 0) {
            end = Hours.FAR;
            for (int person : flat.able[task]) {
                end = Math.min(end, endBy(person, start[task], flat.minutes[task][person]));
            }
        }
        return Math.min(Hours.FAR, end + flat.unattended[task]);
    }

    private int endBy(int person, int from, long minutes) {
        Hours hours = flat.hours[person];
        long work = hours.worked(from) + minutes;
        return minutes == 0 ? from : work > Hours.FAR ? Hours.FAR : Math.min(Hours.FAR, hours.end((int) work));
    }

    private int oneAfterTheOther(int[] tasks) {
        int latest = 0;
        List<Integer> sorted = Arrays.stream(tasks)
                .filter(task -> only[task] >= 0)
                .boxed()
                .sorted(Comparator.comparingInt(task -> -start[task]))
                .toList();
        long[] minutes = new long[flat.people];
        for (int task : sorted) {
            int person = only[task];
            minutes[person] += flat.minutes[task][person];
            latest = Math.max(latest, endBy(person, start[task], minutes[person]));
        }
        return latest;
    }
}
