package org.shedboard.estimate;

import java.util.List;
import org.shedboard.shop.Task;

/**
 * Likely and safe minutes of a run of tasks, each log-normal around its catalogue minutes.
 *
 * <p>The sum is taken as log-normal again with the mean and variance of the sum (the Fenton-Wilkinson approximation, L. F.
 * Fenton, IRE Transactions on Communications Systems 8, 1960). The tasks of one machine share a part of their scatter, so
 * their variances do not average away.
 */
final class Scatter {
    /** The 80 % point of the standard normal distribution; any printed table. */
    private static final double Z_SAFE = 0.8416212335729143;

    private final Spreads spreads;

    Scatter(Spreads spreads) {
        this.spreads = spreads;
    }

    Estimate.Range of(List<Task> tasks) {
        double mean = 0;
        double ownVariance = 0;
        for (Task task : tasks) {
            double own = spreads.of(task.kind());
            double taskMean = task.handsOn() * StrictMath.exp(own * own / 2);
            mean += taskMean;
            ownVariance += taskMean * taskMean * StrictMath.expm1(own * own);
        }
        if (mean == 0) {
            return new Estimate.Range(0, 0);
        }
        double ownLogVariance = StrictMath.log1p(ownVariance / (mean * mean));
        double likely = mean * StrictMath.exp(-ownLogVariance / 2);
        double deviation = StrictMath.sqrt(ownLogVariance + spreads.machine() * spreads.machine());
        double safe = likely * StrictMath.exp(Z_SAFE * deviation);
        return new Estimate.Range((int) Math.round(likely), (int) Math.round(safe));
    }
}
