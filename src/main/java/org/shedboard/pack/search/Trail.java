package org.shedboard.pack.search;

import java.util.Arrays;

/**
 * The way along which a plan's list was decoded, with a {@link Checkpoint} every so many tasks: a list that begins like it goes on
 * from the last checkpoint before the two part, and the beginning is not decoded again.
 */
final class Trail {
    private static final int MOST_CHECKPOINTS = 24;

    private final Decoder decoder;
    private final Timetable table;
    private final int[] list;
    /** Tasks from one checkpoint to the next. */
    private final int spacing;

    private final Checkpoint[] checkpoints;
    /** So many checkpoints, from the first on, belong to the list as it is. */
    private int known;

    /** @param table the plan; whoever changes it says so by {@link #follow} */
    Trail(Decoder decoder, Timetable table) {
        this.decoder = decoder;
        this.table = table;
        int tasks = decoder.flat.tasks;
        list = new int[tasks];
        spacing = Math.max(4, tasks / MOST_CHECKPOINTS + 1);
        checkpoints = new Checkpoint[tasks / spacing + 1];
        Arrays.setAll(checkpoints, index -> new Checkpoint(decoder));
    }

    /**
     * The plan is now the one that was decoded last, of which the decoder says how much it took over.
     *
     * @param order its tasks, each after those it waits for
     */
    void follow(int[] order) {
        int same = 0;
        while (same < decoder.takenOver() && list[same] == order[same]) {
            same++;
        }
        System.arraycopy(order, same, list, same, list.length - same);
        known = same == 0 ? 0 : Math.min(known, same / spacing + 1);
    }

    /** Puts the decoder where it stood after so many tasks of the list; the answer is how many of them have their time. */
    int resume(int kept) {
        if (kept == 0 || !table.isStraight()) {
            decoder.begin();
            return 0;
        }
        int from = begin(kept);
        for (int index = from; index < kept; index++) {
            decoder.retrace(list[index], table);
            keep(index + 1);
        }
        return kept;
    }

    /** The answer is after how many tasks the decoder stands. */
    private int begin(int kept) {
        if (known == 0) {
            decoder.begin();
            keep(0);
            return 0;
        }
        int last = Math.min(known - 1, kept / spacing);
        checkpoints[last].restore();
        return last * spacing;
    }

    private void keep(int done) {
        if (done == known * spacing && known < checkpoints.length) {
            checkpoints[known++].save();
        }
    }
}
