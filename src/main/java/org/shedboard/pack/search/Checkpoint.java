package org.shedboard.pack.search;

import org.shedboard.pack.numbers.FlatProblem;

/** How the decoder stood after the first so many tasks of a list. */
final class Checkpoint {
    private final boolean[] isSet;
    private final int[] start;
    private final int[] end;
    private final int[] complete;
    private final int[] sequence;
    private final int[] size;
    private final int[] who;
    private final int[] work;
    private final boolean[] isOpen;
    private final int[] placeOfStay;
    private final int[] stayEarliest;
    private final int[] stayStart;
    private final int[] stayComplete;
    private final int[] stayRemaining;
    private final int[] placeFree;
    private final int[] placeHolder;
    private final Roster roster;
    private final RunningCost running;
    private int placed;
    private boolean doesNotFit;

    Checkpoint(Decoder decoder) {
        FlatProblem flat = decoder.flat;
        isSet = new boolean[flat.tasks];
        start = new int[flat.tasks];
        end = new int[flat.tasks];
        complete = new int[flat.tasks];
        sequence = new int[flat.tasks];
        size = new int[flat.tasks];
        who = new int[flat.slots];
        work = new int[flat.slots];
        isOpen = new boolean[flat.stays];
        placeOfStay = new int[flat.stays];
        stayEarliest = new int[flat.stays];
        stayStart = new int[flat.stays];
        stayComplete = new int[flat.stays];
        stayRemaining = new int[flat.stays];
        placeFree = new int[flat.places];
        placeHolder = new int[flat.places];
        roster = new Roster(flat);
        running = new RunningCost(flat, decoder.outlook);
    }

    void save(Decoder decoder) {
        copy(decoder.isSet, isSet);
        copy(decoder.start, start);
        copy(decoder.end, end);
        copy(decoder.complete, complete);
        copy(decoder.sequence, sequence);
        copy(decoder.crews.size, size);
        copy(decoder.crews.who, who);
        copy(decoder.crews.work, work);
        copy(decoder.isOpen, isOpen);
        copy(decoder.placeOfStay, placeOfStay);
        copy(decoder.stayEarliest, stayEarliest);
        copy(decoder.stayStart, stayStart);
        copy(decoder.stayComplete, stayComplete);
        copy(decoder.stayRemaining, stayRemaining);
        copy(decoder.placeFree, placeFree);
        copy(decoder.placeHolder, placeHolder);
        roster.become(decoder.roster);
        running.become(decoder.running);
        placed = decoder.placed;
        doesNotFit = decoder.doesNotFit;
    }

    void restore(Decoder decoder) {
        copy(isSet, decoder.isSet);
        copy(start, decoder.start);
        copy(end, decoder.end);
        copy(complete, decoder.complete);
        copy(sequence, decoder.sequence);
        copy(size, decoder.crews.size);
        copy(who, decoder.crews.who);
        copy(work, decoder.crews.work);
        copy(isOpen, decoder.isOpen);
        copy(placeOfStay, decoder.placeOfStay);
        copy(stayEarliest, decoder.stayEarliest);
        copy(stayStart, decoder.stayStart);
        copy(stayComplete, decoder.stayComplete);
        copy(stayRemaining, decoder.stayRemaining);
        copy(placeFree, decoder.placeFree);
        copy(placeHolder, decoder.placeHolder);
        decoder.roster.become(roster);
        decoder.running.become(running);
        decoder.resume(placed, doesNotFit);
    }

    private static void copy(int[] from, int[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }

    private static void copy(boolean[] from, boolean[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }
}
