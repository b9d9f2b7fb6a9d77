package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * The turns in which dispatching handed out the tasks of one plan. Other handicaps leave all turns as they were until the first in
 * which a stay that is now later had been chosen, or one that is now earlier could be; only what comes after is handed out again.
 */
final class Turns {
    private final FlatProblem flat;
    private final Decoder decoder;
    private final Timetable table;
    private final Trail trail;
    /** Per task in the order in which they got their time: the key of the one that was chosen in that turn. */
    private final long[] chosenKey;
    /** Likewise where the turn began: so many tasks had their time before it. */
    private final int[] begun;
    /** Per stay how many tasks had their time before the first of it. */
    private final int[] firstOfStay;
    /** Per stay how many had their time once the last of it did. */
    private final int[] pastStay;
    /** Per stay the earliest minute of its tasks, whatever is done before them. */
    private final int[] earliest;

    private int placed;

    Turns(Decoder decoder) {
        this.decoder = decoder;
        flat = decoder.flat;
        table = new Timetable(flat);
        trail = new Trail(decoder, table);
        chosenKey = new long[flat.tasks];
        begun = new int[flat.tasks];
        firstOfStay = new int[flat.stays];
        pastStay = new int[flat.stays];
        earliest = new int[flat.stays];
        Arrays.fill(earliest, Integer.MAX_VALUE);
        for (int task = 0; task < flat.tasks; task++) {
            int stay = flat.stayOfTask[task];
            earliest[stay] = Math.min(earliest[stay], flat.earliest[task]);
        }
    }

    /** The plan is now the one that was dispatched last; keys and beginnings of its turns that are not taken over stand there. */
    void follow(long[] keys, int[] beginnings) {
        table.take(decoder);
        trail.follow(decoder.sequence);
        int same = decoder.takenOver();
        placed = decoder.placed;
        System.arraycopy(keys, same, chosenKey, same, placed - same);
        System.arraycopy(beginnings, same, begun, same, placed - same);
        Arrays.fill(firstOfStay, placed);
        Arrays.fill(pastStay, 0);
        for (int index = 0; index < placed; index++) {
            int stay = flat.stayOfTask[decoder.sequence[index]];
            firstOfStay[stay] = Math.min(firstOfStay[stay], index);
            pastStay[stay] = index + 1;
        }
    }

    /** How many tasks have the same time with other handicaps, as far as can be told beforehand. */
    int kept(int[] before, int[] after) {
        int kept = placed;
        for (int stay = 0; stay < before.length; stay++) {
            if (after[stay] > before[stay]) {
                kept = Math.min(kept, firstOfStay[stay]);
            } else if (after[stay] < before[stay]) {
                kept = Math.min(kept, firstThatYields(stay, after[stay], kept));
            }
        }
        return kept < placed ? begun[kept] : kept;
    }

    /** The first turn, from where the stay could be chosen, whose key is not certainly less than the stay's. */
    private int firstThatYields(int stay, int handicap, int limit) {
        boolean isFirst = stay == flat.firstStay[flat.jobOfStay[stay]];
        long least = (long) handicap + Math.max(earliest[stay], isFirst ? 0 : table.stayComplete[stay - 1]);
        int end = Math.min(limit, firstOfStay[stay]);
        int index = isFirst ? 0 : pastStay[stay - 1];
        while (index < end && chosenKey[index] < least) {
            index++;
        }
        return index;
    }

    /** Puts the decoder where it stood after so many tasks. */
    void resume(int kept) {
        decoder.takeUp(trail, kept);
    }
}
