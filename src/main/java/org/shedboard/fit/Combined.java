package org.shedboard.fit;

import java.util.List;

/** Minutes of several pieces of work together, where what makes one of them long may make others long as well. */
public final class Combined {
    private final List<LogNormal> parts;
    private final double[][] shared;

    private Combined(List<LogNormal> parts, double[][] shared) {
        this.parts = parts;
        this.shared = shared;
    }

    /**
     * The sum of the parts, taken for log-normal with the sum's own mean and variance (L. F. Fenton, IRE Transactions on Communications 8,
     * 1960): exact for one part, and for parts of one spread that share all of it.
     *
     * @param sharedLogCovariance in row and column of two parts, how their logarithms vary together: the variance of what they have in
     *     common. Read above the diagonal. Since it may have been estimated apart from the spreads, more than the spreads of the two
     *     allow is taken for all of it.
     */
    public static LogNormal of(List<LogNormal> parts, double[][] sharedLogCovariance) {
        if (parts.isEmpty() || parts.size() != sharedLogCovariance.length) {
            throw new IllegalArgumentException("%s parts do not go with %s rows of what they share"
                    .formatted(parts.size(), sharedLogCovariance.length));
        }
        Combined sum = new Combined(parts, sharedLogCovariance);
        return parts.size() == 1 ? parts.get(0) : LogNormal.ofMoments(sum.mean(), sum.variance());
    }

    private double mean() {
        return parts.stream().mapToDouble(LogNormal::mean).sum();
    }

    private double variance() {
        double variance = 0;
        for (int i = 0; i < parts.size(); i++) {
            variance += parts.get(i).variance();
            for (int j = i + 1; j < parts.size(); j++) {
                variance += 2 * covariance(i, j);
            }
        }
        return variance;
    }

    private double covariance(int i, int j) {
        LogNormal one = parts.get(i);
        LogNormal other = parts.get(j);
        double most = one.sigma() * other.sigma();
        double logCovariance = Math.max(-most, Math.min(most, shared[i][j]));
        return one.mean() * other.mean() * StrictMath.expm1(logCovariance);
    }
}
