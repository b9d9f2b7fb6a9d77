package org.shedboard.pack.search;

import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * Throws a plan over at one point and lets it settle again, time after time. A job that stays overnight costs so much that no row of
 * small changes leads from the plan in which this one stays to the plan in which another does, or none; so one job gets its time
 * first, whatever that does to the others, and a short annealing repairs what it can. What comes out better is gone on from.
 */
final class Kicks {
    /** How long to settle: mostly a moment, now and then as long as it takes to find room for one job more. Found by trying. */
    private static final int[] TRIES = {300, 300, 300, 1000, 1000, 3000};

    private static final double[] HEATS = {0.1, 0.3};
    /** Share of the first heat at the end of settling. */
    private static final double COOLED = 0.01;
    /** Heat with which a plan that is a little worse is gone on from. */
    private static final double OUTER_HEAT = 0.1;

    private final FlatProblem flat;
    private final Trial trial;
    private final Annealing annealing;
    private final Moves moves;
    private final Chance chance;
    private final Excess excess;
    private final Timetable table;
    private final ListEdit edit;
    private final int[] movable;

    Kicks(FlatProblem flat, Trial trial, Annealing annealing, Moves moves, Chance chance) {
        this.flat = flat;
        this.trial = trial;
        this.annealing = annealing;
        this.moves = moves;
        this.chance = chance;
        movable = moves.jobs();
        excess = new Excess(trial.decoder.outlook, chance, movable);
        table = new Timetable(flat);
        edit = new ListEdit(flat);
    }

    /** Goes on from a solution for about so many tries. */
    void run(Solution from, long tries) {
        Solution present = from;
        long energy = settle(present);
        long end = trial.tries + tries;
        while (trial.tries < end && !trial.isStopped()) {
            Solution kicked = present.copy();
            kick(kicked);
            double perJob = (double) energy / movable.length + 1;
            double hot = perJob * HEATS[chance.below(HEATS.length)];
            long inner = Math.min(end - trial.tries, TRIES[chance.below(TRIES.length)]);
            Solution settled = annealing.run(kicked, inner, hot, hot * COOLED);
            if (annealing.energy() <= energy + (long) (perJob * OUTER_HEAT * chance.exponential())) {
                present = settled;
                energy = settle(present);
            }
        }
    }

    private long settle(Solution solution) {
        long energy = trial.decode(solution);
        table.take(trial.decoder);
        System.arraycopy(table.order, 0, solution.list, 0, solution.list.length);
        return energy;
    }

    private void kick(Solution solution) {
        edit.begin(solution, table);
        if (chance.below(4) == 0) {
            moves.changeSome(solution, table, 3 + chance.below(6));
        } else {
            bringForward(solution);
        }
        if (chance.below(4) == 0) {
            bringForward(solution);
        }
    }

    /** One job, mostly one that has much to gain, gets all its time early in the list; half of the time everyone is free to choose again. */
    private void bringForward(Solution solution) {
        int job = excess.pick(table.finish, chance.below(3) == 0 ? 1 : 3);
        int first = flat.firstTaskOfJob(job);
        int end = flat.lastTaskOfJob(job);
        edit.gather(first, end, solution.list[chance.below(1 + chance.below(flat.tasks))]);
        boolean all = chance.below(2) == 0;
        for (int task = all ? 0 : first; task < (all ? flat.tasks : end); task++) {
            solution.crew[flat.slot[task]] = Solution.ANY;
            solution.place[flat.stayOfTask[task]] = Solution.ANY;
            solution.noOvertime[task] = false;
        }
    }
}
