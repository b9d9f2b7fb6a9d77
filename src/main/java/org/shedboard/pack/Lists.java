package org.shedboard.pack;

/** The last part of the search: several passes of annealing over lists of tasks, then a longer one from the best. */
final class Lists {
    private static final int PASSES = 4;

    private final Trial trial;
    private final Annealing annealing;
    private final boolean nothingToMove;
    private final double hot;

    Lists(FlatProblem flat, Trial trial, boolean[] left, Chance chance) {
        this.trial = trial;
        Moves moves = new Moves(flat, trial.decoder.outlook, chance, left);
        nothingToMove = moves.isEmpty();
        annealing = new Annealing(flat, trial, moves, chance);
        hot = (double) trial.bestEnergy() / Math.max(1, flat.jobs) / 20 + 1;
    }

    void anneal(long tries) {
        if (nothingToMove || tries < PASSES * 2) {
            return;
        }
        long each = tries / 2 / PASSES;
        Solution start = trial.best();
        for (int pass = 0; pass < PASSES; pass++) {
            annealing.run(start, each, hot, hot / 1000);
        }
        annealing.run(trial.best(), tries - PASSES * each, hot / 10, hot / 10000);
    }
}
