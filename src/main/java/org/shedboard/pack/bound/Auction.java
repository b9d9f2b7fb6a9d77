package org.shedboard.pack.bound;

import java.util.Arrays;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * The bound from prices. Every minute of a squad's work and of a room's space has a price, and each job goes its cheapest way by
 * itself. What the jobs cost then, less what all those minutes would fetch together, is a bound, whatever the prices are.
 *
 * <p>Why: take any plan. Each of its jobs costs at these prices no less than on its {@link Course}. All of them together pay for no
 * more minutes than there are, as nobody does two things at a time and no place holds two machines. So the plan's cost, plus all
 * there is to be paid, is at least the sum of the courses. A plan that leaves jobs out lacks at most the dearest of them.
 *
 * <p>Good prices are found by raising what is wanted more than there is and lowering what is wanted less: a subgradient method with a
 * deflected direction (Camerini, Fratta, Maffioli 1975) and a step to a target somewhat above the best bound so far. Prices are whole
 * numbers of scaled points, so that no bound hangs on rounding; only the way to them uses fractions.
 */
final class Auction {
    /** How much of the drift is turned away when it goes against the excess; from the paper. */
    private static final double DEFLECTION = 1.5;
    /** How far above the best bound the target is at first, as a share of it. Tuned on packed days. */
    private static final double FIRST_REACH = 0.3;
    /** So many rounds without a better bound, then the target comes nearer. */
    private static final int PATIENCE = 6;

    private static final double NEARER = 0.7;
    /** The share of the first prices that is tried first; it is doubled as long as that is for the better. */
    private static final double FIRST_SHARE = 1 / 64.0;
    /** So many minutes share a price at most. */
    private static final int MOST_BLOCK = 10;

    private final FlatProblem flat;
    private final Market[] markets;
    private final Course course;
    private final FirstPrices first;
    private final int hopeless;
    private final long[] value;
    /** The best bound for each number of jobs left out, in scaled points. */
    final long[] best;

    Auction(Relaxed relaxed) {
        flat = relaxed.flat;
        hopeless = relaxed.hopeless();
        markets = Market.of(relaxed, minutesToAPrice());
        course = new Course(relaxed, markets);
        first = new FirstPrices(relaxed, course, markets);
        value = new long[flat.jobs];
        best = new long[flat.jobs + 1];
    }

    /** Half a task of the usual length: finer prices take longer to find, coarser ones cannot follow the plan. */
    private int minutesToAPrice() {
        double mean = Arrays.stream(flat.task)
                .mapToInt(Problem.Task::handsOn)
                .average()
                .orElse(0);
        return (int) Math.max(1, Math.min(MOST_BLOCK, mean / 2));
    }

    /** The number of the axis by which all jobs could be finished, one way or another. */
    int lastFinish() {
        return first.lastFinish();
    }

    /** Asks all jobs so many times; the first few times to find out how much of the first prices is right. */
    void run(int rounds) {
        bid();
        int used = 1;
        boolean isRising = true;
        for (double share = FIRST_SHARE; isRising && share <= 1 && used < rounds; share *= 2) {
            first.set(share);
            isRising = bid() == best[hopeless];
            used++;
        }
        for (Market market : markets) {
            market.restorePrices();
        }
        climb(rounds - used);
    }

    private void climb(int rounds) {
        double reach = FIRST_REACH;
        int idle = 0;
        for (int round = 0; round < rounds; round++) {
            long found = bid();
            idle = found == best[hopeless] ? 0 : idle + 1;
            if (idle == PATIENCE) {
                idle = 0;
                reach *= NEARER;
            }
            double square = turn();
            if (square == 0) {
                return;
            }
            double step = (best[hopeless] * (1 + reach) - found) / square;
            for (Market market : markets) {
                market.move(step);
            }
        }
    }

    /** Turns where the prices are going; the answer is the square of how fast they go. */
    private double turn() {
        double along = 0;
        double square = 0;
        for (Market market : markets) {
            market.close();
            along += market.alongDrift();
            square += market.driftSquare();
        }
        double kept = along < 0 ? -DEFLECTION * along / square : 0;
        square = 0;
        for (Market market : markets) {
            market.turn(kept);
            square += market.driftSquare();
        }
        return square;
    }

    /** The bound at the present prices. */
    private long bid() {
        long sum = 0;
        for (Market market : markets) {
            market.open();
            sum -= market.worth();
        }
        for (int job = 0; job < flat.jobs; job++) {
            long cost = flat.hopeless[job] == null ? course.follow(job) : 0;
            value[job] = cost == Ledger.NEVER ? 0 : cost;
            sum += value[job];
        }
        keep(sum);
        return sum;
    }

    private void keep(long all) {
        if (all > best[hopeless]) {
            for (Market market : markets) {
                market.keepPrices();
            }
        }
        long[] sorted = value.clone();
        for (int job = 0; job < flat.jobs; job++) {
            sorted[job] = flat.jobHasBegun[job] ? 0 : sorted[job];
        }
        Arrays.sort(sorted);
        long sum = all;
        for (int left = hopeless; left <= flat.jobs; left++) {
            best[left] = Math.max(best[left], sum);
            int dearest = flat.jobs - 1 - (left - hopeless);
            sum -= dearest < 0 ? 0 : sorted[dearest];
        }
    }
}
