package org.shedboard.pack.search;

import java.util.stream.IntStream;
import org.shedboard.pack.numbers.FlatProblem;

/** Those who may do a task, as far as wishes, pins, skills and the rule that nobody signs off their own work say. */
final class Candidates {
    private final FlatProblem flat;
    private final Crews crews;
    /** Per task: everyone with the skill may do it, whoever does the others. */
    private final boolean[] isOpenToAll;
    /** Per task: the people on the tasks it is apart from can be so many that too few are left for it. */
    private final boolean[] canRunOut;

    private final int[] chosen;
    /** The first {@link #count} of them are candidates; nobody writes here. */
    int[] people;

    int count;

    Candidates(FlatProblem flat, Crews crews) {
        this.flat = flat;
        this.crews = crews;
        chosen = new int[flat.people];
        isOpenToAll = new boolean[flat.tasks];
        canRunOut = new boolean[flat.tasks];
        for (int task = 0; task < flat.tasks; task++) {
            int able = flat.able[task].length;
            isOpenToAll[task] = flat.apart[task].length == 0 && pinOf(task) < 0 && able >= flat.crew[task];
            int most = IntStream.of(flat.apart[task])
                    .map(other -> flat.crew[other])
                    .sum();
            canRunOut[task] = able - most - 1 < flat.crew[task] || pinOf(task) >= 0;
        }
    }

    /**
     * Those wished for if they will do, else everyone who may.
     *
     * @return false where too few may; then all with the skill are candidates
     */
    boolean find(int task, int[] wished) {
        people = chosen;
        int crew = flat.crew[task];
        int slot = flat.slot[task];
        if (wished[slot] != Solution.ANY) {
            count = 0;
            for (int member = slot; member < slot + crew; member++) {
                addIfAllowed(task, wished[member]);
            }
            if (count == crew && holdsPin(task)) {
                return true;
            }
        }
        if (isOpenToAll[task]) {
            people = flat.able[task];
            count = people.length;
            return true;
        }
        count = 0;
        for (int person : flat.able[task]) {
            addIfAllowed(task, person);
        }
        if (count >= crew && holdsPin(task)) {
            return true;
        }
        count = 0;
        for (int person : flat.able[task]) {
            if (isWanted(task, person)) {
                chosen[count++] = person;
            }
        }
        return false;
    }

    private void addIfAllowed(int task, int person) {
        if (isWanted(task, person) && flat.isAble[task * flat.people + person] && mayDo(task, person)) {
            chosen[count++] = person;
        }
    }

    /** Where one person does the task, only the pinned one will do. */
    private boolean isWanted(int task, int person) {
        int pin = pinOf(task);
        return pin < 0 || pin == person || flat.crew[task] > 1;
    }

    int pinOf(int task) {
        return flat.state[task] == FlatProblem.OPEN ? flat.pinnedTo[task] : -1;
    }

    private boolean holdsPin(int task) {
        int pin = pinOf(task);
        for (int index = 0; index < count && pin >= 0; index++) {
            if (people[index] == pin) {
                return true;
            }
        }
        return pin < 0;
    }

    /** Nobody signs off their own work, and somebody must be left for the task that has to be done by another. */
    private boolean mayDo(int task, int person) {
        for (int other : flat.apart[task]) {
            if (crews.isKnown(other) ? crews.isOn(other, person) : canRunOut[other] && leavesTooFew(other, person)) {
                return false;
            }
        }
        return true;
    }

    /** Whoever did, or will do, one of the tasks that the other is apart from is lost to it as this person would be. */
    private boolean leavesTooFew(int other, int person) {
        int left = 0;
        for (int able : flat.able[other]) {
            left += able != person && !isLost(other, able) ? 1 : 0;
        }
        int pin = pinOf(other);
        return left < flat.crew[other] || (pin >= 0 && pin == person);
    }

    private boolean isLost(int task, int person) {
        for (int other : flat.apart[task]) {
            if (crews.isKnown(other) && crews.isOn(other, person)) {
                return true;
            }
        }
        return false;
    }
}
