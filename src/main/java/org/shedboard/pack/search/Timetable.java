package org.shedboard.pack.search;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.shedboard.pack.numbers.FlatProblem;

/** A decoded plan as it was: when, who and where, and its tasks in order of start. */
final class Timetable {
    private final FlatProblem flat;
    final int[] start;
    final int[] end;
    /** How many are on each task; -1 where it has no time. */
    final int[] size;

    final int[] who;
    final int[] work;
    final int[] placeOfStay;
    final int[] stayEarliest;
    final int[] stayStart;
    final int[] stayComplete;
    final int[] finish;
    /** What the plan costs without the jobs that do not fit; known once {@link #judge judged}. */
    long cost;

    final boolean[] fits;
    final boolean[] missed;
    /** All tasks in order of start, those without a time last. */
    final int[] order;
    /** Where in {@link #order} each task stands. */
    final int[] position;

    private boolean isStraight;
    /** How many tasks have a time. */
    int placed;

    Timetable(FlatProblem flat) {
        this.flat = flat;
        start = new int[flat.tasks];
        end = new int[flat.tasks];
        size = new int[flat.tasks];
        who = new int[flat.slots];
        work = new int[flat.slots];
        placeOfStay = new int[flat.stays];
        stayEarliest = new int[flat.stays];
        stayStart = new int[flat.stays];
        stayComplete = new int[flat.stays];
        finish = new int[flat.jobs];
        fits = new boolean[flat.jobs];
        missed = new boolean[flat.jobs];
        order = new int[flat.tasks];
        position = new int[flat.tasks];
    }

    /** Takes over what the decoder made last. */
    void take(Decoder decoder) {
        copy(decoder.start, start);
        copy(decoder.end, end);
        copy(decoder.crews.size, size);
        copy(decoder.crews.who, who);
        copy(decoder.crews.work, work);
        copy(decoder.placeOfStay, placeOfStay);
        copy(decoder.stayEarliest, stayEarliest);
        copy(decoder.stayStart, stayStart);
        copy(decoder.stayComplete, stayComplete);
        System.arraycopy(decoder.missed, 0, missed, 0, missed.length);
        placed = decoder.placed;
        isStraight = true;
        for (int job = 0; job < flat.jobs; job++) {
            isStraight &= !missed[job];
        }
        sortByStart(decoder);
        for (int job = 0; job < flat.jobs; job++) {
            finish[job] = 0;
            for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
                finish[job] = Math.max(finish[job], stayComplete[stay]);
            }
        }
    }

    private static void copy(int[] from, int[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }

    /** The decoder's sequence is nearly in order, which this sort makes use of; equal starts keep the sequence. */
    private void sortByStart(Decoder decoder) {
        for (int index = 0; index < placed; index++) {
            int task = decoder.sequence[index];
            int to = index;
            while (to > 0 && start[order[to - 1]] > start[task]) {
                order[to] = order[to - 1];
                to--;
            }
            order[to] = task;
        }
        int last = placed;
        for (int task = 0; task < flat.tasks && last < flat.tasks; task++) {
            if (!decoder.isSet[task]) {
                order[last++] = task;
            }
        }
        for (int index = 0; index < order.length; index++) {
            position[order[index]] = index;
        }
    }

    /** Takes over what was found out about the plan as well. */
    void judge(Tally tally) {
        cost = tally.cost;
        System.arraycopy(tally.fits, 0, fits, 0, fits.length);
    }

    /** Makes the solution wish for all that the plan has. */
    void nameAll(Solution solution) {
        copy(order, solution.list);
        for (int task = 0; task < flat.tasks; task++) {
            int slot = flat.slot[task];
            solution.crew[slot] = Solution.ANY;
            if (size[task] > 0 && size[task] == flat.crew[task]) {
                System.arraycopy(who, slot, solution.crew, slot, flat.crew[task]);
            }
        }
        copy(placeOfStay, solution.place);
    }

    /** Everyone on the task, the person named first standing first. */
    IntStream crewOf(int task) {
        int slot = flat.slot[task];
        return Arrays.stream(who, slot, slot + Math.max(0, size[task]));
    }

    /** Whether every task starts after those it waits for; a pin that cannot be kept stands at its minute all the same. */
    boolean isStraight() {
        return isStraight;
    }

    /** Whether the person is among those on the task. */
    boolean isOn(int task, int person) {
        int slot = flat.slot[task];
        for (int member = slot; member < slot + size[task]; member++) {
            if (who[member] == person) {
                return true;
            }
        }
        return false;
    }
}
