package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/** Chooses who does a task, and books them. Part of the decoder. */
final class Crews {
    private final Decoder decoder;
    private final FlatProblem flat;
    private final Roster roster;
    private final Candidates candidates;
    private final long overtime;
    private final long handover;
    private final long swapped;
    /** Points that a minute is taken to cost where people are compared. */
    private final long[] rate;

    /** How many are on each task or did it; -1 while that is not known. */
    final int[] size;
    /** Who they are, from the task's slot on; the one named first in the plan stands first. */
    final int[] who;
    /** The first working minute of each of them. */
    final int[] work;
    /** Per person the first minute at which they could start. */
    private final int[] gap;

    private final int[] sortedGaps;
    private final int[] picked;

    private final int[] pinnedTasks;

    Crews(Decoder decoder) {
        this.decoder = decoder;
        flat = decoder.flat;
        roster = decoder.roster;
        candidates = new Candidates(flat, this);
        Costs costs = flat.problem.costs();
        overtime = costs.overtime();
        handover = costs.handover();
        swapped = costs.swapped();
        rate = new long[flat.jobs];
        Arrays.setAll(rate, job -> Math.max(1, costs.flow() * flat.job(job).weight()));
        size = new int[flat.tasks];
        who = new int[flat.slots];
        work = new int[flat.slots];
        gap = new int[flat.people];
        sortedGaps = new int[flat.people];
        picked = new int[flat.people];
        pinnedTasks = FlatProblem.numbersOf(
                flat.tasks,
                task -> flat.at[task] >= 0 && flat.crew[task] > 0 && flat.hopeless[flat.jobOfTask[task]] == null);
    }

    void clear() {
        Arrays.fill(size, -1);
    }

    boolean isKnown(int task) {
        return size[task] >= 0;
    }

    /** How many do the task or did it, as far as they are known. */
    int sizeOf(int task) {
        return Math.max(0, size[task]);
    }

    boolean isOn(int task, int person) {
        int slot = flat.slot[task];
        for (int member = slot; member < slot + size[task]; member++) {
            if (who[member] == person) {
                return true;
            }
        }
        return false;
    }

    /** The person named first; -1 where there is none. */
    int first(int task) {
        return size[task] > 0 ? who[flat.slot[task]] : -1;
    }

    void setDone(int task) {
        size[task] = 0;
        if (flat.begunBy[task] >= 0) {
            size[task] = 1;
            who[flat.slot[task]] = flat.begunBy[task];
            decoder.running.putHandsOn(flat.stayOfTask[task], flat.begunBy[task]);
        }
    }

    void needNobody(int task) {
        size[task] = 0;
    }

    /** The named person goes on from now, before anything else. */
    int goOn(int task, int left) {
        int person = flat.begunBy[task];
        int from = roster.findGap(person, flat.hours[person].worked(flat.problem.now()), left, false);
        size[task] = 1;
        book(task, flat.slot[task], person, from);
        return flat.hours[person].end(from + left);
    }

    /** What is pinned to a minute has its people before anything else is given to them. */
    void bookPins() {
        for (int task : pinnedTasks) {
            if (!decoder.isLeftOut(flat.jobOfTask[task])) {
                assign(task, flat.at[task]);
                if (decoder.start[task] != flat.at[task]) {
                    decoder.miss(flat.jobOfTask[task]);
                }
            }
        }
    }

    void retrace(int task, Timetable before) {
        if (isKnown(task)) {
            return;
        }
        size[task] = before.size[task];
        int slot = flat.slot[task];
        for (int member = slot; member < slot + size[task]; member++) {
            book(task, member, before.who[member], before.work[member]);
        }
    }

    void assign(int task, int earliest) {
        if (!isKnown(task)) {
            if (!candidates.find(task, decoder.solution.crew)) {
                decoder.miss(flat.jobOfTask[task]);
            }
            if (flat.crew[task] == 1) {
                assignOne(task, earliest);
            } else {
                assignSeveral(task, earliest);
            }
        }
        settle(task);
    }

    private void settle(int task) {
        int start = Hours.FAR;
        int end = 0;
        int slot = flat.slot[task];
        for (int member = slot; member < slot + size[task]; member++) {
            Hours hours = flat.hours[who[member]];
            start = Math.min(start, hours.wall(work[member]));
            end = Math.max(end, hours.end(work[member] + flat.minutes[task][who[member]]));
        }
        decoder.start[task] = start;
        decoder.end[task] = end;
    }

    private void book(int task, int member, int person, int from) {
        int minutes = flat.minutes[task][person];
        who[member] = person;
        work[member] = from;
        roster.book(person, from, minutes);
        decoder.running.work(person, from, from + minutes);
        decoder.running.putHandsOn(flat.stayOfTask[task], person);
    }

    private int gapFor(int task, int person, int earliest) {
        Hours hours = flat.hours[person];
        int minutes = flat.minutes[task][person];
        boolean noOvertime = decoder.solution.noOvertime[task];
        int from = roster.findGap(person, hours.worked(earliest), minutes, noOvertime);
        int stay = flat.stayOfTask[task];
        int place = decoder.placeOfStay[stay];
        if (place < 0 || !flat.stayHasBegun[stay] || flat.closed[place].length == 0) {
            return from;
        }
        for (Span span : flat.closed[place]) {
            int shut = hours.worked(span.from());
            int open = hours.worked(span.to());
            if (shut < open && from < open && shut < from + minutes) {
                from = roster.findGap(person, open, minutes, noOvertime);
            }
        }
        return from;
    }

    /** The first minute at which one of those who may do the task is free of all they have been given so far. */
    int likelyStart(int task, int earliest) {
        int soonest = Hours.FAR;
        for (int person : flat.able[task]) {
            int free = roster.freeFrom(person);
            Hours hours = flat.hours[person];
            soonest = Math.min(soonest, free >= earliest ? free : hours.wall(hours.worked(earliest)));
            if (soonest <= earliest) {
                return soonest;
            }
        }
        return soonest;
    }

    private void assignOne(int task, int earliest) {
        int best = candidates.people[0];
        int bestFrom = gapFor(task, best, earliest);
        if (candidates.count > 1) {
            long bestScore = score(task, best, bestFrom);
            for (int index = 1; index < candidates.count; index++) {
                int person = candidates.people[index];
                if (scoreAtOnce(task, person, earliest) >= bestScore) {
                    continue;
                }
                int from = gapFor(task, person, earliest);
                long score = score(task, person, from);
                if (score < bestScore) {
                    best = person;
                    bestFrom = from;
                    bestScore = score;
                }
            }
        }
        size[task] = 1;
        book(task, flat.slot[task], best, bestFrom);
    }

    /** What it would cost at least: if the person were free at once. */
    private long scoreAtOnce(int task, int person, int earliest) {
        int minutes = flat.minutes[task][person];
        return rate[flat.jobOfTask[task]] * (earliest + minutes + worth(task, person)) + standing(task, person);
    }

    /** The minutes that the person's work counts as, at their price. */
    private long worth(int task, int person) {
        return (long) decoder.solution.price[person] * flat.minutes[task][person] >> 4;
    }

    /** What the person costs whenever it is. */
    private long standing(int task, int person) {
        boolean isSwapped = flat.postedStart[task] >= 0 && flat.postedPerson[task] != person;
        boolean isHandover = handover > 0 && decoder.running.isHandover(flat.stayOfTask[task], person);
        return (isSwapped ? swapped : 0) + (isHandover ? handover : 0);
    }

    /** What it costs, seen from here, that this person does the task from that working minute on. */
    private long score(int task, int person, int from) {
        Hours hours = flat.hours[person];
        int to = from + flat.minutes[task][person];
        long score = rate[flat.jobOfTask[task]] * (hours.end(to) + worth(task, person));
        if (overtime > 0) {
            score += overtime * (hours.overtimeBefore(to) - hours.overtimeBefore(from));
        }
        return score + standing(task, person);
    }

    /** They start together, each at a minute inside a window of their own: the first minute that suits enough of them. */
    private void assignSeveral(int task, int earliest) {
        int crew = flat.crew[task];
        int minute = earliest;
        int ready = findReady(task, minute);
        while (ready < crew || !pinIsReady(task, minute)) {
            minute = nextMinute(task, minute);
            ready = findReady(task, minute);
        }
        pickReady(task, minute);
        size[task] = crew;
        for (int member = 0; member < crew; member++) {
            book(task, flat.slot[task] + member, picked[member], flat.hours[picked[member]].worked(minute));
        }
    }

    private int findReady(int task, int minute) {
        int ready = 0;
        for (int index = 0; index < candidates.count; index++) {
            int person = candidates.people[index];
            gap[person] = flat.hours[person].wall(gapFor(task, person, minute));
            ready += gap[person] == minute ? 1 : 0;
        }
        return ready;
    }

    private boolean pinIsReady(int task, int minute) {
        int pinned = candidates.pinOf(task);
        return pinned < 0 || gap[pinned] == minute;
    }

    /** Before this minute too few of them, or not the pinned one, can start. */
    private int nextMinute(int task, int minute) {
        for (int index = 0; index < candidates.count; index++) {
            sortedGaps[index] = gap[candidates.people[index]];
        }
        Arrays.sort(sortedGaps, 0, candidates.count);
        int enough = sortedGaps[flat.crew[task] - 1];
        int pinned = candidates.pinOf(task);
        return Math.max(minute + 1, pinned < 0 ? enough : Math.max(enough, gap[pinned]));
    }

    private void pickReady(int task, int minute) {
        int pinned = candidates.pinOf(task);
        int count = 0;
        if (pinned >= 0) {
            picked[count++] = pinned;
        }
        while (count < flat.crew[task]) {
            int best = -1;
            long bestScore = Long.MAX_VALUE;
            for (int index = 0; index < candidates.count; index++) {
                int person = candidates.people[index];
                boolean free = gap[person] == minute && !isPicked(person, count);
                long score = free ? score(task, person, flat.hours[person].worked(minute)) : Long.MAX_VALUE;
                if (score < bestScore) {
                    best = person;
                    bestScore = score;
                }
            }
            picked[count++] = best;
        }
        if (pinned < 0) {
            putPostedFirst(task);
        }
    }

    private boolean isPicked(int person, int count) {
        for (int index = 0; index < count; index++) {
            if (picked[index] == person) {
                return true;
            }
        }
        return false;
    }

    private void putPostedFirst(int task) {
        for (int index = 1; index < flat.crew[task]; index++) {
            if (picked[index] == flat.postedPerson[task]) {
                picked[index] = picked[0];
                picked[0] = flat.postedPerson[task];
            }
        }
    }
}
