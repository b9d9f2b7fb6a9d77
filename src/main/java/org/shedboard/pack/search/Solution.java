package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;

/** What the decoder makes a plan of: the order in which tasks are given their time, and a few wishes. */
final class Solution {
    static final int ANY = -1;

    /** Every task once; a task whose earlier ones come later in the list pulls them forward. */
    final int[] list;
    /** Who shall do a task, from its {@link FlatProblem#slot} on; {@link #ANY} in the first leaves the choice to the decoder. */
    final int[] crew;
    /** Per stay the place it shall have; {@link #ANY} leaves the choice to the decoder. */
    final int[] place;
    /** Per task: its work keeps out of overtime. */
    final boolean[] noOvertime;
    /** Per task: it starts no earlier than this. */
    final int[] notBefore;
    /**
     * Per stay the minute before which it does not open in {@link #shutPlace}, because opened earlier it ran into a closed time
     * there. The decoder fills it in; whoever changes what may have been the reason lets it {@link #retry}.
     */
    final int[] shutUntil;

    /** Per stay the place for which {@link #shutUntil} holds; {@link #ANY} when none. */
    final int[] shutPlace;

    private Solution(Solution like) {
        list = like.list.clone();
        crew = like.crew.clone();
        place = like.place.clone();
        noOvertime = like.noOvertime.clone();
        notBefore = like.notBefore.clone();
        shutUntil = like.shutUntil.clone();
        shutPlace = like.shutPlace.clone();
    }

    private Solution(FlatProblem flat) {
        list = new int[flat.tasks];
        crew = new int[flat.slots];
        place = new int[flat.stays];
        noOvertime = new boolean[flat.tasks];
        notBefore = new int[flat.tasks];
        shutUntil = new int[flat.stays];
        shutPlace = new int[flat.stays];
        Arrays.setAll(list, index -> index);
        Arrays.fill(crew, ANY);
        Arrays.fill(place, ANY);
        Arrays.fill(shutPlace, ANY);
    }

    static Solution plain(FlatProblem flat) {
        return new Solution(flat);
    }

    Solution copy() {
        return new Solution(this);
    }

    void become(Solution other) {
        System.arraycopy(other.list, 0, list, 0, list.length);
        System.arraycopy(other.crew, 0, crew, 0, crew.length);
        System.arraycopy(other.place, 0, place, 0, place.length);
        System.arraycopy(other.noOvertime, 0, noOvertime, 0, noOvertime.length);
        System.arraycopy(other.notBefore, 0, notBefore, 0, notBefore.length);
        System.arraycopy(other.shutUntil, 0, shutUntil, 0, shutUntil.length);
        System.arraycopy(other.shutPlace, 0, shutPlace, 0, shutPlace.length);
    }

    /** Leaves the choice of all people and places to the decoder. */
    void letChoose() {
        Arrays.fill(crew, ANY);
        Arrays.fill(place, ANY);
    }

    /** The stay opens as early as it can again, be a closed time in the way or not. */
    void retry(int stay) {
        shutPlace[stay] = ANY;
    }

    /** The first minute at which the stay may open there, as far as closed times were found in the way. */
    int shutUntil(int stay, int at) {
        return shutPlace[stay] == at ? shutUntil[stay] : 0;
    }
}
