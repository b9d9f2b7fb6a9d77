package org.shedboard.pack.chance;

import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/**
 * How many promises two plans of one problem keep on the mean of the same drawn days.
 *
 * @param one by the first plan
 * @param more by how many the second plan keeps more; negative when it keeps fewer
 * @param error the standard deviation with which {@code more} strays because only so many days were drawn
 */
public record KeptPromises(double one, double more, double error) {
    /** A gain of so many deviations is hardly an accident of the days that were drawn. */
    private static final int SURE = 2;

    /** Plays both plans on so many days drawn by this seed. */
    public static KeptPromises of(Problem problem, Plan one, Plan other, int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("a mean takes at least one draw, not " + draws);
        }
        FlatProblem flat = new FlatProblem(problem);
        DrawnMinutes minutes = new DrawnMinutes(flat, seed);
        int[] before = kept(flat, one, minutes, draws);
        int[] after = kept(flat, other, minutes, draws);
        double sum = 0;
        double more = 0;
        double squares = 0;
        for (int draw = 0; draw < draws; draw++) {
            int difference = after[draw] - before[draw];
            sum += before[draw];
            more += difference;
            squares += difference * difference;
        }
        double mean = more / draws;
        double variance = Math.max(0, squares / draws - mean * mean);
        return new KeptPromises(sum / draws, mean, StrictMath.sqrt(variance / draws));
    }

    /** How many promises each of the days keeps. */
    private static int[] kept(FlatProblem flat, Plan plan, DrawnMinutes minutes, int draws) {
        PlanReading reading = new PlanReading(flat, plan);
        Replay replay = new Replay(flat, reading, minutes);
        int[] kept = new int[draws];
        for (int draw = 0; draw < draws; draw++) {
            replay.run(draw);
            for (int job = 0; job < flat.jobs; job++) {
                boolean isPlaced = reading.isPlaced[flat.firstTaskOfJob(job)];
                int promise = flat.job(job).promise().orElse(-1);
                kept[draw] += isPlaced && replay.finishOf(job) <= promise ? 1 : 0;
            }
        }
        return kept;
    }

    /** By the second plan. */
    public double other() {
        return one + more;
    }

    /** Whether the second plan keeps more, and not by the luck of the draw. */
    public boolean isMore() {
        return more > SURE * error;
    }
}
