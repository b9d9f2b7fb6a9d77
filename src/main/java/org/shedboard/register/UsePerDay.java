package org.shedboard.register;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.shedboard.fit.Sample;

/**
 * What a machine runs in a day, in hours or kilometres.
 *
 * @param likely as often above as below
 * @param low four machines out of five run more than low and less than high
 */
public record UsePerDay(double likely, double low, double high) {
    /** Standard normal quantile of nine in ten, so that eight in ten lie between both ends. */
    private static final double EIGHT_IN_TEN = 1.2815515655;
    /** Between two readings closer than this, whole hours on the dial say little. */
    private static final double DAYS_APART = 7;

    public UsePerDay {
        if (!(low >= 0 && low <= likely && likely <= high)) {
            throw new IllegalArgumentException("use per day cannot be %s, %s, %s".formatted(low, likely, high));
        }
    }

    /** A point of a meter: the day and all it has run by then. */
    record Point(double day, double run) {}

    /**
     * The middle of the slopes between any two readings of the same meter (Theil and Sen), which a few misread ones do not move. The ends
     * are those that Sen gave, by Kendall's variance; besides, a season is never quite like the last: they are at least one part in as
     * many as there are readings away from the middle, which is invented.
     */
    static Optional<UsePerDay> of(List<List<Point>> meters) {
        double[] slopes = slopes(meters, DAYS_APART);
        if (slopes.length == 0) {
            slopes = slopes(meters, 1);
        }
        if (slopes.length == 0) {
            return Optional.empty();
        }
        int readings =
                meters.stream().mapToInt(List::size).filter(size -> size > 1).sum();
        return Optional.of(of(slopes, readings));
    }

    private static UsePerDay of(double[] slopes, int readings) {
        double likely = Sample.of(slopes).median();
        double variance = readings * (readings - 1.0) * (2.0 * readings + 5) / 18;
        double half = EIGHT_IN_TEN * StrictMath.sqrt(variance) / 2;
        double low = slopes[rank(slopes.length / 2.0 - half, slopes.length)];
        double high = slopes[rank(slopes.length / 2.0 + half, slopes.length)];
        double season = 1 + 1.0 / readings;
        return new UsePerDay(likely, Math.min(low, likely / season), Math.max(high, likely * season));
    }

    private static int rank(double wanted, int size) {
        return (int) Math.max(0, Math.min(size - 1.0, Math.floor(wanted)));
    }

    /** From the least to the greatest. */
    private static double[] slopes(List<List<Point>> meters, double daysApart) {
        DoubleStream.Builder slopes = DoubleStream.builder();
        for (List<Point> meter : meters) {
            for (int to = 1; to < meter.size(); to++) {
                for (int from = 0; from < to; from++) {
                    addSlope(slopes, meter.get(from), meter.get(to), daysApart);
                }
            }
        }
        return slopes.build().sorted().toArray();
    }

    private static void addSlope(DoubleStream.Builder slopes, Point from, Point to, double daysApart) {
        double days = to.day() - from.day();
        if (days >= daysApart) {
            slopes.add(Math.max(0, (to.run() - from.run()) / days));
        }
    }

    /** What machines of a kind run: of one that we know too little of, the middle and the outer tenths of the others. */
    static Optional<UsePerDay> usual(List<UsePerDay> others) {
        if (others.isEmpty()) {
            return Optional.empty();
        }
        Sample sample = Sample.of(others.stream().map(UsePerDay::likely).toList());
        double likely = sample.median();
        return Optional.of(
                new UsePerDay(likely, Math.min(likely, sample.quantile(0.1)), Math.max(likely, sample.quantile(0.9))));
    }
}
