package org.shedboard.fit;

/**
 * Minutes whose logarithm is normal.
 *
 * @param mu mean of the logarithm
 * @param sigma standard deviation of the logarithm, 0 where the minutes are certain
 */
public record LogNormal(double mu, double sigma) {
    public LogNormal {
        if (!(sigma >= 0) || !Double.isFinite(mu) || !Double.isFinite(sigma)) {
            throw new IllegalArgumentException("no minutes with mu %s, sigma %s".formatted(mu, sigma));
        }
    }

    /** The one with this mean and this variance, as the sum of others has them (L. F. Fenton, IRE Transactions on Communications 8, 1960). */
    public static LogNormal ofMoments(double mean, double variance) {
        double square = StrictMath.log1p(variance / (mean * mean));
        return new LogNormal(StrictMath.log(mean) - square / 2, StrictMath.sqrt(square));
    }

    public double median() {
        return StrictMath.exp(mu);
    }

    public double mean() {
        return StrictMath.exp(mu + sigma * sigma / 2);
    }

    public double variance() {
        return mean() * mean() * StrictMath.expm1(sigma * sigma);
    }

    public double quantile(double probability) {
        return sigma == 0 ? median() : StrictMath.exp(mu + sigma * Normal.quantile(probability));
    }

    /** Probability of at most so many minutes. */
    public double below(double minutes) {
        if (sigma == 0) {
            return minutes < median() ? 0 : 1;
        }
        return minutes <= 0 ? 0 : Normal.below((StrictMath.log(minutes) - mu) / sigma);
    }

    /**
     * The continuous ranked probability score against what it took: minutes, the less the better; for a forecast without spread the
     * plain distance from its median. Formula as in T. Gneiting and A. E. Raftery, JASA 102 (2007), and the R package scoringRules.
     */
    public double crps(double actual) {
        if (sigma == 0) {
            return Math.abs(actual - median());
        }
        double z = (StrictMath.log(actual) - mu) / sigma;
        double within = actual * (2 * Normal.below(z) - 1);
        return within - 2 * mean() * (Normal.below(z - sigma) + Normal.below(sigma / StrictMath.sqrt(2)) - 1);
    }

    /** How far it missed a quantile, the dearer side weighted: minutes, the less the better. */
    public double pinball(double probability, double actual) {
        return Pinball.loss(quantile(probability), probability, actual);
    }
}
