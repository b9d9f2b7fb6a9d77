package org.shedboard.pack.bound;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.shedboard.pack.Problem;

/**
 * Prices to begin with. The jobs go through the shop one after the other, the most urgent first, each on its cheapest way past what
 * is booked up. A minute of someone or of a room is then worth what it would spare those who come behind it without a gap: each
 * job its points for a minute, spread over the minutes it needs.
 *
 * <p>The prices are a guess: whatever they are, the bound made with them holds.
 */
final class FirstPrices {
    private final Relaxed relaxed;
    private final Course course;
    private final Market[] markets;
    private final int[][] booked;
    private final double[][] worth;
    private int lastFinish;

    FirstPrices(Relaxed relaxed, Course course, Market[] markets) {
        this.relaxed = relaxed;
        this.course = course;
        this.markets = markets;
        booked = new int[markets.length][];
        Arrays.setAll(booked, market -> new int[markets[market].supply.length]);
        worth = new double[markets.length][];
        Arrays.setAll(worth, market -> new double[markets[market].supply.length]);
        inOrderOfUrgency().forEach(this::book);
        for (int market = 0; market < markets.length; market++) {
            addUpWorth(market);
        }
    }

    private IntStream inOrderOfUrgency() {
        return IntStream.range(0, relaxed.flat.jobs)
                .filter(job -> relaxed.flat.hopeless[job] == null)
                .boxed()
                .sorted(Comparator.comparingLong(this::urgency))
                .mapToInt(Integer::intValue);
    }

    private long urgency(int job) {
        Problem.Job values = relaxed.flat.job(job);
        return values.promise().orElse(Integer.MAX_VALUE) * (long) Integer.MAX_VALUE - values.weight();
    }

    private void book(int job) {
        for (int market = 0; market < markets.length; market++) {
            markets[market].openUnbooked(booked[market]);
        }
        if (course.follow(job) == Ledger.NEVER) {
            return;
        }
        lastFinish = Math.max(lastFinish, course.lastFinish());
        int[][] taken = Arrays.stream(markets).map(Market::taken).toArray(int[][]::new);
        long work = IntStream.range(0, relaxed.squads.length)
                .mapToLong(squad -> Arrays.stream(taken[squad]).asLongStream().sum())
                .sum();
        for (int market = 0; market < markets.length; market++) {
            boolean isWork = market < relaxed.squads.length;
            long minutes =
                    isWork ? work : Arrays.stream(taken[market]).asLongStream().sum();
            book(market, taken[market], course.pointsPerMinute(job) / (double) Math.max(1, minutes));
        }
    }

    private void book(int market, int[] taken, double points) {
        for (int minute = 0; minute < taken.length; minute++) {
            booked[market][minute] += taken[minute];
            worth[market][minute] += points * taken[minute];
        }
    }

    private void addUpWorth(int market) {
        double sum = 0;
        int[] supply = markets[market].supply;
        for (int minute = supply.length - 1; minute >= 0; minute--) {
            boolean isFull = supply[minute] > 0 && booked[market][minute] >= supply[minute];
            sum = isFull ? sum + worth[market][minute] / supply[minute] : 0;
            worth[market][minute] = sum;
        }
    }

    /** Sets so much of the worth as prices. */
    void set(double share) {
        for (int market = 0; market < markets.length; market++) {
            markets[market].setPrices(
                    Arrays.stream(worth[market]).map(points -> points * share).toArray());
        }
    }

    /** The number of the axis by which all jobs could be finished. */
    int lastFinish() {
        return lastFinish;
    }
}
