package org.shedboard.pack.search;

import org.shedboard.pack.numbers.FlatProblem;

/** Changes of one solution's list, with an eye on how much of its beginning stays as it was. */
final class ListEdit {
    private final FlatProblem flat;
    private final int[] moved;
    private final int[] stayed;
    private int movedCount;
    private int stayedCount;
    private Solution solution;
    private Timetable table;
    private int kept;

    ListEdit(FlatProblem flat) {
        this.flat = flat;
        moved = new int[flat.tasks];
        stayed = new int[flat.tasks];
    }

    /** From here on the list is the solution's; it stands in order of the timetable's starts. */
    void begin(Solution changed, Timetable of) {
        solution = changed;
        table = of;
        kept = flat.tasks;
    }

    /** So many tasks at the beginning of the list are as they were. */
    int kept() {
        return kept;
    }

    int indexOf(int task) {
        int[] list = solution.list;
        int index = table.position[task];
        if (list[index] == task) {
            return index;
        }
        index = 0;
        while (list[index] != task) {
            index++;
        }
        return index;
    }

    /** Something about the task changed: from it on nothing is as it was. What is pinned to a minute is booked before all others. */
    void touch(int task) {
        touchFrom(flat.at[task] >= 0 ? 0 : indexOf(task));
        solution.retry(flat.stayOfTask[task]);
    }

    private void touchFrom(int index) {
        kept = Math.min(kept, index);
    }

    /** Something about the whole stay changed. */
    void touchStay(int stay) {
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            touch(task);
        }
    }

    void setPlace(int stay, int place) {
        solution.place[stay] = place;
        touchStay(stay);
    }

    void setCrew(int task, int person) {
        solution.crew[flat.slot[task]] = person;
        touch(task);
    }

    void move(int task, int to) {
        int from = indexOf(task);
        int[] list = solution.list;
        if (from < to) {
            System.arraycopy(list, from + 1, list, from, to - from);
        } else {
            System.arraycopy(list, to, list, to + 1, from - to);
        }
        list[to] = task;
        touchFrom(Math.min(from, to));
        solution.retry(flat.stayOfTask[task]);
    }

    /** Puts these tasks of one job one after the other before another task; where that is one of them, before what follows it. */
    void gather(int firstTask, int endTask, int before) {
        int target = indexOf(before);
        split(firstTask, endTask);
        int[] list = solution.list;
        int earlier = 0;
        for (int index = 0; index < target; index++) {
            earlier += list[index] >= firstTask && list[index] < endTask ? 0 : 1;
        }
        for (int index = 0; index < list.length; index++) {
            int task = index < earlier
                    ? stayed[index]
                    : index < earlier + movedCount ? moved[index - earlier] : stayed[index - movedCount];
            put(index, task);
        }
    }

    /** Puts these tasks of one job where they would be if they started so much later, or earlier if negative. */
    void retime(int firstTask, int endTask, int minutes) {
        split(firstTask, endTask);
        int nextMoved = 0;
        int nextStayed = 0;
        for (int index = 0; index < flat.tasks; index++) {
            boolean takeMoved = nextMoved < movedCount
                    && (nextStayed == stayedCount
                            || (long) table.start[moved[nextMoved]] + minutes < table.start[stayed[nextStayed]]);
            put(index, takeMoved ? moved[nextMoved++] : stayed[nextStayed++]);
        }
    }

    private void split(int firstTask, int endTask) {
        movedCount = 0;
        stayedCount = 0;
        for (int task : solution.list) {
            if (task >= firstTask && task < endTask) {
                moved[movedCount++] = task;
                solution.retry(flat.stayOfTask[task]);
            } else {
                stayed[stayedCount++] = task;
            }
        }
    }

    private void put(int index, int task) {
        if (solution.list[index] != task) {
            touchFrom(index);
            solution.list[index] = task;
        }
    }
}
