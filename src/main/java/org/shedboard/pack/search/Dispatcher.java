package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * Hands out work the way a foreman with a list does: of all tasks that could go on next, the one that can start first, where each
 * stay's handicap in minutes lets others go before it.
 */
final class Dispatcher {
    private final FlatProblem flat;
    private final Decoder decoder;
    private final int[] waiting;
    private final long[] key;
    private int count;
    private final boolean[] isWaiting;

    Dispatcher(Decoder decoder) {
        this.decoder = decoder;
        flat = decoder.flat;
        waiting = new int[flat.tasks];
        key = new long[flat.tasks];
        isWaiting = new boolean[flat.tasks];
    }

    /** @param handicap per stay, in minutes */
    void dispatch(Solution solution, int[] handicap) {
        decoder.prepare(solution);
        do {
            decoder.begin();
            run(handicap);
        } while (decoder.mustRestart() && !decoder.isGivenUp());
    }

    private void run(int[] handicap) {
        count = 0;
        Arrays.fill(isWaiting, false);
        for (int job = 0; job < flat.jobs; job++) {
            if (!decoder.isLeftOut(job)) {
                await(job, handicap);
            }
        }
        while (count > 0 && !decoder.mustRestart() && !decoder.isGivenUp()) {
            int first = findFirst();
            int task = waiting[first];
            long now = keyOf(task, handicap[flat.stayOfTask[task]]);
            if (now > key[first]) {
                key[first] = now;
                continue;
            }
            waiting[first] = waiting[--count];
            key[first] = key[count];
            int before = decoder.placed;
            decoder.place(task);
            for (int index = before; index < decoder.placed; index++) {
                await(flat.jobOfTask[decoder.sequence[index]], handicap);
            }
        }
    }

    private int findFirst() {
        int first = 0;
        for (int index = 1; index < count; index++) {
            if (key[index] < key[first]) {
                first = index;
            }
        }
        return first;
    }

    /** The job's tasks that can now be given their time join those that wait for it. */
    private void await(int job, int[] handicap) {
        int stay = flat.firstStay[job];
        while (stay < flat.firstStay[job + 1] && decoder.stayRemaining[stay] == 0) {
            stay++;
        }
        if (stay == flat.firstStay[job + 1]) {
            return;
        }
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            if (!isWaiting[task] && decoder.isReady(task)) {
                isWaiting[task] = true;
                waiting[count] = task;
                key[count++] = keyOf(task, handicap[stay]);
            }
        }
    }

    /** Never falls while others are given their time, so a key that was not looked at again is a lower bound. */
    private long keyOf(int task, int handicap) {
        if (decoder.isSet[task]) {
            return Long.MIN_VALUE;
        }
        int stay = flat.stayOfTask[task];
        int earliest = flat.earliest[task];
        for (int waited : flat.before[task]) {
            earliest = Math.max(earliest, decoder.complete[waited]);
        }
        if (!decoder.isOpen[stay]) {
            earliest = Math.max(earliest, opening(stay));
        } else {
            earliest = Math.max(earliest, decoder.stayEarliest[stay]);
        }
        int start = flat.at[task] >= 0 || flat.crew[task] == 0 ? earliest : decoder.crews.likelyStart(task, earliest);
        return (long) start + handicap;
    }

    private int opening(int stay) {
        boolean first = stay == flat.firstStay[flat.jobOfStay[stay]];
        int earliest = first ? 0 : decoder.stayComplete[stay - 1];
        int soonest = flat.placesOfStay[stay].length == 0 ? earliest : Hours.FAR;
        for (int place : flat.placesOfStay[stay]) {
            int from = decoder.openFrom(stay, place, Math.max(earliest, decoder.likelyFree(place)));
            soonest = Math.min(soonest, from);
        }
        return soonest;
    }
}
