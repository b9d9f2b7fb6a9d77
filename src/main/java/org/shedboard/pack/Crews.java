package org.shedboard.pack;

import java.util.Arrays;

/** Chooses who does a task, and books them. Part of the decoder. */
final class Crews {
    private static final int[] NOBODY = {};

    private final Decoder decoder;
    private final FlatProblem flat;
    private final Roster roster;
    private final Costs costs;

    /** Who does each task from now on, or did it; the person named first in the plan stands first. */
    final int[][] who;
    /** The first working minute of each of them. */
    final int[][] work;

    private final int[] gap;
    private final int[] candidates;
    private int candidateCount;

    Crews(Decoder decoder) {
        this.decoder = decoder;
        flat = decoder.flat;
        roster = decoder.roster;
        costs = flat.problem.costs();
        who = new int[flat.tasks][];
        work = new int[flat.tasks][];
        gap = new int[flat.people];
        candidates = new int[flat.people];
    }

    void setBegun(int task) {
        who[task] = flat.begunBy[task] < 0 ? NOBODY : new int[] {flat.begunBy[task]};
        work[task] = NOBODY;
    }

    /** The named person goes on from now, before anything else. */
    int goOn(int task, int left) {
        int person = flat.begunBy[task];
        int from = roster.findGap(person, flat.hours[person].worked(flat.problem.now()), left, false);
        roster.book(person, from, left);
        who[task] = new int[] {person};
        work[task] = new int[] {from};
        return flat.hours[person].end(from + left);
    }

    /** What is pinned to a minute has its people before anything else is given to them. */
    void bookPins() {
        for (int task = 0; task < flat.tasks; task++) {
            who[task] = decoder.isSet[task] ? who[task] : null;
        }
        for (int task = 0; task < flat.tasks; task++) {
            if (flat.at[task] >= 0 && flat.crew[task] > 0 && flat.hopeless[flat.jobOfTask[task]] == null) {
                assign(task, flat.at[task]);
                boolean late = decoder.start[task] != flat.at[task];
                decoder.missed[flat.jobOfTask[task]] |= late;
            }
        }
    }

    void assign(int task, int earliest) {
        if (who[task] != null) {
            settle(task);
            return;
        }
        findCandidates(task);
        if (flat.crew[task] == 1) {
            assignOne(task, earliest);
        } else {
            assignSeveral(task, earliest);
        }
        settle(task);
    }

    private void settle(int task) {
        int start = Hours.FAR;
        int end = 0;
        for (int member = 0; member < who[task].length; member++) {
            int person = who[task][member];
            int from = work[task][member];
            start = Math.min(start, flat.hours[person].wall(from));
            end = Math.max(end, flat.hours[person].end(from + flat.minutes[task][person]));
        }
        decoder.start[task] = start;
        decoder.end[task] = end;
    }

    private void findCandidates(int task) {
        candidateCount = 0;
        int[] wanted = decoder.solution.crew[task];
        if (wanted != null) {
            collect(task, wanted, true);
            if (candidateCount == flat.crew[task] && holdsPin(task)) {
                return;
            }
        }
        candidateCount = 0;
        collect(task, flat.able[task], true);
        if (candidateCount < flat.crew[task] || !holdsPin(task)) {
            decoder.missed[flat.jobOfTask[task]] = true;
            candidateCount = 0;
            collect(task, flat.able[task], false);
        }
    }

    private void collect(int task, int[] people, boolean apart) {
        int pinned = pinned(task);
        for (int person : people) {
            boolean wanted = flat.crew[task] > 1 || pinned < 0 || pinned == person;
            if (wanted && (!apart || mayDo(task, person)) && isAble(task, person)) {
                candidates[candidateCount++] = person;
            }
        }
    }

    private int pinned(int task) {
        return flat.state[task] == FlatProblem.OPEN ? flat.pinnedTo[task] : -1;
    }

    private boolean holdsPin(int task) {
        int pinned = pinned(task);
        for (int index = 0; index < candidateCount; index++) {
            if (candidates[index] == pinned) {
                return true;
            }
        }
        return pinned < 0;
    }

    private boolean isAble(int task, int person) {
        for (int able : flat.able[task]) {
            if (able == person) {
                return true;
            }
        }
        return false;
    }

    /** Nobody signs off their own work, and somebody must be left for the task that has to be done by another. */
    private boolean mayDo(int task, int person) {
        for (int other : flat.apart[task]) {
            if (who[other] != null ? contains(who[other], person) : leavesTooFew(other, person)) {
                return false;
            }
        }
        return true;
    }

    /** Whoever did, or will do, one of the tasks that the other is apart from is lost to it as this person would be. */
    private boolean leavesTooFew(int other, int person) {
        int left = 0;
        for (int able : flat.able[other]) {
            left += able != person && !isLost(other, able) ? 1 : 0;
        }
        int pin = pinned(other);
        return left < flat.crew[other] || (pin >= 0 && pin == person);
    }

    private boolean isLost(int task, int person) {
        for (int other : flat.apart[task]) {
            if (who[other] != null && contains(who[other], person)) {
                return true;
            }
        }
        return false;
    }

    static boolean contains(int[] people, int person) {
        for (int one : people) {
            if (one == person) {
                return true;
            }
        }
        return false;
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

    /** The first minute at which enough of those who may do the task are free; they may not be free together. */
    int likelyStart(int task, int earliest) {
        int soonest = Hours.FAR;
        for (int person : flat.able[task]) {
            int from = roster.findGap(person, flat.hours[person].worked(earliest), flat.minutes[task][person], false);
            soonest = Math.min(soonest, flat.hours[person].wall(from));
        }
        return soonest;
    }

    private void assignOne(int task, int earliest) {
        int best = -1;
        int bestFrom = 0;
        long bestScore = Long.MAX_VALUE;
        for (int index = 0; index < candidateCount; index++) {
            int person = candidates[index];
            int from = gapFor(task, person, earliest);
            long score = score(task, person, from);
            if (score < bestScore) {
                best = person;
                bestFrom = from;
                bestScore = score;
            }
        }
        who[task] = new int[] {best};
        work[task] = new int[] {bestFrom};
        roster.book(best, bestFrom, flat.minutes[task][best]);
    }

    /** What it costs, seen from here, that this person does the task from that working minute on. */
    private long score(int task, int person, int from) {
        Hours hours = flat.hours[person];
        int to = from + flat.minutes[task][person];
        long rate = Math.max(1, costs.flow() * flat.job(flat.jobOfTask[task]).weight());
        long score = rate * hours.end(to);
        if (costs.overtime() > 0) {
            score += costs.overtime() * (hours.overtimeBefore(to) - hours.overtimeBefore(from));
        }
        if (costs.handover() > 0 && candidateCount > 1 && isNewOnStay(task, person)) {
            score += costs.handover();
        }
        if (flat.postedStart[task] >= 0 && flat.postedPerson[task] != person) {
            score += costs.swapped();
        }
        return score;
    }

    private boolean isNewOnStay(int task, int person) {
        int stay = flat.stayOfTask[task];
        boolean others = false;
        for (int other = flat.firstTask[stay]; other < flat.firstTask[stay + 1]; other++) {
            if (decoder.isSet[other] && who[other] != null && who[other].length > 0) {
                if (contains(who[other], person)) {
                    return false;
                }
                others = true;
            }
        }
        return others;
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
        who[task] = pickReady(task, minute);
        work[task] = new int[crew];
        for (int member = 0; member < crew; member++) {
            int person = who[task][member];
            work[task][member] = flat.hours[person].worked(minute);
            roster.book(person, work[task][member], flat.minutes[task][person]);
        }
    }

    private int findReady(int task, int minute) {
        int ready = 0;
        for (int index = 0; index < candidateCount; index++) {
            int person = candidates[index];
            gap[person] = flat.hours[person].wall(gapFor(task, person, minute));
            ready += gap[person] == minute ? 1 : 0;
        }
        return ready;
    }

    private boolean pinIsReady(int task, int minute) {
        int pinned = pinned(task);
        return pinned < 0 || gap[pinned] == minute;
    }

    /** Before this minute too few of them, or not the pinned one, can start. */
    private int nextMinute(int task, int minute) {
        int[] minutes = new int[candidateCount];
        for (int index = 0; index < candidateCount; index++) {
            minutes[index] = gap[candidates[index]];
        }
        Arrays.sort(minutes);
        int enough = minutes[flat.crew[task] - 1];
        int pinned = pinned(task);
        return Math.max(minute + 1, pinned < 0 ? enough : Math.max(enough, gap[pinned]));
    }

    private int[] pickReady(int task, int minute) {
        int crew = flat.crew[task];
        int[] picked = new int[crew];
        int count = 0;
        int pinned = pinned(task);
        if (pinned >= 0) {
            picked[count++] = pinned;
        }
        while (count < crew) {
            int best = -1;
            long bestScore = Long.MAX_VALUE;
            for (int index = 0; index < candidateCount; index++) {
                int person = candidates[index];
                boolean free = gap[person] == minute && !contains(Arrays.copyOf(picked, count), person);
                long score = free ? score(task, person, flat.hours[person].worked(minute)) : Long.MAX_VALUE;
                if (score < bestScore) {
                    best = person;
                    bestScore = score;
                }
            }
            picked[count++] = best;
        }
        return postedFirst(task, picked);
    }

    private int[] postedFirst(int task, int[] picked) {
        for (int index = 1; index < picked.length; index++) {
            if (picked[index] == flat.postedPerson[task] && pinned(task) < 0) {
                picked[index] = picked[0];
                picked[0] = flat.postedPerson[task];
            }
        }
        return picked;
    }
}
