package org.shedboard.pack.search;

import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * Follows what holds a job up, from its last task back through time, and breaks the chain at one link: somebody else does one of
 * two tasks, or the two change their order, or one of two stays goes to another place or first.
 */
final class Chain {
    private static final int LONGEST = 40;

    private final FlatProblem flat;
    private final Chance chance;
    private final Excess excess;
    private Timetable table;

    Chain(FlatProblem flat, Chance chance, Excess excess) {
        this.flat = flat;
        this.chance = chance;
        this.excess = excess;
    }

    void breakOne(ListEdit edit, Timetable of) {
        table = of;
        int task = lastTaskOf(excess.pick(table.finish, 3));
        for (int links = 0; links < LONGEST && task >= 0; links++) {
            int earlier = previousOfPerson(task);
            if (earlier >= 0 && chance.below(3) > 0) {
                breakPerson(edit, task, earlier);
                return;
            }
            int stay = flat.stayOfTask[task];
            int holder = previousInPlace(stay);
            if (holder >= 0 && chance.below(3) > 0) {
                breakPlace(edit, stay, holder);
                return;
            }
            task = before(task, earlier, holder);
        }
    }

    private int lastTaskOf(int job) {
        return lastTaskOf(flat.firstTaskOfJob(job), flat.lastTaskOfJob(job));
    }

    private int lastTaskOf(int first, int end) {
        int last = first;
        for (int task = first; task < end; task++) {
            if (complete(task) >= complete(last)) {
                last = task;
            }
        }
        return last;
    }

    private int complete(int task) {
        return table.end[task] + flat.unattended[task];
    }

    /** The task after whose work one of the task's people starts it without a pause; -1 when none. */
    private int previousOfPerson(int task) {
        if (table.size[task] <= 0 || flat.state[task] == FlatProblem.DONE) {
            return -1;
        }
        int member = flat.slot[task] + (table.size[task] == 1 ? 0 : chance.below(table.size[task]));
        int person = table.who[member];
        int from = table.work[member];
        for (int index = table.position[task] - 1; index >= 0; index--) {
            int other = table.order[index];
            if (flat.state[other] != FlatProblem.DONE && table.isOn(other, person)) {
                return workOf(other, person) + flat.minutes[other][person] == from ? other : -1;
            }
        }
        return -1;
    }

    private int workOf(int task, int person) {
        int member = flat.slot[task];
        while (table.who[member] != person) {
            member++;
        }
        return table.work[member];
    }

    /** The stay that had to leave its place before this one could begin; -1 when none. */
    private int previousInPlace(int stay) {
        int place = table.placeOfStay[stay];
        if (place < 0 || flat.stayHasBegun[stay]) {
            return -1;
        }
        for (int other = 0; other < flat.stays; other++) {
            if (other != stay
                    && table.placeOfStay[other] == place
                    && table.stayComplete[other] == table.stayEarliest[stay]) {
                return other;
            }
        }
        return -1;
    }

    /** What the task waits for that is over last. */
    private int before(int task, int ofPerson, int holder) {
        int stay = flat.stayOfTask[task];
        int latest = -1;
        for (int waited : flat.before[task]) {
            latest = latest < 0 || complete(waited) > complete(latest) ? waited : latest;
        }
        if (ofPerson >= 0 && (latest < 0 || chance.below(2) == 0)) {
            return ofPerson;
        }
        if (latest >= 0) {
            return latest;
        }
        if (holder >= 0 && chance.below(2) == 0) {
            return lastTaskOf(flat.firstTask[holder], flat.firstTask[holder + 1]);
        }
        boolean isFirst = stay == flat.firstStay[flat.jobOfTask[task]];
        return isFirst ? -1 : lastTaskOf(flat.firstTask[stay - 1], flat.firstTask[stay]);
    }

    private void breakPerson(ListEdit edit, int task, int earlier) {
        int kind = chance.below(6);
        if (kind < 2) {
            int changed = kind == 0 ? task : earlier;
            int[] able = flat.able[changed];
            if (flat.crew[changed] == 1 && able.length > 1) {
                edit.setCrew(changed, anotherOf(able, table.who[flat.slot[changed]]));
                return;
            }
        }
        if (kind == 5) {
            edit.move(earlier, edit.indexOf(task));
        } else {
            edit.move(task, edit.indexOf(earlier));
        }
    }

    private void breakPlace(ListEdit edit, int stay, int holder) {
        int changed = chance.below(2) == 0 ? stay : holder;
        int[] places = flat.placesOfStay[changed];
        if (places.length > 1 && chance.below(2) == 0) {
            edit.setPlace(changed, anotherOf(places, table.placeOfStay[changed]));
            return;
        }
        int first = flat.firstTask[stay];
        int minutes = table.start[flat.firstTask[holder]] - table.start[first] - 1;
        edit.retime(first, flat.lastTaskOfJob(flat.jobOfStay[stay]), minutes);
    }

    private int anotherOf(int[] several, int one) {
        int picked = several[chance.below(several.length - 1)];
        return picked == one ? several[several.length - 1] : picked;
    }
}
