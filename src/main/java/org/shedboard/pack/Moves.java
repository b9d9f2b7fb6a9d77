package org.shedboard.pack;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Small changes of a solution, chosen by chance. */
final class Moves {
    private final FlatProblem flat;
    private final Chance chance;
    /** Tasks that can be moved at all. */
    private final int[] movable;

    private final int[] posted;

    Moves(FlatProblem flat, Chance chance, boolean[] left) {
        this.flat = flat;
        this.chance = chance;
        movable = IntStream.range(0, flat.tasks)
                .filter(task -> !left[flat.jobOfTask[task]])
                .filter(task -> flat.state[task] == FlatProblem.OPEN || flat.state[task] == FlatProblem.INTERRUPTED)
                .toArray();
        posted = Arrays.stream(movable)
                .filter(task -> flat.postedStart[task] >= 0)
                .toArray();
    }

    boolean isEmpty() {
        return movable.length == 0;
    }

    void change(Solution solution) {
        int kind = chance.below(100);
        int task = movable[chance.below(movable.length)];
        if (kind < 34) {
            shift(solution, task);
        } else if (kind < 44) {
            shiftJob(solution, flat.jobOfTask[task]);
        } else if (kind < 64) {
            changeCrew(solution, task);
        } else if (kind < 74) {
            changeCrewOfStay(solution, flat.stayOfTask[task]);
        } else if (kind < 86) {
            changePlace(solution, flat.stayOfTask[task]);
        } else if (kind < 92) {
            solution.noOvertime[task] ^= true;
        } else {
            retime(solution, task);
        }
        if (chance.below(5) == 0) {
            change(solution);
        }
    }

    /** One task goes some places forward or back, near ones more often than far ones. */
    private void shift(Solution solution, int task) {
        int from = indexOf(solution.list, task);
        move(solution.list, from, nearby(solution.list.length, from));
    }

    private int nearby(int length, int from) {
        int reach = 1 + chance.below(1 + chance.below(Math.min(length, 60)));
        int to = chance.below(2) == 0 ? from - reach : from + reach;
        return Math.max(0, Math.min(length - 1, to));
    }

    /** All later tasks of a job are moved to one part of the list, in the order they have. */
    private void shiftJob(Solution solution, int job) {
        int[] list = solution.list;
        int shift = nearby(list.length, list.length / 2) - list.length / 2;
        if (shift < 0) {
            for (int index = 0; index < list.length; index++) {
                if (flat.jobOfTask[list[index]] == job) {
                    move(list, index, Math.max(0, index + shift));
                }
            }
        } else {
            for (int index = list.length - 1; index >= 0; index--) {
                if (flat.jobOfTask[list[index]] == job) {
                    move(list, index, Math.min(list.length - 1, index + shift));
                }
            }
        }
    }

    private static int indexOf(int[] list, int task) {
        int index = 0;
        while (list[index] != task) {
            index++;
        }
        return index;
    }

    private static void move(int[] list, int from, int to) {
        int task = list[from];
        if (from < to) {
            System.arraycopy(list, from + 1, list, from, to - from);
        } else {
            System.arraycopy(list, to, list, to + 1, from - to);
        }
        list[to] = task;
    }

    private void changeCrew(Solution solution, int task) {
        if (flat.crew[task] == 0 || chance.below(3) == 0) {
            solution.crew[task] = null;
            return;
        }
        int[] able = flat.able[task].clone();
        int[] crew = new int[flat.crew[task]];
        for (int member = 0; member < crew.length; member++) {
            int pick = member + chance.below(able.length - member);
            crew[member] = able[pick];
            able[pick] = able[member];
        }
        solution.crew[task] = crew;
    }

    /** One person for all of a stay that they can do. */
    private void changeCrewOfStay(Solution solution, int stay) {
        int first = flat.firstTask[stay];
        int someTask = first + chance.below(flat.firstTask[stay + 1] - first);
        int[] able = flat.able[someTask];
        boolean free = able.length == 0 || chance.below(4) == 0;
        int person = free ? -1 : able[chance.below(able.length)];
        for (int task = first; task < flat.firstTask[stay + 1]; task++) {
            if (person < 0) {
                solution.crew[task] = null;
            } else if (flat.crew[task] == 1 && Crews.contains(flat.able[task], person)) {
                solution.crew[task] = new int[] {person};
            }
        }
    }

    private void changePlace(Solution solution, int stay) {
        int[] places = flat.placesOfStay[stay];
        boolean free = places.length == 0 || chance.below(3) == 0;
        solution.place[stay] = free ? -1 : places[chance.below(places.length)];
    }

    /** Holds a task to its posted start, or lets go; a whole stay half of the time. */
    private void retime(Solution solution, int task) {
        if (posted.length == 0) {
            shift(solution, task);
            return;
        }
        int chosen = posted[chance.below(posted.length)];
        boolean hold = solution.notBefore[chosen] == 0;
        int stay = flat.stayOfTask[chosen];
        boolean alone = chance.below(2) == 0;
        for (int other = flat.firstTask[stay]; other < flat.firstTask[stay + 1]; other++) {
            if (other == chosen || !alone) {
                solution.notBefore[other] = hold ? Math.max(0, flat.postedStart[other]) : 0;
            }
        }
    }
}
