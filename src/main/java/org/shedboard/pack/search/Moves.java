package org.shedboard.pack.search;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/** Small changes of a solution whose list stands in order of start, chosen by chance. */
final class Moves {
    /** Kinds of change, and how often each is chosen where it makes sense at all; found by trying. */
    private enum Kind {
        SHIFT(20),
        CHAIN(30),
        RETIME(12),
        BLOCK(10),
        CREW(12),
        CREW_OF_STAY(6),
        ANY_CREW(10),
        PLACE(6),
        OVERTIME(3),
        OVERTIME_FROM(5),
        HOLD(8);

        final int weight;

        Kind(int weight) {
            this.weight = weight;
        }
    }

    private final FlatProblem flat;
    private final Chance chance;
    private final Chain chain;
    private final ListEdit edit;
    private final Kind[] kinds;
    /** Tasks that can be moved at all. */
    private final int[] movable;

    private final int[] movableJobs;
    private final int[] posted;

    Moves(FlatProblem flat, Outlook outlook, Chance chance, boolean[] left) {
        this.flat = flat;
        this.chance = chance;
        movable = FlatProblem.numbersOf(flat.tasks, task -> !left[flat.jobOfTask[task]] && flat.isFree(task));
        movableJobs = Arrays.stream(movable)
                .map(task -> flat.jobOfTask[task])
                .distinct()
                .toArray();
        posted = Arrays.stream(movable)
                .filter(task -> flat.postedStart[task] >= 0)
                .toArray();
        edit = new ListEdit(flat);
        chain = new Chain(flat, chance, new Excess(outlook, chance, movableJobs));
        kinds = Arrays.stream(Kind.values())
                .filter(this::makesSense)
                .flatMap(kind -> IntStream.range(0, kind.weight).mapToObj(times -> kind))
                .toArray(Kind[]::new);
    }

    private boolean makesSense(Kind kind) {
        return switch (kind) {
            case SHIFT, CHAIN -> true;
            case RETIME, BLOCK -> movableJobs.length > 1;
            case CREW, CREW_OF_STAY, ANY_CREW -> Arrays.stream(movable).anyMatch(this::hasChoiceOfCrew);
            case PLACE -> Arrays.stream(movable).anyMatch(task -> flat.placesOfStay[flat.stayOfTask[task]].length > 1);
            case OVERTIME, OVERTIME_FROM ->
                flat.problem.people().stream()
                        .anyMatch(person -> !person.overtime().isEmpty());
            case HOLD -> posted.length > 0;
        };
    }

    private boolean hasChoiceOfCrew(int task) {
        return flat.crew[task] > 0 && flat.able[task].length > flat.crew[task];
    }

    boolean isEmpty() {
        return movable.length == 0;
    }

    /** The jobs that can be moved at all. */
    int[] jobs() {
        return movableJobs;
    }

    /** So many changes at once. */
    void changeSome(Solution solution, Timetable table, int times) {
        edit.begin(solution, table);
        for (int change = 0; change < times; change++) {
            changeOnce(solution, table);
        }
    }

    /** Changes the solution, whose plan is the timetable; returns how much of the list, from its beginning, has nothing to do with it. */
    int change(Solution solution, Timetable table) {
        edit.begin(solution, table);
        do {
            changeOnce(solution, table);
        } while (chance.below(5) == 0);
        return edit.kept();
    }

    private void changeOnce(Solution solution, Timetable table) {
        int task = movable[chance.below(movable.length)];
        switch (kinds[chance.below(kinds.length)]) {
            case SHIFT -> edit.move(task, nearby(edit.indexOf(task)));
            case CHAIN -> chain.breakOne(edit, table);
            case RETIME -> retime(solution, task, table);
            case BLOCK -> block(solution, task);
            case CREW -> changeCrew(solution, task);
            case CREW_OF_STAY -> changeCrewOfStay(solution, flat.stayOfTask[task]);
            case ANY_CREW -> letAnyoneDo(solution, flat.stayOfTask[task]);
            case PLACE -> changePlace(solution, flat.stayOfTask[task]);
            case OVERTIME -> setOvertime(solution, task, !solution.noOvertime[task]);
            case OVERTIME_FROM -> setOvertimeFrom(solution, task);
            case HOLD -> hold(solution);
        }
    }

    /** A place in the list some way forward or back, near ones more often than far ones. */
    private int nearby(int from) {
        int length = flat.tasks;
        int reach = 1 + chance.below(1 + chance.below(Math.min(length, 60)));
        int to = chance.below(2) == 0 ? from - reach : from + reach;
        return Math.max(0, Math.min(length - 1, to));
    }

    /** The job, from this task's stay on, goes some minutes earlier or later; or to where another job is. */
    private void retime(Solution solution, int task, Timetable table) {
        int minutes;
        if (chance.below(2) == 0) {
            int other = movable[chance.below(movable.length)];
            minutes = table.start[other] - table.start[task] + chance.below(3) - 1;
        } else {
            int reach = 1 + chance.below(1 + chance.below(1 + chance.below(flat.problem.horizon())));
            minutes = chance.below(2) == 0 ? reach : -reach;
        }
        boolean whole = chance.below(2) == 0;
        int first = whole ? flat.firstTaskOfJob(flat.jobOfTask[task]) : flat.firstTask[flat.stayOfTask[task]];
        release(solution, first, flat.lastTaskOfJob(flat.jobOfTask[task]));
        edit.retime(first, flat.lastTaskOfJob(flat.jobOfTask[task]), minutes);
    }

    /** The job, from this task's stay on, gets its time in one go, as early as it can be had before some other task. */
    private void block(Solution solution, int task) {
        boolean whole = chance.below(2) == 0;
        int first = whole ? flat.firstTaskOfJob(flat.jobOfTask[task]) : flat.firstTask[flat.stayOfTask[task]];
        release(solution, first, flat.lastTaskOfJob(flat.jobOfTask[task]));
        edit.gather(first, flat.lastTaskOfJob(flat.jobOfTask[task]), movable[chance.below(movable.length)]);
    }

    /** Who and where is open again for these tasks. */
    private void release(Solution solution, int first, int end) {
        if (chance.below(4) > 0) {
            for (int task = first; task < end; task++) {
                solution.crew[flat.slot[task]] = Solution.ANY;
                solution.place[flat.stayOfTask[task]] = Solution.ANY;
                edit.touch(task);
            }
        }
    }

    private void changeCrew(Solution solution, int task) {
        int slot = flat.slot[task];
        edit.touch(task);
        if (flat.crew[task] == 0 || chance.below(3) == 0) {
            solution.crew[slot] = Solution.ANY;
            return;
        }
        int[] able = flat.able[task];
        for (int member = 0; member < flat.crew[task]; member++) {
            int person = able[chance.below(able.length)];
            while (isAmong(solution.crew, slot, slot + member, person)) {
                person = able[chance.below(able.length)];
            }
            solution.crew[slot + member] = person;
        }
    }

    private static boolean isAmong(int[] crew, int from, int to, int person) {
        for (int member = from; member < to; member++) {
            if (crew[member] == person) {
                return true;
            }
        }
        return false;
    }

    /** One person for all of a stay that they can do. */
    private void changeCrewOfStay(Solution solution, int stay) {
        int first = flat.firstTask[stay];
        int someTask = first + chance.below(flat.firstTask[stay + 1] - first);
        int[] able = flat.able[someTask];
        boolean free = able.length == 0 || chance.below(4) == 0;
        int person = free ? Solution.ANY : able[chance.below(able.length)];
        for (int task = first; task < flat.firstTask[stay + 1]; task++) {
            if (free || (flat.crew[task] == 1 && flat.isAble[task * flat.people + person])) {
                solution.crew[flat.slot[task]] = person;
                edit.touch(task);
            }
        }
    }

    private void letAnyoneDo(Solution solution, int stay) {
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            solution.crew[flat.slot[task]] = Solution.ANY;
            edit.touch(task);
        }
    }

    private void changePlace(Solution solution, int stay) {
        int[] places = flat.placesOfStay[stay];
        boolean free = places.length == 0 || chance.below(3) == 0;
        solution.place[stay] = free ? Solution.ANY : places[chance.below(places.length)];
        edit.touchStay(stay);
    }

    private void setOvertime(Solution solution, int task, boolean none) {
        solution.noOvertime[task] = none;
        edit.touch(task);
    }

    /** The task and all that is still to come of its stay or its job keep out of overtime, or need not any more. */
    private void setOvertimeFrom(Solution solution, int task) {
        boolean none = !solution.noOvertime[task];
        boolean stayOnly = chance.below(2) == 0;
        int end = stayOnly ? flat.firstTask[flat.stayOfTask[task] + 1] : flat.lastTaskOfJob(flat.jobOfTask[task]);
        for (int other = task; other < end; other++) {
            setOvertime(solution, other, none);
        }
    }

    /** Holds a task to its posted start, or lets go; a whole stay half of the time. */
    private void hold(Solution solution) {
        int chosen = posted[chance.below(posted.length)];
        boolean hold = solution.notBefore[chosen] == 0;
        int stay = flat.stayOfTask[chosen];
        boolean alone = chance.below(2) == 0;
        for (int other = flat.firstTask[stay]; other < flat.firstTask[stay + 1]; other++) {
            if (other == chosen || !alone) {
                solution.notBefore[other] = hold ? Math.max(0, flat.postedStart[other]) : 0;
                edit.touch(other);
            }
        }
    }
}
