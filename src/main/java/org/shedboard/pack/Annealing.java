package org.shedboard.pack;

/**
 * Looks for a better list of tasks by small changes. A change for the worse is taken with a chance that falls as the search cools;
 * it cools by tries, so that the same seed and tries always end the same way.
 */
final class Annealing {
    private final FlatProblem flat;
    private final Trial trial;
    private final Moves moves;
    private final Chance chance;

    Annealing(FlatProblem flat, Trial trial, Moves moves, Chance chance) {
        this.flat = flat;
        this.trial = trial;
        this.moves = moves;
        this.chance = chance;
    }

    /** Goes on from a solution for so many tries, from hot to cold, and ends with the best of this pass. */
    Solution run(Solution from, long tries, double hot, double cold) {
        Solution present = from.copy();
        Solution candidate = from.copy();
        Solution best = from.copy();
        long energy = trial.decode(present);
        long bestEnergy = energy;
        long end = trial.tries + tries - 1;
        double cooling = StrictMath.log(cold / hot);
        double heat = hot;
        for (long step = 0; trial.tries < end && !trial.isStopped(); step++) {
            if (step % 64 == 0) {
                heat = hot * StrictMath.exp(cooling * step / Math.max(1, tries));
            }
            candidate.become(present);
            moves.change(candidate);
            long limit = energy + (long) (-heat * StrictMath.log(1 - chance.share()));
            long found = trial.decode(candidate, limit);
            if (found <= limit) {
                energy = found;
                trial.sortByStart(candidate.list);
                Solution spare = present;
                present = candidate;
                candidate = spare;
                if (energy < bestEnergy) {
                    bestEnergy = energy;
                    best.become(present);
                }
            }
        }
        return best;
    }
}
