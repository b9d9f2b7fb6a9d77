package org.shedboard.pack;

import java.util.Arrays;

/** What the decoder makes a plan of: the order in which tasks are given their time, and a few wishes. */
final class Solution {
    /** Every task once; a task whose earlier ones come later in the list pulls them forward. */
    final int[] list;
    /** Per task who shall do it; null leaves the choice to the decoder. */
    final int[][] crew;
    /** Per stay the place it shall have; -1 leaves the choice to the decoder. */
    final int[] place;
    /** Per task: its work keeps out of overtime. */
    final boolean[] noOvertime;
    /** Per task: it starts no earlier than this. */
    final int[] notBefore;

    private Solution(int[] list, int[][] crew, int[] place, boolean[] noOvertime, int[] notBefore) {
        this.list = list;
        this.crew = crew;
        this.place = place;
        this.noOvertime = noOvertime;
        this.notBefore = notBefore;
    }

    static Solution plain(FlatProblem flat) {
        int[] list = new int[flat.tasks];
        Arrays.setAll(list, index -> index);
        int[] place = new int[flat.stays];
        Arrays.fill(place, -1);
        return new Solution(list, new int[flat.tasks][], place, new boolean[flat.tasks], new int[flat.tasks]);
    }

    Solution copy() {
        return new Solution(list.clone(), crew.clone(), place.clone(), noOvertime.clone(), notBefore.clone());
    }

    void become(Solution other) {
        System.arraycopy(other.list, 0, list, 0, list.length);
        System.arraycopy(other.crew, 0, crew, 0, crew.length);
        System.arraycopy(other.place, 0, place, 0, place.length);
        System.arraycopy(other.noOvertime, 0, noOvertime, 0, noOvertime.length);
        System.arraycopy(other.notBefore, 0, notBefore, 0, notBefore.length);
    }
}
