package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.Costs;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * What a plan costs at least while it is being decoded: it never falls, and once every task has its time it is what the plan costs.
 * A job counts with the earliest finish that its tasks so far leave it; work, changed hands and changes of the posted plan count
 * when they come about.
 */
final class RunningCost {
    /** Posted starts so close to now cost {@link #NEAR_FACTOR} times as much to move. */
    static final int NEAR_MINUTES = 60;

    static final int NEAR_FACTOR = 4;

    private final FlatProblem flat;
    private final Outlook outlook;
    private final long overtime;
    private final long handover;
    private final long makespan;
    private final long swapped;
    /** Per task the points for each minute between its posted and its new start; 0 where that does not count. */
    private final long[] moved;

    private final boolean[] isCompared;
    private final int[] finishAtBest;
    private long pointsAtBest;
    private int latestAtBest;

    /** No job finishes before this, going by the tasks that have their time. */
    private final int[] finish;

    private int latest;
    /** Per stay everyone who has worked on it: a bit a person, so many words a stay. */
    private final long[] hands;

    private final int words;
    private final int[] handCount;

    long points;

    RunningCost(FlatProblem flat, Outlook outlook) {
        this.flat = flat;
        this.outlook = outlook;
        Costs costs = flat.problem.costs();
        overtime = costs.overtime();
        handover = costs.handover();
        makespan = costs.makespan();
        swapped = costs.swapped();
        moved = new long[flat.tasks];
        isCompared = new boolean[flat.tasks];
        for (int task = 0; task < flat.tasks; task++) {
            isCompared[task] = flat.postedStart[task] >= 0 && flat.state[task] == FlatProblem.OPEN;
            boolean near = Math.abs(flat.postedStart[task] - flat.problem.now()) <= NEAR_MINUTES;
            moved[task] = isCompared[task] ? costs.moved() * (near ? NEAR_FACTOR : 1) : 0;
        }
        finish = new int[flat.jobs];
        finishAtBest = new int[flat.jobs];
        words = (flat.people + 63) / 64;
        hands = new long[flat.stays * words];
        handCount = new int[flat.stays];
    }

    /** Jobs marked here are not in the plan and cost nothing. */
    void leaveOut(boolean[] left) {
        pointsAtBest = 0;
        latestAtBest = 0;
        for (int job = 0; job < flat.jobs; job++) {
            finishAtBest[job] = left[job] ? 0 : outlook.finish[job];
            pointsAtBest += left[job] ? 0 : outlook.points(job, finishAtBest[job]);
            latestAtBest = Math.max(latestAtBest, finishAtBest[job]);
        }
        pointsAtBest += makespan * latestAtBest;
    }

    void begin() {
        points = pointsAtBest;
        latest = latestAtBest;
        System.arraycopy(finishAtBest, 0, finish, 0, finish.length);
        Arrays.fill(hands, 0);
        Arrays.fill(handCount, 0);
    }

    void finishNoEarlier(int job, int minute) {
        if (minute > finish[job]) {
            points += outlook.points(job, minute) - outlook.points(job, finish[job]);
            finish[job] = minute;
            if (minute > latest) {
                points += makespan * (outlook.cap(minute) - outlook.cap(latest));
                latest = minute;
            }
        }
    }

    /** The person works on the stay; whoever comes on top of the people its largest task needs is a handover. */
    void putHandsOn(int stay, int person) {
        int word = stay * words + (person >> 6);
        long bit = 1L << person;
        if ((hands[word] & bit) == 0) {
            hands[word] |= bit;
            if (++handCount[stay] > flat.crewOfStay[stay]) {
                points += handover;
            }
        }
    }

    /** Whether the person's work on the stay would be one handover more. */
    boolean isHandover(int stay, int person) {
        return handCount[stay] >= flat.crewOfStay[stay] && (hands[stay * words + (person >> 6)] & 1L << person) == 0;
    }

    void work(int person, int from, int to) {
        if (overtime > 0) {
            Hours hours = flat.hours[person];
            points += overtime * (hours.overtimeBefore(to) - hours.overtimeBefore(from));
        }
    }

    void start(int task, int minute, int person) {
        if (isCompared[task]) {
            points += moved[task] * Math.abs(minute - flat.postedStart[task]);
            points += person == flat.postedPerson[task] ? 0 : swapped;
        }
    }

    void open(int stay, int place) {
        int posted = flat.postedPlace[stay];
        points += posted == -1 || posted == place || flat.stayHasBegun[stay] ? 0 : swapped;
    }
}
