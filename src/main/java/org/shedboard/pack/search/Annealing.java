package org.shedboard.pack.search;

import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * Looks for a better list of tasks by small changes. A change for the worse is taken with a chance that falls as the search cools;
 * it cools by tries, so that the same seed and tries always end the same way.
 */
final class Annealing {
    private static final int TRIES_A_HEAT = 64;

    private final Trial trial;
    private final Moves moves;
    private final Chance chance;
    private Solution present;
    private Solution candidate;
    private final Timetable table;
    private final Trail trail;
    private final Solution best;
    private long bestEnergy;

    Annealing(FlatProblem flat, Trial trial, Moves moves, Chance chance) {
        this.trial = trial;
        this.moves = moves;
        this.chance = chance;
        present = Solution.plain(flat);
        candidate = Solution.plain(flat);
        best = Solution.plain(flat);
        table = new Timetable(flat);
        trail = new Trail(trial.decoder, table);
    }

    /** Goes on from a solution for so many tries, from hot to cold, and ends with the best of this pass. */
    Solution run(Solution from, long tries, double hot, double cold) {
        present.become(from);
        long energy = trial.decode(present);
        accept(present);
        best.become(present);
        bestEnergy = energy;
        double cooling = StrictMath.log(cold / hot);
        double heat = hot;
        for (long step = 0; step < tries - 1 && !trial.isStopped(); step++) {
            if (step % TRIES_A_HEAT == 0) {
                heat = hot * StrictMath.exp(cooling * step / tries);
            }
            candidate.become(present);
            int kept = moves.change(candidate, table);
            long limit = energy + (long) (heat * chance.exponential());
            long found = trial.decode(candidate, trail, kept, limit);
            if (found <= limit) {
                energy = found;
                accept(candidate);
                swap();
                if (energy < bestEnergy) {
                    bestEnergy = energy;
                    best.become(present);
                }
            }
        }
        return best.copy();
    }

    /** Of the solution with which the last pass ended. */
    long energy() {
        return bestEnergy;
    }

    private void swap() {
        Solution spare = present;
        present = candidate;
        candidate = spare;
    }

    private void accept(Solution solution) {
        table.take(trial.decoder);
        trail.follow(table.order);
        System.arraycopy(table.order, 0, solution.list, 0, solution.list.length);
    }
}
