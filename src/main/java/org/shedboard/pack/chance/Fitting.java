package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.Engagements;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;
import org.shedboard.pack.numbers.PlanReading;

/**
 * One way to fit a job into a plan that does not hold it: from a minute on, each task as early as somebody is free for it. Part of
 * {@link Insertion}.
 *
 * <p>What is planned later for the same people and places either has to leave a gap that is long enough, or is pushed behind. Either
 * way this only says who does the job's tasks, where, and before which tasks of the plan; a replay says when that is.
 */
final class Fitting {
    private static final int NOBODY = -1;
    /** So often the people of one task are looked for anew, each time from the minute at which the last of them was free. */
    private static final int MOST_LOOKS = 50;

    private final FlatProblem flat;
    private final PlanReading base;
    private final Engagements engagements;
    private final int job;
    private final boolean intoGaps;

    private final int[][] who;
    private final int[] start;
    private final int[] complete;
    private final int[] turn;
    private final boolean[] isSet;
    private final int[] placeOfStay;
    private final List<Engagements.Work> own = new ArrayList<>();
    private final List<Integer> ownPeople = new ArrayList<>();
    private final List<Integer> sequence = new ArrayList<>();

    private Fitting(FlatProblem flat, PlanReading base, Engagements engagements, int job, boolean intoGaps) {
        this.flat = flat;
        this.base = base;
        this.engagements = engagements;
        this.job = job;
        this.intoGaps = intoGaps;
        who = base.who.clone();
        start = base.start.clone();
        complete = new int[flat.tasks];
        turn = new int[flat.tasks];
        isSet = new boolean[flat.tasks];
        placeOfStay = base.placeOfStay.clone();
    }

    /** The plan with the job in it, in its order only, or null where it does not go from that minute on. */
    static PlanReading of(
            FlatProblem flat, PlanReading base, Engagements engagements, int job, int minute, boolean intoGaps) {
        Fitting fitting = new Fitting(flat, base, engagements, job, intoGaps);
        return fitting.fit(minute) ? fitting.merged() : null;
    }

    private boolean fit(int minute) {
        int from = minute;
        int earliestTurn = 0;
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            Standing standing = stand(stay, from);
            if (standing == null) {
                return false;
            }
            placeOfStay[stay] = standing.place;
            if (!fitTasks(stay, standing.from, earliestTurn)) {
                return false;
            }
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                earliestTurn = Math.max(earliestTurn, turn[task]);
                from = Math.max(from, complete[task]);
                if (turn[task] > standing.lastTurn) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Where a stay can be, from when on, and before which turn of the plan. */
    private record Standing(int place, int from, int lastTurn) {}

    private Standing stand(int stay, int earliest) {
        Standing best = flat.placesOfStay[stay].length == 0 ? new Standing(-1, earliest, Integer.MAX_VALUE) : null;
        for (int place : flat.placesOfStay[stay]) {
            Standing standing = stand(place, earliest, leastMinutes(stay));
            best = best == null || standing.from < best.from ? standing : best;
        }
        return best;
    }

    private Standing stand(int place, int earliest, int minutes) {
        int from = earliest;
        boolean moved = true;
        while (moved) {
            int before = from;
            int length = intoGaps ? minutes : 0;
            for (int stay : engagements.staysIn(place)) {
                boolean meets = engagements.from(stay) < from + length && from < engagements.to(stay);
                from = meets ? engagements.to(stay) : from;
            }
            for (Span span : flat.closed[place]) {
                from = span.from() < from + minutes && from < span.to() ? span.to() : from;
            }
            moved = from != before;
        }
        int last = Integer.MAX_VALUE;
        for (int index = 0; index < base.order.length; index++) {
            int stay = flat.stayOfTask[base.order[index]];
            if (base.placeOfStay[stay] == place && engagements.from(stay) >= from) {
                last = Math.min(last, index);
            }
        }
        return new Standing(place, from, last);
    }

    private int leastMinutes(int stay) {
        int sum = 0;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            int[] minutes = flat.minutes[task];
            int least = Arrays.stream(flat.able[task])
                    .map(person -> minutes[person])
                    .min()
                    .orElse(0);
            sum += flat.unattended[task] + (flat.crew[task] > 0 ? least : 0);
        }
        return Math.max(1, sum);
    }

    private boolean fitTasks(int stay, int from, int earliestTurn) {
        int left = flat.firstTask[stay + 1] - flat.firstTask[stay];
        while (left > 0) {
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                if (!isSet[task] && Arrays.stream(flat.before[task]).allMatch(waited -> isSet[waited])) {
                    if (!fitTask(task, from, earliestTurn)) {
                        return false;
                    }
                    left--;
                }
            }
        }
        return true;
    }

    private boolean fitTask(int task, int from, int earliestTurn) {
        int earliest = Math.max(Math.max(from, flat.earliest[task]), flat.at[task]);
        int least = earliestTurn;
        for (int waited : flat.before[task]) {
            earliest = Math.max(earliest, complete[waited]);
            least = Math.max(least, turn[waited]);
        }
        who[task] = flat.crew[task] == 0 ? new int[0] : chooseCrew(task, earliest);
        if (who[task] == null) {
            return false;
        }
        book(task, earliest);
        turn[task] = Math.max(least, firstTurnFrom(start[task]));
        isSet[task] = true;
        sequence.add(task);
        return true;
    }

    private void book(int task, int earliest) {
        start[task] = earliest;
        for (int person : who[task]) {
            start[task] = Math.max(start[task], freeFrom(task, person, earliest));
        }
        int end = start[task];
        for (int person : who[task]) {
            Hours hours = flat.hours[person];
            int work = hours.worked(start[task]);
            own.add(new Engagements.Work(task, work, work + flat.minutes[task][person]));
            ownPeople.add(person);
            end = Math.max(end, hours.end(work + flat.minutes[task][person]));
        }
        complete[task] = end + flat.unattended[task];
    }

    private int firstTurnFrom(int minute) {
        int index = 0;
        while (index < base.order.length && base.start[base.order[index]] < minute) {
            index++;
        }
        return index;
    }

    private int[] chooseCrew(int task, int earliest) {
        int minute = earliest;
        for (int look = 0; look < MOST_LOOKS; look++) {
            int[] crew = freeAt(task, minute);
            if (crew != null) {
                return crew;
            }
            minute = nextMinute(task, minute);
            if (minute > flat.problem.horizon()) {
                return null;
            }
        }
        return null;
    }

    /** One person may begin later than that minute; several begin together, at it. */
    private int[] freeAt(int task, int minute) {
        int[] crew = new int[flat.crew[task]];
        Arrays.fill(crew, NOBODY);
        for (int member = 0; member < crew.length; member++) {
            long bestScore = Long.MAX_VALUE;
            for (int person : flat.able[task]) {
                int from = freeFrom(task, person, minute);
                boolean may = mayDo(task, person, member) && !contains(crew, person);
                if (may && (crew.length == 1 || from == minute) && score(task, person, from) < bestScore) {
                    bestScore = score(task, person, from);
                    crew[member] = person;
                }
            }
            if (crew[member] == NOBODY) {
                return null;
            }
        }
        return crew;
    }

    private int nextMinute(int task, int minute) {
        int[] from = Arrays.stream(flat.able[task])
                .map(person -> freeFrom(task, person, minute))
                .sorted()
                .toArray();
        return from.length < flat.crew[task] ? Integer.MAX_VALUE : Math.max(minute + 1, from[flat.crew[task] - 1]);
    }

    private long score(int task, int person, int from) {
        Hours hours = flat.hours[person];
        int work = hours.worked(from);
        int to = work + flat.minutes[task][person];
        Costs costs = flat.problem.costs();
        long rate = Math.max(1, costs.flow() * flat.job(job).weight());
        boolean isNew = !own.isEmpty() && !isOnStay(task, person);
        return rate * hours.end(to)
                + costs.overtime() * (hours.overtimeBefore(to) - hours.overtimeBefore(work))
                + (isNew ? costs.handover() : 0);
    }

    private boolean isOnStay(int task, int person) {
        for (int other = flat.firstTask[flat.stayOfTask[task]];
                other < flat.firstTask[flat.stayOfTask[task] + 1];
                other++) {
            if (isSet[other] && contains(who[other], person)) {
                return true;
            }
        }
        return false;
    }

    /** The pinned person comes first; nobody does what they may not, or what would leave nobody for a task still to be fitted. */
    private boolean mayDo(int task, int person, int member) {
        if (member == 0 && flat.pinnedTo[task] >= 0 && flat.pinnedTo[task] != person) {
            return false;
        }
        for (int other : flat.apart[task]) {
            boolean barred = isSet[other] ? contains(who[other], person) : leavesTooFew(other, person);
            if (barred) {
                return false;
            }
        }
        return true;
    }

    private boolean leavesTooFew(int other, int person) {
        long left = Arrays.stream(flat.able[other])
                .filter(able -> able != person)
                .filter(able ->
                        Arrays.stream(flat.apart[other]).noneMatch(set -> isSet[set] && contains(who[set], able)))
                .count();
        return left < flat.crew[other] || flat.pinnedTo[other] == person;
    }

    private static boolean contains(int[] people, int person) {
        return Arrays.stream(people).anyMatch(one -> one == person);
    }

    /** The first minute from which the person could be on the task. */
    private int freeFrom(int task, int person, int earliest) {
        Hours hours = flat.hours[person];
        int minutes = flat.minutes[task][person];
        int from = hours.worked(earliest);
        boolean moved = true;
        while (moved) {
            int before = from;
            for (Engagements.Work work : engagements.ofPerson(person)) {
                from = work.from() < from + (intoGaps ? minutes : 0) && from < work.to() ? work.to() : from;
            }
            for (int index = 0; index < own.size(); index++) {
                Engagements.Work work = own.get(index);
                boolean meets = ownPeople.get(index) == person && work.from() < from + minutes && from < work.to();
                from = meets ? work.to() : from;
            }
            moved = from != before;
        }
        return hours.wall(from);
    }

    private PlanReading merged() {
        int[] order = new int[base.order.length + sequence.size()];
        sequence.sort(Comparator.comparingInt(task -> turn[task]));
        int count = 0;
        int next = 0;
        for (int index = 0; index <= base.order.length; index++) {
            while (next < sequence.size() && turn[sequence.get(next)] == index) {
                order[count++] = sequence.get(next++);
            }
            if (index < base.order.length) {
                order[count++] = base.order[index];
            }
        }
        return base.with(who, start, placeOfStay, order);
    }
}
