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
    /** Per task in the order in which they got their time: the key that was chosen in its turn, and how many had theirs before that turn. */
    private final long[] chosenKey;

    private final int[] begun;
    /** Per place when it is likely to be free, as it was known after the last turn. */
    private final int[] likelyFree;

    Dispatcher(Decoder decoder) {
        this.decoder = decoder;
        flat = decoder.flat;
        waiting = new int[flat.tasks];
        key = new long[flat.tasks];
        isWaiting = new boolean[flat.tasks];
        chosenKey = new long[flat.tasks];
        begun = new int[flat.tasks];
        likelyFree = new int[flat.places];
    }

    /** @param handicap per stay, in minutes */
    void dispatch(Solution solution, int[] handicap) {
        decoder.prepare(solution);
        decoder.begin();
        handOut(handicap);
    }

    /** As {@link #dispatch(Solution, int[])}, where the turns before so many tasks are those of another plan. */
    void dispatch(Solution solution, int[] handicap, Turns turns, int kept) {
        decoder.prepare(solution);
        turns.resume(kept);
        handOut(handicap);
    }

    /** The plan dispatched last is the one whose turns are followed. */
    void tell(Turns turns) {
        turns.follow(chosenKey, begun);
    }

    private void handOut(int[] handicap) {
        run(handicap);
        while (decoder.mustRestart() && !decoder.isGivenUp()) {
            decoder.beginAgain();
            run(handicap);
        }
    }

    private void run(int[] handicap) {
        count = 0;
        Arrays.fill(isWaiting, false);
        for (int place = 0; place < flat.places; place++) {
            likelyFree[place] = decoder.likelyFree(place);
        }
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
            Arrays.fill(chosenKey, before, decoder.placed, now);
            Arrays.fill(begun, before, decoder.placed, before);
            for (int index = before; index < decoder.placed; index++) {
                await(flat.jobOfTask[decoder.sequence[index]], handicap);
            }
            if (isFreeEarlier(before)) {
                lookAgain(handicap);
            }
        }
    }

    /** Some place of the tasks after the first so many is likely to be free earlier than it was before them. */
    private boolean isFreeEarlier(int before) {
        boolean isEarlier = false;
        for (int index = before; index < decoder.placed; index++) {
            int place = decoder.placeOfStay[flat.stayOfTask[decoder.sequence[index]]];
            if (place >= 0) {
                int now = decoder.likelyFree(place);
                isEarlier |= now < likelyFree[place];
                likelyFree[place] = now;
            }
        }
        return isEarlier;
    }

    /** Finds the keys of those that wait for a place once more. */
    private void lookAgain(int[] handicap) {
        for (int index = 0; index < count; index++) {
            int stay = flat.stayOfTask[waiting[index]];
            if (!decoder.isOpen[stay] && flat.placesOfStay[stay].length > 0) {
                key[index] = keyOf(waiting[index], handicap[stay]);
            }
        }
    }

    private int findFirst() {
        int first = 0;
        for (int index = 1; index < count; index++) {
            if (key[index] < key[first] || (key[index] == key[first] && goesFirst(waiting[index], waiting[first]))) {
                first = index;
            }
        }
        return first;
    }

    /**
     * Of two with the same key: within a stay the one behind which more is still to come, unattended minutes first of all (Schrage's
     * rule); of two stays the one whose job is over sooner.
     */
    private boolean goesFirst(int task, int other) {
        int stay = flat.stayOfTask[task];
        int otherStay = flat.stayOfTask[other];
        if (stay == otherStay) {
            return behind(task) == behind(other) ? task < other : behind(task) > behind(other);
        }
        int left = left(stay);
        int otherLeft = left(otherStay);
        return left == otherLeft ? stay < otherStay : left < otherLeft;
    }

    /** The least minutes from the end of work on the task to the end of its job. */
    private int behind(int task) {
        return flat.unattended[task] + decoder.outlook.tail[task];
    }

    /** The least minutes to the end of the job, once work on the next task of the stay is over. */
    private int left(int stay) {
        int left = 0;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            left = decoder.isSet[task] ? left : Math.max(left, behind(task));
        }
        return left;
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

    /**
     * Falls while others are given their time only where a place is free earlier than was likely, and then it is found once more; so a
     * key that was not looked at again is a lower bound.
     */
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
