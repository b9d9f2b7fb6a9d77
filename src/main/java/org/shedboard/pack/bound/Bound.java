package org.shedboard.pack.bound;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.LongStream;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;

/**
 * Proven lower bounds on the cost of the plans of one problem. What the jobs cost comes from an {@link Auction}, the latest finish
 * of all from {@link OneByOne} and {@link Together}; the two are added, as the cost counts them apart. Make it once a problem: it
 * takes some hundred rounds through all tasks. A problem too large for that is bounded by the jobs' earliest finishes alone.
 *
 * <p>What changes against a posted plan cost is at least 0 and left out, but for swapped people.
 */
public final class Bound {
    /** Steps of the innermost loops that all rounds together may take. */
    private static final long MOST_STEPS = 80_000_000;

    private static final int MOST_ROUNDS = 200;
    /** Fewer rounds than these are not worth their start. */
    private static final int LEAST_ROUNDS = 3;
    /** How many working minutes are looked at, at most, and how many numbers may be kept for them. */
    private static final int MOST_MINUTES = 8192;

    private static final long MOST_NUMBERS = 2_000_000;
    /** Fewer minutes than these say nothing. */
    private static final int LEAST_MINUTES = 60;
    /** After everything could be finished, such a part of that time is looked at besides; later on, minutes are likely to be free. */
    private static final int SPARE = 4;
    /** A point is counted so many bits finer, as long as all points fit into the second number of bits. */
    private static final int FINE_BITS = 10;

    private static final int SCALED_BITS = 55;

    private final FlatProblem flat;
    private final Earliest earliest;
    private final int hopeless;
    /** The bound for each number of jobs left out. */
    private final long[] least;

    public Bound(FlatProblem flat) {
        this.flat = flat;
        earliest = new Earliest(flat);
        hopeless = (int) Arrays.stream(flat.hopeless).filter(Objects::nonNull).count();
        least = new long[flat.jobs + 1];
        Arrays.setAll(least, this::costOfFinishing);
        int bits = FINE_BITS + Math.min(0, SCALED_BITS - FINE_BITS - bitsOfCost());
        int minutes = minutesLookedAt();
        if (bits >= 0 && minutes >= LEAST_MINUTES) {
            raise(minutes, 1L << bits);
        }
        int together = Math.max(new OneByOne(flat, earliest).finish(), new Together(flat, earliest).finish());
        for (int unplaced = 0; unplaced <= flat.jobs; unplaced++) {
            int last = Math.max(lastFinish(unplaced), left(unplaced) > 0 ? 0 : together);
            least[unplaced] += flat.problem.costs().makespan() * Math.min(flat.problem.horizon(), last);
        }
        Arrays.fill(least, 0, hopeless, least[hopeless]);
    }

    static Bound of(Problem problem) {
        return new Bound(new FlatProblem(problem));
    }

    /** No plan that leaves out so many jobs or fewer costs less. */
    public long costAtLeast(int unplaced) {
        return least[unplaced];
    }

    private int left(int unplaced) {
        return Math.max(0, unplaced - hopeless);
    }

    /** What it costs that no job is finished before its earliest finish, the dearest left out. */
    private long costOfFinishing(int unplaced) {
        long[] points = new long[flat.jobs];
        long sum = 0;
        for (int job = 0; job < flat.jobs; job++) {
            long cost = flat.hopeless[job] == null ? costOfFinishing(flat.job(job), earliest.finish[job]) : 0;
            points[job] = flat.jobHasBegun[job] ? 0 : cost;
            sum += cost;
        }
        Arrays.sort(points);
        return sum
                - LongStream.of(points)
                        .skip(flat.jobs - Math.min(flat.jobs, left(unplaced)))
                        .sum();
    }

    private long costOfFinishing(Problem.Job job, int minute) {
        long finish = Math.min(minute, flat.problem.horizon());
        long late = Math.max(0, finish - job.promise().orElse(Integer.MAX_VALUE));
        return job.weight()
                * (flat.problem.costs().flow() * finish + flat.problem.costs().late() * late);
    }

    /** The earliest finish of the last job, the latest ones left out. */
    private int lastFinish(int unplaced) {
        int[] finishes = new int[flat.jobs];
        Arrays.setAll(finishes, job -> flat.hopeless[job] == null ? earliest.finish[job] : 0);
        Arrays.sort(finishes);
        int last = flat.jobs - 1 - left(unplaced);
        return last < 0 ? 0 : finishes[last];
    }

    /** The bits that the sum of all costs can need, and all that is taken at a time besides. */
    private int bitsOfCost() {
        Costs costs = flat.problem.costs();
        long weights =
                flat.problem.jobs().stream().mapToLong(Problem.Job::weight).sum();
        BigInteger perMinute = BigInteger.valueOf(costs.late())
                .add(BigInteger.valueOf(costs.flow()))
                .multiply(BigInteger.valueOf(weights))
                .add(BigInteger.valueOf(costs.overtime()).multiply(BigInteger.valueOf(flat.people)));
        BigInteger once = BigInteger.valueOf(costs.handover())
                .add(BigInteger.valueOf(costs.swapped()))
                .multiply(BigInteger.valueOf(flat.tasks).multiply(BigInteger.valueOf(flat.people + 1L)));
        return perMinute
                .multiply(BigInteger.valueOf(flat.problem.horizon()))
                .add(once)
                .bitLength();
    }

    private int minutesLookedAt() {
        int most = 1;
        for (int job = 0; job < flat.jobs; job++) {
            most = Math.max(most, flat.lastTaskOfJob(job) - flat.firstTaskOfJob(job));
        }
        long perMinute = most + flat.people + (long) flat.stays;
        return (int) Math.min(MOST_MINUTES, MOST_NUMBERS / perMinute);
    }

    private void raise(int minutes, long scale) {
        Relaxed relaxed = new Relaxed(flat, Axis.of(flat.problem, minutes), scale);
        if (roundsFor(relaxed) < LEAST_ROUNDS) {
            return;
        }
        Auction auction = new Auction(relaxed);
        int enough = auction.lastFinish() + auction.lastFinish() / SPARE;
        if (enough < relaxed.axis.length) {
            relaxed = new Relaxed(flat, Axis.of(flat.problem, Math.max(LEAST_MINUTES, enough)), scale);
            auction = new Auction(relaxed);
        }
        auction.run(roundsFor(relaxed));
        for (int unplaced = hopeless; unplaced <= flat.jobs; unplaced++) {
            least[unplaced] = Math.max(least[unplaced], roundedUp(auction.best[unplaced], scale));
        }
    }

    private static int roundsFor(Relaxed relaxed) {
        return (int) Math.min(MOST_ROUNDS, (MOST_STEPS - relaxed.stepsToBegin()) / Math.max(1, relaxed.steps()));
    }

    /** Costs are whole, so that the next whole number is a bound, too. */
    private static long roundedUp(long scaled, long scale) {
        return (scaled + scale - 1) / scale;
    }
}
