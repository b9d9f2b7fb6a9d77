package org.shedboard.pack.chance;

import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/**
 * What a plan costs on the mean of drawn days, played as {@link Chances} plays them.
 *
 * @param points by the day file's formula, as for {@link Plan#cost()}
 * @param error the standard deviation with which {@code points} strays because only so many days were drawn
 */
public record MeanCost(double points, double error) {
    public static MeanCost of(Problem problem, Plan plan, int draws, long seed) {
        FlatProblem flat = new FlatProblem(problem);
        return of(new Trials(flat, plan, new DrawnMinutes(flat, seed)).costs(draws));
    }

    /** How much more the one plan costs than the other on the same drawn days, on the mean; negative when it costs less. */
    public static MeanCost difference(Problem problem, Plan one, Plan other, int draws, long seed) {
        FlatProblem flat = new FlatProblem(problem);
        DrawnMinutes minutes = new DrawnMinutes(flat, seed);
        long[] costs = new Trials(flat, one, minutes).costs(draws);
        long[] others = new Trials(flat, other, minutes).costs(draws);
        for (int draw = 0; draw < draws; draw++) {
            costs[draw] -= others[draw];
        }
        return of(costs);
    }

    private static MeanCost of(long[] costs) {
        double sum = 0;
        for (long cost : costs) {
            sum += cost;
        }
        double mean = sum / costs.length;
        double squares = 0;
        for (long cost : costs) {
            squares += (cost - mean) * (cost - mean);
        }
        return new MeanCost(mean, StrictMath.sqrt(squares / costs.length / costs.length));
    }

    /** One plan being tried on drawn days. */
    static final class Trials {
        private final FlatProblem flat;
        private final Plan plan;
        private final PlanReading reading;
        private final Replay replay;
        private final ReplayCost cost;
        private int drawn;
        private double sum;

        Trials(FlatProblem flat, Plan plan, DrawnMinutes draws) {
            this.flat = flat;
            this.plan = plan;
            reading = new PlanReading(flat, plan);
            replay = new Replay(flat, reading, draws);
            cost = new ReplayCost(flat, reading, replay);
        }

        private long[] costs(int draws) {
            if (draws < 1) {
                throw new IllegalArgumentException("a mean takes at least one draw, not " + draws);
            }
            long[] costs = new long[draws];
            for (int draw = 0; draw < draws; draw++) {
                replay.run(draw);
                costs[draw] = cost.count();
            }
            return costs;
        }

        /** The sum of the costs of that many days. */
        double sumOf(int days) {
            while (drawn < days) {
                replay.run(drawn++);
                sum += cost.count();
            }
            return sum;
        }

        /** The plan with everything as early as its order allows when all takes its middle minutes. */
        Plan middle() {
            replay.runMiddle();
            return new ReplayWriter(flat, reading, replay).write(plan.unplaced(), cost.count());
        }
    }
}
