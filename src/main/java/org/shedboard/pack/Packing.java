package org.shedboard.pack;

import java.util.List;
import java.util.stream.LongStream;

/**
 * A search for the best plan of one problem, cut into rounds that can run at the same time. Its state after some rounds is a
 * value: whoever has threads runs the {@link #rounds() next rounds}, in any order and as many at once as it likes, and goes on
 * from {@link #after(List) what they found}. The same problem, seed and number of steps give the same plan however many threads ran.
 *
 * <pre>
 *     Packing packing = Packing.of(problem, seed);
 *     while (...) {
 *         packing = packing.after(packing.rounds().stream().map(round -&gt; round.run(stop, better)).toList());
 *     }
 *     packing.plan();
 * </pre>
 */
public final class Packing {
    private static final int ROUNDS_A_STEP = 4;
    private static final long TRIES_A_ROUND = 5000;

    private final Problem problem;
    private final long seed;
    private final long step;
    private final long tries;
    private final Plan plan;

    private Packing(Problem problem, long seed, long step, long tries, Plan plan) {
        this.problem = problem;
        this.seed = seed;
        this.step = step;
        this.tries = tries;
        this.plan = plan;
    }

    /** The search before its first round: its plan is the one that is there at once, the better of a first one and the posted one. */
    public static Packing of(Problem problem, long seed) {
        return new Packing(problem, seed, 0, 0, Packer.first(problem).withSearch(Search.of(seed, 0)));
    }

    /** The best plan so far. */
    public Plan plan() {
        return plan;
    }

    /** Plans decoded so far, in all rounds together. */
    public long tries() {
        return tries;
    }

    /** The rounds of the next step, which do not depend on each other. */
    public List<Round> rounds() {
        return rounds(Long.MAX_VALUE);
    }

    /** As {@link #rounds()}, but of so many tries together at most; none when that is 0. */
    public List<Round> rounds(long most) {
        return LongStream.range(0, ROUNDS_A_STEP)
                .filter(index -> most > index * TRIES_A_ROUND)
                .mapToObj(index -> new Round(
                        problem,
                        Search.of(
                                seed * 1_000_003 + step * ROUNDS_A_STEP + index,
                                Math.min(TRIES_A_ROUND, most - index * TRIES_A_ROUND))))
                .toList();
    }

    /** The search after a step: what its rounds found, in the order of the rounds; rounds that were never run are left out. */
    public Packing after(List<Round.Found> found) {
        Plan best = plan;
        long more = 0;
        for (Round.Found one : found) {
            best = one.plan().isBetterThan(best) ? one.plan() : best;
            more += one.tries();
        }
        return new Packing(problem, seed, step + 1, tries + more, best.withSearch(Search.of(seed, tries + more)));
    }
}
