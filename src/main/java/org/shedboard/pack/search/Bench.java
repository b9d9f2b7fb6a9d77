package org.shedboard.pack.search;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * One problem being packed, in the parts that a search is made of: dispatching rules, annealed handicaps of stays, kicks, and a last
 * annealing of the list of tasks.
 */
final class Bench {
    /** How many tries to give to a plan in which all that has begun can be finished, where the rules find none. */
    private static final long TRIES_TO_FINISH = 20_000;

    /** Of the tries of a search from nothing, least and most that go to handicaps. Found by trying. */
    private static final int LEAST_PERCENT = 5;

    private static final int MOST_PERCENT = 70;

    private static final double REFINING_HEAT = 0.3;
    private static final double LAST_HEAT = 0.001;

    private final FlatProblem flat;
    private final Trial trial;
    private final boolean[] left;

    Bench(FlatProblem flat, BooleanSupplier stop, Consumer<Plan> better) {
        this.flat = flat;
        left = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            left[job] = flat.hopeless[job] != null;
        }
        Decoder decoder = new Decoder(flat);
        decoder.leaveOut(left);
        trial = new Trial(decoder, new Tally(decoder), stop, better);
    }

    static Bench of(Problem problem) {
        return new Bench(new FlatProblem(problem), () -> false, plan -> {});
    }

    /** A plan at once, by dispatching rules; looked for longer only where they strand a job that has begun. */
    Plan first() {
        handicaps(0).tryRules();
        if (trial.bestStranded() > 0) {
            finishWhatHasBegun(TRIES_TO_FINISH);
        }
        return trial.expectPlan();
    }

    /** The posted plan moved along; the first one where there is none. */
    Plan follow() {
        if (flat.problem.posted().isPresent()) {
            tryPosted();
            if (trial.bestStranded() == 0) {
                return trial.expectPlan();
            }
        }
        return first();
    }

    /** The posted plan moved along, where that can be; without one, what the rules make. */
    Optional<Plan> keep() {
        if (flat.problem.posted().isPresent()) {
            tryPosted();
        } else {
            handicaps(0).tryRules();
        }
        return findPlan();
    }

    /** The best of the posted plan, what the rules make, and a short annealing from the better of them. */
    Optional<Plan> sketch(long tries) {
        handicaps(0).tryRules();
        if (flat.problem.posted().isPresent()) {
            tryPosted();
        }
        Moves moves = moves(1);
        if (!moves.isEmpty()) {
            double heat = heat() * REFINING_HEAT;
            annealing(moves, 1).run(trial.best(), tries, heat, heat * LAST_HEAT);
        }
        return findPlan();
    }

    private Optional<Plan> findPlan() {
        return trial.bestStranded() > 0 ? Optional.empty() : Optional.of(trial.bestPlan());
    }

    /** A plan for jobs that have all begun, looked for until each fits or the tries are over. */
    Plan packBegun(long tries) {
        handicaps(0).tryRules();
        finishWhatHasBegun(tries);
        return trial.bestPlan();
    }

    private void finishWhatHasBegun(long tries) {
        Moves moves = moves(1);
        for (long done = 0; done < tries && trial.bestStranded() > 0 && !moves.isEmpty(); done += tries / 10) {
            double heat = heat();
            annealing(moves, done).run(trial.best(), tries / 10, heat, heat * LAST_HEAT);
        }
    }

    private void tryPosted() {
        trial.decode(new Follow(flat, trial.decoder, trial.tally, left).solve());
        trial.decoder.leaveOut(left);
    }

    /** The plans that are there at once: what the rules make, and the posted one. */
    void begin() {
        first();
        if (flat.problem.posted().isPresent()) {
            tryPosted();
        }
    }

    /**
     * Anneals handicaps, then goes on with the list of what they make.
     *
     * @param known handicaps to go on from; empty to start from nothing
     * @return the handicaps with which dispatching did best
     */
    int[] dispatchAndKick(int[] known, long tries, long seed) {
        Handicaps handicaps = handicaps(seed);
        handicaps.tryRules();
        if (known.length > 0) {
            handicaps.tryOut(known);
        }
        handicaps.anneal(tries * handicapPercent(flat) / 100);
        kickAndRefine(trial.bestFreed(), tries - trial.tries, seed);
        return handicaps.best();
    }

    /** From ten machines up days get most of their gain from the handicaps, smaller ones and shops from the rest. */
    private static int handicapPercent(FlatProblem flat) {
        return countsJobs(flat) ? Math.max(LEAST_PERCENT, Math.min(MOST_PERCENT, 20 * flat.jobs - 130)) : LEAST_PERCENT;
    }

    /** Whether most of a search from nothing goes to handicaps. */
    static boolean isForHandicaps(FlatProblem flat) {
        return handicapPercent(flat) == MOST_PERCENT;
    }

    /** The finish of every job costs something, not only that of the last one. */
    private static boolean countsJobs(FlatProblem flat) {
        Costs costs = flat.problem.costs();
        return costs.flow() > 0 || costs.late() > 0;
    }

    /**
     * Kicks for three quarters of the tries, from a solution on; the last annealing is for the best found. Where only the last
     * finish counts, no job has anything to gain by being first, and all tries go to one annealing.
     */
    void kickAndRefine(Solution start, long tries, long seed) {
        Moves moves = moves(seed);
        if (!moves.isEmpty()) {
            long end = trial.tries + tries;
            Annealing annealing = annealing(moves, seed);
            if (countsJobs(flat)) {
                new Kicks(flat, trial, annealing, moves, Chance.of(seed, "kicks")).run(start, tries * 3 / 4);
                refine(annealing, end - trial.tries, REFINING_HEAT);
            } else {
                annealing.run(start, tries, heat() * REFINING_HEAT, heat() * LAST_HEAT);
            }
        }
    }

    /** A long annealing from a solution. */
    void refine(Solution start, long tries, long seed) {
        Moves moves = moves(seed);
        if (!moves.isEmpty()) {
            trial.decode(start);
            refine(annealing(moves, seed), tries - 1, REFINING_HEAT);
        }
    }

    private void refine(Annealing annealing, long tries, double hot) {
        annealing.run(trial.best(), tries, heat() * hot, heat() * LAST_HEAT);
    }

    private double heat() {
        return (double) trial.bestEnergy() / Math.max(1, flat.jobs) + 1;
    }

    private Handicaps handicaps(long seed) {
        return new Handicaps(flat, trial, Chance.of(seed, "handicaps"));
    }

    private Moves moves(long seed) {
        return new Moves(flat, trial.decoder.outlook, Chance.of(seed, "moves"), left);
    }

    private Annealing annealing(Moves moves, long seed) {
        return new Annealing(flat, trial, moves, Chance.of(seed, "heat"));
    }

    Trial trial() {
        return trial;
    }
}
