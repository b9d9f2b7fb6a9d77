package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/** When each person is busy, in their own working minutes; finds gaps and fills them. */
final class Roster {
    private final Hours[] hours;
    private final int[][] from;
    private final int[][] to;
    private final int[] count;
    private final int[] freeFrom;

    Roster(FlatProblem flat) {
        hours = flat.hours;
        from = new int[flat.people][8];
        to = new int[flat.people][8];
        count = new int[flat.people];
        freeFrom = new int[flat.people];
    }

    void clear() {
        Arrays.fill(count, 0);
        Arrays.fill(freeFrom, 0);
    }

    /** The first working minute from {@code earliest} on at which the person is free for so long. */
    int findGap(int person, int earliest, int minutes, boolean noOvertime) {
        int work = noOvertime ? hours[person].pastOvertime(earliest, minutes) : earliest;
        int[] starts = from[person];
        int[] ends = to[person];
        int last = count[person];
        int next = firstEndingAfter(ends, last, work);
        while (next < last && starts[next] < work + minutes) {
            work = Math.max(work, ends[next]);
            work = noOvertime ? hours[person].pastOvertime(work, minutes) : work;
            next++;
        }
        return work;
    }

    /** Most work is added near the end, so the search runs backwards. */
    private static int firstEndingAfter(int[] ends, int last, int work) {
        int index = last;
        while (index > 0 && ends[index - 1] > work) {
            index--;
        }
        return index;
    }

    /** The wall minute from which the person has nothing to do any more. */
    int freeFrom(int person) {
        return freeFrom[person];
    }

    void book(int person, int work, int minutes) {
        int last = count[person]++;
        if (last == from[person].length) {
            from[person] = Arrays.copyOf(from[person], last * 2);
            to[person] = Arrays.copyOf(to[person], last * 2);
        }
        int index = last;
        while (index > 0 && from[person][index - 1] > work) {
            from[person][index] = from[person][index - 1];
            to[person][index] = to[person][index - 1];
            index--;
        }
        from[person][index] = work;
        to[person][index] = work + minutes;
        if (index == last) {
            freeFrom[person] = hours[person].wall(work + minutes);
        }
    }
}
