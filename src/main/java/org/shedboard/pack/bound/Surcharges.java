package org.shedboard.pack.bound;

import java.util.Arrays;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * What it costs at least, besides the finish, that a certain squad does a certain task, and what a stay costs whoever does it.
 *
 * <p>Handover: tasks of a stay none two of which can be done by the same person have as many people at least. Where those are
 * just the people who alone can do some task of it, every task done by someone else besides brings one more; how many such tasks
 * there are is not known, so each is charged its even share of one handover.
 */
final class Surcharges {
    private final FlatProblem flat;
    private final Squad[] squads;
    private final int[] only;

    /** Scaled points for each task and squad. */
    final long[][] points;
    /** Scaled points for each job. */
    final long[] fixed;

    Surcharges(FlatProblem flat, Squad[] squads, int[] only, long scale) {
        this.flat = flat;
        this.squads = squads;
        this.only = only;
        points = new long[flat.tasks][squads.length];
        fixed = new long[flat.jobs];
        for (int task = 0; task < flat.tasks; task++) {
            addSwapped(task, scale * flat.problem.costs().swapped());
        }
        for (int stay = 0; stay < flat.stays; stay++) {
            addHandovers(stay, scale * flat.problem.costs().handover());
        }
    }

    private void addSwapped(int task, long each) {
        boolean isJudged = flat.postedStart[task] >= 0 && flat.state[task] == FlatProblem.OPEN && flat.crew[task] == 1;
        for (int squad = 0; isJudged && squad < squads.length; squad++) {
            points[task][squad] = squads[squad].has(flat.postedPerson[task]) ? 0 : each;
        }
    }

    private void addHandovers(int stay, long each) {
        boolean[] isForced = new boolean[flat.people];
        int forced = 0;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            int person = flat.state[task] == FlatProblem.DONE ? flat.begunBy[task] : only[task];
            if (person >= 0 && !isForced[person]) {
                isForced[person] = true;
                forced++;
            }
        }
        int different = Math.max(forced, differentPeople(stay));
        fixed[flat.jobOfStay[stay]] += each * Math.max(0, different - flat.crewOfStay[stay]);
        if (different == forced && forced >= flat.crewOfStay[stay]) {
            share(stay, isForced, each);
        }
    }

    private void share(int stay, boolean[] isForced, long each) {
        int free = 0;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            free += isFree(task) ? 1 : 0;
        }
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            for (int squad = 0; isFree(task) && squad < squads.length; squad++) {
                boolean isNew = Arrays.stream(squads[squad].people).noneMatch(person -> isForced[person]);
                points[task][squad] += isNew ? each / free : 0;
            }
        }
    }

    private boolean isFree(int task) {
        boolean isAhead = flat.state[task] == FlatProblem.OPEN || flat.state[task] == FlatProblem.INTERRUPTED;
        return isAhead && flat.crew[task] > 0 && only[task] < 0;
    }

    /** Picks tasks greedily, those that fewest can do first, as long as each needs someone else. */
    private int differentPeople(int stay) {
        boolean[] isUsed = new boolean[flat.people];
        int[] tasks = new int[flat.firstTask[stay + 1] - flat.firstTask[stay]];
        Arrays.setAll(tasks, index -> flat.firstTask[stay] + index);
        int[] byChoice = Arrays.stream(tasks)
                .filter(task -> who(task).length > 0)
                .boxed()
                .sorted((one, other) -> Integer.compare(who(one).length, who(other).length))
                .mapToInt(Integer::intValue)
                .toArray();
        int different = 0;
        for (int task : byChoice) {
            if (Arrays.stream(who(task)).noneMatch(person -> isUsed[person])) {
                Arrays.stream(who(task)).forEach(person -> isUsed[person] = true);
                different++;
            }
        }
        return different;
    }

    private int[] who(int task) {
        if (flat.state[task] == FlatProblem.DONE) {
            return flat.begunBy[task] < 0 ? new int[0] : new int[] {flat.begunBy[task]};
        }
        if (only[task] >= 0) {
            return new int[] {only[task]};
        }
        return flat.crew[task] == 0 ? new int[0] : flat.able[task];
    }
}
