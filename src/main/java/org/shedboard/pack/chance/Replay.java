package org.shedboard.pack.chance;

import java.util.Arrays;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;
import org.shedboard.pack.numbers.PlanReading;

/**
 * Plays one plan with drawn durations, as often as asked: every task starts as early as the plan's order of people and places and
 * the rules allow. Part of {@link Chances}.
 *
 * <p>Everything stands in flat arrays by the task's turn: tasks take their turns in the order of their start in the plan, so that
 * whatever a task has to wait for has had its turn before. A stay that turns out to stand in the way of a closed time begins after
 * it, and the day is played again with that; what the plan has after a closed time stays after it.
 */
final class Replay {
    private static final int NONE = -1;

    private final FlatProblem flat;
    private final PlanReading plan;
    private final DrawnMinutes draws;
    private final int turns;

    /** By turn: the task; when it ended, NONE unless it is done; the earliest start that hangs on no other task. */
    private final int[] taskAt;

    private final int[] doneAt;
    private final int[] fixed;
    /** By turn: the stay; the stay, and the place, whose being over it waits for, or NONE. */
    private final int[] stayAt;

    private final int[] afterStay;
    private final int[] afterPlace;
    /** The turns that a turn waits for are {@code waits} from {@code firstWait} of it to that of the next. */
    private final int[] firstWait;

    private final int[] waits;
    /** The people of a turn are the members from {@code firstMember} of it to that of the next. */
    private final int[] firstMember;

    private final int[] member;
    private final Hours[] hours;
    /** By member: hands-on minutes of this replay, and the working minutes from and to which they are worked. */
    private final int[] minutes;

    private final int[] workFrom;
    private final int[] workTo;

    /** By stay: how many turns it has, and the minute before which it may not start. */
    private final int[] turnsOfStay;

    private final int[] opening;

    /** By turn: how early it may start just now, whatever the rules allow. */
    private final int[] floor;

    private final int[] complete;
    private final int[] startWithoutPeople;
    private final int[] stayStart;
    private final int[] stayComplete;
    private final int[] stayRemaining;
    private final int[] personFree;
    private final int[] placeFree;

    Replay(FlatProblem flat, PlanReading plan, DrawnMinutes draws) {
        this.flat = flat;
        this.plan = plan;
        this.draws = draws;
        taskAt = plan.order;
        turns = taskAt.length;
        doneAt = new int[turns];
        fixed = new int[turns];
        stayAt = new int[turns];
        afterStay = new int[turns];
        afterPlace = new int[turns];
        firstWait = new int[turns + 1];
        firstMember = new int[turns + 1];
        turnsOfStay = new int[flat.stays];
        countTurns();
        waits = new int[firstWait[turns]];
        member = new int[firstMember[turns]];
        hours = new Hours[member.length];
        minutes = new int[member.length];
        workFrom = new int[member.length];
        workTo = new int[member.length];
        floor = new int[turns];
        complete = new int[turns];
        startWithoutPeople = new int[turns];
        opening = new int[flat.stays];
        stayStart = new int[flat.stays];
        stayComplete = new int[flat.stays];
        stayRemaining = new int[flat.stays];
        personFree = new int[flat.people];
        placeFree = new int[flat.places];
        fillTurns();
    }

    private void countTurns() {
        for (int turn = 0; turn < turns; turn++) {
            int task = taskAt[turn];
            boolean free = flat.state[task] == FlatProblem.OPEN || flat.state[task] == FlatProblem.INTERRUPTED;
            firstWait[turn + 1] = firstWait[turn] + (free ? flat.before[task].length : 0);
            firstMember[turn + 1] =
                    firstMember[turn] + (flat.state[task] == FlatProblem.DONE ? 0 : plan.who[task].length);
            stayAt[turn] = flat.stayOfTask[task];
            turnsOfStay[stayAt[turn]]++;
        }
    }

    private void fillTurns() {
        int[] turnOf = new int[flat.tasks];
        for (int turn = 0; turn < turns; turn++) {
            int task = taskAt[turn];
            turnOf[task] = turn;
            doneAt[turn] = flat.state[task] == FlatProblem.DONE ? plan.end[task] : NONE;
            for (int index = firstMember[turn]; index < firstMember[turn + 1]; index++) {
                member[index] = plan.who[task][index - firstMember[turn]];
                hours[index] = flat.hours[member[index]];
            }
            for (int index = firstWait[turn]; index < firstWait[turn + 1]; index++) {
                waits[index] = turnOf[flat.before[task][index - firstWait[turn]]];
            }
            fillEarliest(turn, task, stayAt[turn]);
        }
    }

    private void fillEarliest(int turn, int task, int stay) {
        afterStay[turn] = NONE;
        afterPlace[turn] = NONE;
        fixed[turn] = flat.problem.now();
        if (flat.state[task] == FlatProblem.GOING) {
            return;
        }
        int place = plan.placeOfStay[stay];
        int opened = place < 0 ? 0 : lastOpening(place, plan.start[task]);
        fixed[turn] = Math.max(opened, Math.max(flat.earliest[task], flat.at[task]));
        afterStay[turn] = stay > flat.firstStay[flat.jobOfStay[stay]] ? stay - 1 : NONE;
        afterPlace[turn] = flat.stayHasBegun[stay] ? NONE : place;
    }

    private int lastOpening(int place, int start) {
        int last = 0;
        for (Span span : flat.closed[place]) {
            last = span.to() <= start ? Math.max(last, span.to()) : last;
        }
        return last;
    }

    /** Plays the day of this number. */
    void run(int day) {
        runHolding(day, NONE);
    }

    /** As {@link #run}, but the work of one stay takes its middle minutes. */
    void runHolding(int day, int heldStay) {
        draws.draw(day);
        readMinutes(heldStay);
        playOut();
    }

    /** Plays the day on which everything takes its middle minutes. */
    void runMiddle() {
        runMiddle(new int[flat.tasks]);
    }

    /** As {@link #runMiddle()}, but no task starts before its minute in the list, which is by task. */
    void runMiddle(int[] notBefore) {
        draws.takeMiddle();
        readMinutes(NONE);
        for (int turn = 0; turn < turns; turn++) {
            floor[turn] = notBefore[taskAt[turn]];
        }
        playOut();
        Arrays.fill(floor, 0);
    }

    private void readMinutes(int heldStay) {
        for (int turn = 0; turn < turns; turn++) {
            int task = taskAt[turn];
            boolean held = stayAt[turn] == heldStay;
            for (int index = firstMember[turn]; index < firstMember[turn + 1]; index++) {
                minutes[index] = held ? flat.minutes[task][member[index]] : draws.minutes(task, member[index]);
            }
        }
    }

    private void playOut() {
        Arrays.fill(opening, 0);
        while (!play()) {
            // a stay was found to begin too early for a closed time, and begins later now
        }
    }

    /** Whether no stay had to be put off because its place is closed. */
    private boolean play() {
        Arrays.fill(stayStart, Hours.FAR);
        Arrays.fill(stayComplete, 0);
        Arrays.fill(placeFree, 0);
        Arrays.fill(personFree, 0);
        System.arraycopy(turnsOfStay, 0, stayRemaining, 0, stayRemaining.length);
        for (int turn = 0; turn < turns; turn++) {
            int end = doneAt[turn] == NONE ? work(turn, earliest(turn)) : doneAt[turn];
            if (!close(turn, stayAt[turn], Math.min(Hours.FAR, end + flat.unattended[taskAt[turn]]))) {
                return false;
            }
        }
        return true;
    }

    private int earliest(int turn) {
        int earliest = Math.max(Math.max(fixed[turn], floor[turn]), opening[stayAt[turn]]);
        for (int index = firstWait[turn]; index < firstWait[turn + 1]; index++) {
            earliest = Math.max(earliest, complete[waits[index]]);
        }
        if (afterStay[turn] != NONE) {
            earliest = Math.max(earliest, stayComplete[afterStay[turn]]);
        }
        if (afterPlace[turn] != NONE) {
            earliest = Math.max(earliest, placeFree[afterPlace[turn]]);
        }
        return earliest;
    }

    /** The end of the work. */
    private int work(int turn, int earliest) {
        int first = firstMember[turn];
        int members = firstMember[turn + 1] - first;
        if (members == 0) {
            startWithoutPeople[turn] = earliest;
            return earliest;
        }
        workFrom[first] = Math.max(hours[first].worked(earliest), personFree[member[first]]);
        if (members > 1 || mayNotBeWorkedOn(turn)) {
            settle(turn);
        }
        int end = 0;
        for (int index = first; index < first + members; index++) {
            workTo[index] = Math.min(Hours.FAR, workFrom[index] + minutes[index]);
            personFree[member[index]] = workTo[index];
            end = Math.max(end, hours[index].end(workTo[index]));
        }
        return end;
    }

    /** A begun stay stands through closed times of its place, without work on it. */
    private boolean mayNotBeWorkedOn(int turn) {
        int place = plan.placeOfStay[stayAt[turn]];
        return place >= 0
                && flat.closed[place].length > 0
                && flat.stayHasBegun[stayAt[turn]]
                && flat.state[taskAt[turn]] != FlatProblem.GOING;
    }

    /** All start together, at the first minute that suits each of them. */
    private void settle(int turn) {
        int first = firstMember[turn];
        int start = hours[first].wall(workFrom[first]);
        int before = NONE;
        while (before != start) {
            before = start;
            for (int index = first; index < firstMember[turn + 1]; index++) {
                int free = Math.max(hours[index].worked(start), personFree[member[index]]);
                workFrom[index] = mayNotBeWorkedOn(turn) ? pastClosed(turn, index, free) : free;
                start = Math.max(start, hours[index].wall(workFrom[index]));
            }
        }
    }

    private int pastClosed(int turn, int index, int earliest) {
        int from = earliest;
        for (Span span : flat.closed[plan.placeOfStay[stayAt[turn]]]) {
            int shut = hours[index].worked(span.from());
            int open = hours[index].worked(span.to());
            if (shut < open && from < open && shut < from + minutes[index]) {
                from = open;
            }
        }
        return from;
    }

    /** Whether the stay may be where it is now that this turn's end is known. */
    private boolean close(int turn, int stay, int completion) {
        complete[turn] = completion;
        stayComplete[stay] = Math.max(stayComplete[stay], completion);
        stayRemaining[stay]--;
        int place = plan.placeOfStay[stay];
        if (place == NONE) {
            return true;
        }
        if (flat.closed[place].length > 0 && !flat.stayHasBegun[stay]) {
            stayStart[stay] = Math.min(stayStart[stay], startOf(turn));
            opening[stay] = openingFor(stay, place);
            if (opening[stay] > stayStart[stay]) {
                return false;
            }
        }
        if (stayRemaining[stay] == 0) {
            placeFree[place] = Math.max(placeFree[place], stayComplete[stay]);
        }
        return true;
    }

    private int openingFor(int stay, int place) {
        int from = opening[stay];
        for (Span span : flat.closed[place]) {
            boolean meets = span.from() < stayComplete[stay] && stayStart[stay] < span.to();
            from = meets ? Math.max(from, span.to()) : from;
        }
        return from;
    }

    /** The minute at which the turn's work starts, or at which it has its turn if it takes nobody. */
    int startOf(int turn) {
        int first = firstMember[turn];
        return firstMember[turn + 1] == first ? startWithoutPeople[turn] : hours[first].wall(workFrom[first]);
    }

    /** How many pairs of a turn and one of its people there are. */
    int members() {
        return member.length;
    }

    int firstMember(int turn) {
        return firstMember[turn];
    }

    int personOf(int index) {
        return member[index];
    }

    int workFromOf(int index) {
        return workFrom[index];
    }

    int workToOf(int index) {
        return workTo[index];
    }

    /** The minute at which this person's own work on the turn is over. */
    int endOf(int index) {
        return hours[index].end(workTo[index]);
    }

    /** When the turn's unattended minutes are over. */
    int completeOf(int turn) {
        return complete[turn];
    }

    int stayCompleteOf(int stay) {
        return stayComplete[stay];
    }

    /** When the job is finished in this replay; 0 where it is not in the plan. */
    int finishOf(int job) {
        int finish = 0;
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            finish = Math.max(finish, stayComplete[stay]);
        }
        return finish;
    }
}
