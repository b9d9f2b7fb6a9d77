package org.shedboard.pack.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * The earliest that all jobs can be finished, seen from one person's work alone: the tasks only they can do, each from its earliest
 * start on and with the least time from its end to its job's finish. If they could put work down and take it up again, always going
 * on with what has the longest time behind it would be best (Jackson 1955, as a bound in Carlier 1982), breaks or no breaks; so no
 * plan is quicker.
 */
final class OneByOne {
    private final FlatProblem flat;
    private final Earliest earliest;

    OneByOne(FlatProblem flat, Earliest earliest) {
        this.flat = flat;
        this.earliest = earliest;
    }

    /** A task with its person's working minutes: the first one it can start at, and how many it takes. */
    private record Work(int from, int tail, int[] left) {}

    /** No plan that leaves out none but hopeless jobs is finished before this minute. */
    int finish() {
        List<List<Work>> works = new ArrayList<>();
        for (int person = 0; person < flat.people; person++) {
            works.add(new ArrayList<>());
        }
        for (int job = 0; job < flat.jobs; job++) {
            if (flat.hopeless[job] == null) {
                addJob(job, works);
            }
        }
        int latest = 0;
        for (int person = 0; person < flat.people; person++) {
            latest = Math.max(latest, finish(works.get(person), flat.hours[person]));
        }
        return latest;
    }

    private void addJob(int job, List<List<Work>> works) {
        int later = 0;
        for (int stay = flat.firstStay[job + 1] - 1; stay >= flat.firstStay[job]; stay--) {
            int longest = 0;
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                int person = earliest.only[task];
                if (person >= 0) {
                    works.get(person).add(workOf(task, person, flat.jobHasBegun[job] ? 0 : later));
                }
                longest = Math.max(longest, earliest.way[task]);
            }
            later = Math.min(Hours.FAR, later + longest);
        }
    }

    private Work workOf(int task, int person, int later) {
        int minutes = flat.minutes[task][person];
        int behind = flat.jobHasBegun[flat.jobOfTask[task]] ? 0 : earliest.way[task] - minutes;
        int[] left = {minutes};
        return new Work(flat.hours[person].worked(earliest.start[task]), Math.min(Hours.FAR, behind + later), left);
    }

    private static int finish(List<Work> works, Hours hours) {
        works.sort(Comparator.comparingInt(Work::from));
        PriorityQueue<Work> ready = new PriorityQueue<>(Comparator.comparingInt(work -> -work.tail));
        long minute = 0;
        long latest = 0;
        int next = 0;
        while (next < works.size() || !ready.isEmpty()) {
            minute = ready.isEmpty() ? Math.max(minute, works.get(next).from) : minute;
            for (; next < works.size() && works.get(next).from <= minute; next++) {
                ready.add(works.get(next));
            }
            Work work = ready.peek();
            long until = next < works.size() ? works.get(next).from : Long.MAX_VALUE;
            long done = Math.min(work.left[0], until - minute);
            minute += done;
            work.left[0] -= (int) done;
            if (work.left[0] == 0) {
                ready.remove();
                latest = Math.max(latest, done == 0 ? 0 : endOf(hours, minute) + work.tail);
            }
        }
        return (int) Math.min(Hours.FAR, latest);
    }

    private static long endOf(Hours hours, long minute) {
        return minute > Hours.FAR ? Hours.FAR : hours.end((int) minute);
    }
}
