package org.shedboard.pack.search;

import java.util.Arrays;

/** How a decoder stood after the first so many tasks of a list. */
final class Checkpoint {
    private final Decoder decoder;
    /** Copies of {@link Decoder#numbers()}, and so on. */
    private final int[][] numbers;

    private final boolean[][] marks;
    private final Roster roster;
    private final RunningCost running;
    private int placed;
    private boolean doesNotFit;

    /** Has room for how the decoder can stand, and nothing in it yet. */
    Checkpoint(Decoder decoder) {
        this.decoder = decoder;
        numbers = Arrays.stream(decoder.numbers()).map(int[]::clone).toArray(int[][]::new);
        marks = Arrays.stream(decoder.marks()).map(boolean[]::clone).toArray(boolean[][]::new);
        roster = new Roster(decoder.flat);
        running = new RunningCost(decoder.flat, decoder.outlook);
    }

    void save() {
        copy(decoder.numbers(), numbers);
        copy(decoder.marks(), marks);
        roster.become(decoder.roster);
        running.become(decoder.running);
        placed = decoder.placed;
        doesNotFit = decoder.doesNotFit;
    }

    void restore() {
        copy(numbers, decoder.numbers());
        copy(marks, decoder.marks());
        decoder.roster.become(roster);
        decoder.running.become(running);
        decoder.resume(placed, doesNotFit);
    }

    private static void copy(int[][] from, int[][] to) {
        for (int index = 0; index < from.length; index++) {
            System.arraycopy(from[index], 0, to[index], 0, from[index].length);
        }
    }

    private static void copy(boolean[][] from, boolean[][] to) {
        for (int index = 0; index < from.length; index++) {
            System.arraycopy(from[index], 0, to[index], 0, from[index].length);
        }
    }
}
