package org.shedboard.pack.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.bound.Bound;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

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
 *
 * <p>Several lines of search are carried on side by side, each from its own solution, so that they do not all end in the same
 * valley; in each step the worst of them is started once more from nothing. Where many machines are to be packed and no plan is
 * posted, each line carries on its handicaps instead, and makes a list of them anew. One more round of each step refines the best.
 * Each step is longer than the one before, so that a short search has something whole early on and a long one cools slowly.
 */
public final class Packing {
    /** Solutions that are carried on. */
    private static final int LINES = 3;

    private static final int ROUNDS_A_STEP = LINES + 1;
    private static final long FIRST_TRIES = 2000;
    private static final double GROWTH = 1.5;
    private static final long MOST_TRIES = 200_000;

    private final FlatProblem flat;
    private final long seed;
    private final int step;
    private final long tries;
    private final List<Elite> lines;
    /** Some task that has not begun is in the plan. */
    private final boolean canChoose;
    /** Lines carry on handicaps, not lists: of many machines these find the better orders. */
    private final boolean goesOnByHandicaps;

    private final Elite best;
    /** What plans cost at least, where that was asked for. */
    private final Optional<Bound> bound;

    private Packing(
            FlatProblem flat, long seed, int step, long tries, List<Elite> lines, Elite best, Optional<Bound> bound) {
        this.flat = flat;
        this.seed = seed;
        this.step = step;
        this.tries = tries;
        this.lines = lines;
        this.best = best;
        this.bound = bound;
        canChoose = IntStream.range(0, flat.tasks)
                .anyMatch(task -> flat.hopeless[flat.jobOfTask[task]] == null && flat.isFree(task));
        goesOnByHandicaps = Bench.isForHandicaps(flat) && flat.problem.posted().isEmpty();
    }

    /** The search before its first round: its plan is the one that is there at once, the better of a first one and the posted one. */
    public static Packing of(Problem problem, long seed) {
        FlatProblem flat = new FlatProblem(problem);
        Bench bench = new Bench(flat, () -> false, plan -> {});
        bench.begin();
        Elite first = Elite.of(bench.trial(), new int[0]);
        return new Packing(flat, seed, 0, 0, Collections.nCopies(LINES, first), first, Optional.empty());
    }

    /** The best plan so far. */
    public Plan plan() {
        Plan plan = best.plan().withSearch(Search.of(seed, tries));
        return bound.map(each -> plan.withBound(
                        Math.max(plan.bound(), each.costAtLeast(plan.unplaced().size()))))
                .orElse(plan);
    }

    /** The same search, whose plans have the best bound that can be proven; it takes as long as some hundred tries of large days. */
    public Packing proven() {
        return bound.isPresent()
                ? this
                : new Packing(flat, seed, step, tries, lines, best, Optional.of(new Bound(flat)));
    }

    /** Plans decoded so far, in all rounds together. */
    public long tries() {
        return tries;
    }

    /** The rounds of the next step, which do not depend on each other. */
    public List<Round> rounds() {
        return rounds(Long.MAX_VALUE);
    }

    /** As {@link #rounds()}, but of about so many tries together at most; none when that is 0, or when there is nothing to choose. */
    public List<Round> rounds(long most) {
        long each = (long) Math.min(MOST_TRIES, FIRST_TRIES * StrictMath.pow(GROWTH, step));
        List<Round> rounds = new ArrayList<>();
        for (int index = 0; index < ROUNDS_A_STEP && most > index * each && canChoose; index++) {
            rounds.add(round(index, Math.min(each, most - index * each)));
        }
        return rounds;
    }

    private Round round(int index, long most) {
        long own = Chance.mix(Chance.mix(seed) + (long) step * ROUNDS_A_STEP + index);
        Elite start = index < LINES ? lines.get(index) : best;
        return new Round(flat, index, kindOf(index), start, Search.of(own, most));
    }

    private Round.Kind kindOf(int index) {
        if (index < LINES && goesOnByHandicaps) {
            return Round.Kind.DISPATCH;
        }
        if (startsAfresh(index)) {
            return Round.Kind.AFRESH;
        }
        return index < LINES ? Round.Kind.GO_ON : Round.Kind.REFINE;
    }

    /** At first all do, except that one goes on from the posted plan; later the worst line. */
    private boolean startsAfresh(int index) {
        if (step == 0) {
            return index > 0 || flat.problem.posted().isEmpty();
        }
        return index == worst();
    }

    private int worst() {
        int worst = 0;
        for (int index = 1; index < LINES; index++) {
            worst = lines.get(index).isBetterThan(lines.get(worst)) ? worst : index;
        }
        return worst;
    }

    /** The search after a step: what its rounds found, in the order of the rounds; rounds that were never run are left out. */
    public Packing after(List<Round.Found> found) {
        List<Elite> next = new ArrayList<>(lines);
        Elite nextBest = best;
        long more = 0;
        for (Round.Found one : found) {
            int index = one.index();
            if (index < LINES
                    && (kindOf(index) != Round.Kind.GO_ON || !next.get(index).isBetterThan(one.elite()))) {
                next.set(index, one.elite());
            }
            nextBest = one.elite().isBetterThan(nextBest) ? one.elite() : nextBest;
            more += one.tries();
        }
        return new Packing(flat, seed, step + 1, tries + more, List.copyOf(next), nextBest, bound);
    }
}
