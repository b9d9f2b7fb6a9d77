package org.shedboard.pack.chance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/**
 * When the jobs of a plan finish if their minutes turn out otherwise: the plan replayed with drawn durations. A replay keeps each
 * person's and each place's order and starts every task as early as that order and the rules allow.
 *
 * <p>Each task, job and person draws from a stream of its own, split from the seed by name, so that one more job does not change
 * the draws of the others and two plans can be compared.
 */
public final class Chances {
    private final Map<String, int[]> finishes;
    private final int draws;

    private Chances(Map<String, int[]> finishes, int draws) {
        this.finishes = finishes;
        this.draws = draws;
    }

    public static Chances of(Problem problem, Plan plan, int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("a chance takes at least one draw, not " + draws);
        }
        FlatProblem flat = new FlatProblem(problem);
        PlanReading reading = new PlanReading(flat, plan);
        Replay replay = new Replay(flat, reading, new DrawnMinutes(flat, seed));
        int[][] finishes = new int[flat.jobs][];
        for (int job = 0; job < flat.jobs; job++) {
            finishes[job] = reading.isPlaced[flat.firstTaskOfJob(job)] ? new int[draws] : new int[0];
        }
        for (int draw = 0; draw < draws; draw++) {
            replay.run(draw);
            for (int job = 0; job < flat.jobs; job++) {
                if (finishes[job].length > 0) {
                    finishes[job][draw] = replay.finishOf(job);
                }
            }
        }
        Map<String, int[]> byJob = new HashMap<>();
        for (int job = 0; job < flat.jobs; job++) {
            Arrays.sort(finishes[job]);
            byJob.put(flat.job(job).id(), finishes[job]);
        }
        return new Chances(byJob, draws);
    }

    /** The job's finish in every replay, earliest first; empty for a job that is not placed. */
    public int[] finishes(String job) {
        return finishes.getOrDefault(job, new int[0]).clone();
    }

    /** The share of the replays in which the job is finished by that minute; 0 for a job that is not placed. */
    public double chance(String job, int minute) {
        int[] sorted = finishes.getOrDefault(job, new int[0]);
        int count = 0;
        for (int finish : sorted) {
            count += finish <= minute ? 1 : 0;
        }
        return (double) count / draws;
    }

    /** The standard deviation with which {@link #chance} strays because only so many replays were drawn. */
    public double error(String job, int minute) {
        double chance = chance(job, minute);
        return StrictMath.sqrt(chance * (1 - chance) / draws);
    }

    /** The smallest minute by which the job is finished with at least that chance; empty for a job that is not placed. */
    public OptionalInt minuteWith(String job, double chance) {
        int[] sorted = finishes.getOrDefault(job, new int[0]);
        if (sorted.length == 0) {
            return OptionalInt.empty();
        }
        int needed = (int) StrictMath.ceil(chance * draws - 1e-9);
        return OptionalInt.of(sorted[Math.max(0, Math.min(draws, needed) - 1)]);
    }
}
