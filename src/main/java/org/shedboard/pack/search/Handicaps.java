package org.shedboard.pack.search;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * Finds the stays' handicaps with which dispatching does best: by rules, which treat all stays of a job alike, then by annealing,
 * which need not. A machine may well be washed late and yet come first on the hoist, where the wash pad is what everyone waits for.
 */
final class Handicaps {
    /** How many minutes of handicap a minute of a rule is worth. */
    private static final double NUDGE = 0.1;

    /** Heat at the beginning, as a share of the cost of a job. Found by trying. */
    private static final double HEAT = 0.2;

    private final FlatProblem flat;
    private final Trial trial;
    private final Chance chance;
    private final Solution plain;
    private final int[] work;
    private final int[] finish;
    private final int[] movable;
    private final int reach;
    private int[] best;
    private long bestEnergy = Long.MAX_VALUE;

    Handicaps(FlatProblem flat, Trial trial, Chance chance) {
        this.flat = flat;
        this.trial = trial;
        this.chance = chance;
        plain = Solution.plain(flat);
        movable = FlatProblem.numbersOf(flat.jobs, job -> !trial.decoder.isLeftOut(job));
        reach = Math.max(2, flat.problem.horizon() * 2);
        work = new int[flat.jobs];
        finish = new int[flat.jobs];
        for (int task = 0; task < flat.tasks; task++) {
            work[flat.jobOfTask[task]] += flat.task[task].handsOn() + flat.unattended[task];
        }
    }

    /**
     * By promise; by promise for its weight; least slack; promise and work together for its weight; each of them a nudge to what can
     * start first. Then the shortest for its weight, strictly, which leaves out least where not all fit. On two dozen days all of 25
     * rules together come to plans that are 1 % better than these five, at five times the work.
     */
    void tryRules() {
        tryRule(this::promise, NUDGE);
        tryRule(job -> promise(job) / weight(job), NUDGE);
        tryRule(job -> promise(job) - work[job], NUDGE);
        tryRule(job -> (promise(job) + 2.0 * work[job]) / weight(job), NUDGE);
        tryRule(job -> work[job] / weight(job), 1);
    }

    /** The best so far; nobody changes them. */
    int[] best() {
        return best;
    }

    private double promise(int job) {
        return flat.job(job).promise().orElse(flat.problem.horizon());
    }

    private double weight(int job) {
        return Math.max(0.1, flat.job(job).weight());
    }

    private void tryRule(IntToDoubleFunction rule, double strength) {
        int[] handicap = new int[flat.stays];
        Arrays.setAll(handicap, stay -> (int) Math.min(Hours.FAR, strength * rule.applyAsDouble(flat.jobOfStay[stay])));
        tryOut(handicap);
    }

    void tryOut(int[] handicap) {
        keepIfBest(handicap, trial.dispatch(plain, handicap));
    }

    private void keepIfBest(int[] handicap, long energy) {
        if (energy < bestEnergy) {
            bestEnergy = energy;
            best = handicap.clone();
        }
    }

    /** One long pass from the best so far: several short ones end in worse orders. */
    void anneal(long tries) {
        if (movable.length > 1) {
            annealFrom(best.clone(), tries, ((double) bestEnergy / flat.jobs + 1) * HEAT);
        }
    }

    private void annealFrom(int[] start, long tries, double hot) {
        int[] present = start;
        int[] candidate = start.clone();
        Excess excess = new Excess(trial.decoder.outlook, chance, movable);
        Turns turns = new Turns(trial.decoder);
        long energy = trial.dispatch(plain, present);
        trial.tell(turns);
        takeFinishes();
        long end = trial.tries + tries - 1;
        for (long step = 0; trial.tries < end && !trial.isStopped(); step++) {
            double heat = hot * StrictMath.exp(-6.0 * step / tries);
            System.arraycopy(present, 0, candidate, 0, present.length);
            int job = chance.below(2) == 0 ? movable[chance.below(movable.length)] : excess.pick(finish, 3);
            change(candidate, job);
            long limit = energy + (long) (heat * chance.exponential());
            long found = trial.dispatch(plain, candidate, turns, turns.kept(present, candidate), limit);
            keepIfBest(candidate, found);
            if (found <= limit) {
                energy = found;
                int[] spare = present;
                present = candidate;
                candidate = spare;
                trial.tell(turns);
                takeFinishes();
            }
        }
    }

    private void takeFinishes() {
        Arrays.setAll(finish, trial.tally::finishOf);
    }

    /** The job, one of its stays, or all from that stay on change handicaps with others, go just before or after them, or some minutes earlier or later. */
    private void change(int[] handicap, int job) {
        boolean whole = chance.below(2) == 0;
        int first = flat.firstStay[job] + (whole ? 0 : chance.below(flat.firstStay[job + 1] - flat.firstStay[job]));
        int end = whole || chance.below(3) == 0 ? flat.firstStay[job + 1] : first + 1;
        int other = movable[chance.below(movable.length)];
        int like = alike(other, first - flat.firstStay[job]);
        switch (chance.below(4)) {
            case 0 -> {
                int minutes = handicap[like] - handicap[first];
                shift(handicap, first, end, minutes);
                shift(handicap, like, whole ? flat.firstStay[other + 1] : like + 1, -minutes);
            }
            case 1 -> shift(handicap, first, end, handicap[like] - handicap[first] - 1 + chance.below(3));
            default -> {
                int minutes = 1 + chance.below(1 + chance.below(1 + chance.below(reach)));
                shift(handicap, first, end, chance.below(2) == 0 ? minutes : -minutes);
            }
        }
    }

    /** The job's stay of that number, or some stay of it where it has fewer. */
    private int alike(int job, int number) {
        int count = flat.firstStay[job + 1] - flat.firstStay[job];
        return flat.firstStay[job] + (number < count ? number : chance.below(count));
    }

    private static void shift(int[] handicap, int first, int end, int minutes) {
        for (int stay = first; stay < end; stay++) {
            handicap[stay] += minutes;
        }
    }
}
