package org.shedboard.pack.bound;

import java.util.Arrays;
import java.util.stream.Stream;

/**
 * The minutes of one squad's work, or of one room's space: how many there are, what each costs, and how many the jobs took at that
 * price. Minutes side by side share a price. All amounts are scaled points.
 */
final class Market {
    /** Keeps the price of everything within 64 bits. */
    static final long DEAREST = 1L << 34;

    final int[] supply;
    /** What a minute costs besides its price, because it is overtime. */
    private final long[] surcharge;
    /** How many minutes share a price. */
    private final int block;

    final long[] price;
    private final long[] bestPrice;
    private final long[] offered;
    private final long[] wanted;
    /** Where the prices are going: wants above what is offered, with some of where they went before. */
    private final double[] drift;

    /** What all minutes before each one cost together. */
    final long[] before;
    /** By how much the wants change at each minute. */
    private final int[] change;

    private Market(int[] supply, long[] surcharge, int block) {
        this.supply = supply;
        this.surcharge = surcharge;
        this.block = block;
        int blocks = (supply.length + block - 1) / block;
        price = new long[blocks];
        bestPrice = new long[blocks];
        offered = new long[blocks];
        wanted = new long[blocks];
        drift = new double[blocks];
        before = new long[supply.length + 1];
        change = new int[supply.length + 1];
        for (int minute = 0; minute < supply.length; minute++) {
            offered[minute / block] += supply[minute];
        }
    }

    /** One for each squad's work, then one for each room's space. */
    static Market[] of(Relaxed relaxed, int block) {
        long overtime = relaxed.scale * relaxed.flat.problem.costs().overtime();
        return Stream.concat(
                        Arrays.stream(relaxed.squads).map(squad -> ofWork(squad, overtime, block)),
                        Arrays.stream(relaxed.rooms).map(room -> ofSpace(room, block)))
                .toArray(Market[]::new);
    }

    private static Market ofWork(Squad squad, long overtime, int block) {
        int[] supply = new int[squad.wall.length];
        Arrays.fill(supply, squad.count);
        long[] surcharge = new long[supply.length];
        Arrays.setAll(surcharge, minute -> squad.isExtra[minute] ? overtime : 0);
        return new Market(supply, surcharge, block);
    }

    private static Market ofSpace(Room room, int block) {
        return new Market(room.space, new long[room.space.length], block);
    }

    /** The minutes can be taken at the present prices. */
    void open() {
        for (int minute = 0; minute < supply.length; minute++) {
            before[minute + 1] = before[minute] + price[minute / block] + surcharge[minute];
        }
        Arrays.fill(change, 0);
    }

    /** The minutes can be taken for nothing, except those of which none are left. */
    void openUnbooked(int[] booked) {
        for (int minute = 0; minute < supply.length; minute++) {
            before[minute + 1] = before[minute] + (booked[minute] < supply[minute] ? surcharge[minute] : DEAREST);
        }
        Arrays.fill(change, 0);
    }

    void take(int from, int to, int count) {
        change[from] += count;
        change[to] -= count;
    }

    /** How many were taken of each minute. */
    int[] taken() {
        int[] taken = new int[supply.length];
        int now = 0;
        for (int minute = 0; minute < taken.length; minute++) {
            now += change[minute];
            taken[minute] = now;
        }
        return taken;
    }

    /** Compares what was taken with what there is. */
    void close() {
        Arrays.fill(wanted, 0);
        int[] taken = taken();
        for (int minute = 0; minute < taken.length; minute++) {
            wanted[minute / block] += taken[minute];
        }
    }

    /** What all that is offered would fetch. */
    long worth() {
        long worth = 0;
        for (int index = 0; index < price.length; index++) {
            worth += price[index] * offered[index];
        }
        return worth;
    }

    private double excess(int index) {
        long excess = wanted[index] - offered[index];
        return price[index] == 0 ? Math.max(0, excess) : excess;
    }

    /** How far the excess goes along with the drift. */
    double alongDrift() {
        double along = 0;
        for (int index = 0; index < price.length; index++) {
            along += excess(index) * drift[index] / block;
        }
        return along;
    }

    double driftSquare() {
        double square = 0;
        for (double part : drift) {
            square += part * part / block;
        }
        return square;
    }

    /** Turns the drift to the excess, keeping so much of it. */
    void turn(double kept) {
        for (int index = 0; index < price.length; index++) {
            drift[index] = excess(index) + kept * drift[index];
        }
    }

    void move(double step) {
        for (int index = 0; index < price.length; index++) {
            setPrice(index, price[index] + step * drift[index] / block);
        }
    }

    private void setPrice(int index, double wished) {
        price[index] = (long) Math.max(0, Math.min(DEAREST, wished));
    }

    /** Sets the prices to the means of what each minute is worth. */
    void setPrices(double[] worth) {
        double[] sums = new double[price.length];
        for (int minute = 0; minute < supply.length; minute++) {
            sums[minute / block] += worth[minute];
        }
        for (int index = 0; index < price.length; index++) {
            setPrice(index, sums[index] / block);
        }
    }

    void keepPrices() {
        System.arraycopy(price, 0, bestPrice, 0, price.length);
    }

    void restorePrices() {
        System.arraycopy(bestPrice, 0, price, 0, price.length);
    }
}
