package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/** When each person is busy, in their own working minutes; finds gaps and fills them. */
final class Roster {
    private static final int UNKNOWN = -1;

    private final Hours[] hours;
    /** Per person the runs of work in their order, two numbers each: the first minute, and the first that is free again. */
    private final int[][] busy;
    /** Per person how many of these numbers count. */
    private final int[] used;
    /** Per person the first working minute from which on they are busy without a pause until {@link #tailTo}. */
    private final int[] tailFrom;
    /** Per person the working minute from which on they have nothing to do any more. */
    private final int[] tailTo;
    /** Per person the wall minute from which there is nothing to do any more; {@link #UNKNOWN} where nobody asked yet. */
    private final int[] freeFrom;

    Roster(FlatProblem flat) {
        hours = flat.hours;
        busy = new int[flat.people][16];
        used = new int[flat.people];
        tailFrom = new int[flat.people];
        tailTo = new int[flat.people];
        freeFrom = new int[flat.people];
    }

    void clear() {
        Arrays.fill(used, 0);
        Arrays.fill(tailFrom, 0);
        Arrays.fill(tailTo, 0);
        Arrays.fill(freeFrom, 0);
    }

    void become(Roster other) {
        for (int person = 0; person < used.length; person++) {
            int count = other.used[person];
            if (count > busy[person].length) {
                busy[person] = new int[other.busy[person].length];
            }
            System.arraycopy(other.busy[person], 0, busy[person], 0, count);
            used[person] = count;
        }
        System.arraycopy(other.tailFrom, 0, tailFrom, 0, tailFrom.length);
        System.arraycopy(other.tailTo, 0, tailTo, 0, tailTo.length);
        System.arraycopy(other.freeFrom, 0, freeFrom, 0, freeFrom.length);
    }

    /** The first working minute from {@code earliest} on at which the person is free for so long. */
    int findGap(int person, int earliest, int minutes, boolean noOvertime) {
        if (earliest >= tailFrom[person] && !noOvertime) {
            return Math.max(earliest, tailTo[person]);
        }
        int work = noOvertime ? hours[person].pastOvertime(earliest, minutes) : earliest;
        int[] runs = busy[person];
        int last = used[person];
        int next = firstEndingAfter(runs, last, work);
        while (next < last && runs[next] < work + minutes) {
            work = Math.max(work, runs[next + 1]);
            work = noOvertime ? hours[person].pastOvertime(work, minutes) : work;
            next += 2;
        }
        return work;
    }

    /** Most work is added near the end, so the search runs backwards. */
    private static int firstEndingAfter(int[] runs, int last, int work) {
        int index = last;
        while (index > 0 && runs[index - 1] > work) {
            index -= 2;
        }
        return index;
    }

    /** The wall minute from which the person has nothing to do any more. */
    int freeFrom(int person) {
        if (freeFrom[person] == UNKNOWN) {
            freeFrom[person] = hours[person].wall(tailTo[person]);
        }
        return freeFrom[person];
    }

    void book(int person, int work, int minutes) {
        int last = used[person];
        used[person] = last + 2;
        if (last == busy[person].length) {
            busy[person] = Arrays.copyOf(busy[person], last * 2);
        }
        int[] runs = busy[person];
        int index = last;
        while (index > 0 && runs[index - 2] > work) {
            index -= 2;
        }
        if (index < last) {
            System.arraycopy(runs, index, runs, index + 2, last - index);
        }
        runs[index] = work;
        runs[index + 1] = work + minutes;
        freeFrom[person] = UNKNOWN;
        if (index == last) {
            tailFrom[person] = work == tailTo[person] ? tailFrom[person] : work;
            tailTo[person] = work + minutes;
        } else if (work + minutes == tailFrom[person]) {
            tailFrom[person] = beginningOfTail(runs, last);
        }
    }

    private static int beginningOfTail(int[] runs, int lastRun) {
        int index = lastRun;
        while (index > 0 && runs[index - 1] == runs[index]) {
            index -= 2;
        }
        return runs[index];
    }
}
