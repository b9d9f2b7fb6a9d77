package org.shedboard.pack.search;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Search;
import org.shedboard.pack.numbers.FlatProblem;

/** A part of a search that depends on nothing but the step before it; see {@link Packing}. */
public final class Round {
    enum Kind {
        /** A search of its own, from nothing. */
        AFRESH,
        /** Handicaps go on from those that a solution came from. */
        DISPATCH,
        /** Kicks that go on from a solution. */
        GO_ON,
        /** A long annealing from a solution. */
        REFINE
    }

    private final FlatProblem flat;
    private final int index;
    private final Kind kind;
    private final Elite start;
    private final Search search;

    /**
     * @param index which of its step's rounds it is
     * @param start where to go on from; nobody changes it
     */
    Round(FlatProblem flat, int index, Kind kind, Elite start, Search search) {
        this.flat = flat;
        this.index = index;
        this.kind = kind;
        this.start = start;
        this.search = search;
    }

    public Found run() {
        return run(() -> false, better -> {});
    }

    /**
     * Runs the round, or the part of it until it is told to stop.
     *
     * @param stop asked after every try
     * @param better told of each plan that is better than all before it in this round, a little later than it was found
     */
    public Found run(BooleanSupplier stop, Consumer<Plan> better) {
        Bench bench = new Bench(flat, stop, better);
        int[] handicaps = run(bench);
        bench.trial().tell();
        return new Found(index, Elite.of(bench.trial(), handicaps), bench.trial().tries);
    }

    /** The answer is the handicaps of the solution found. */
    private int[] run(Bench bench) {
        return switch (kind) {
            case AFRESH -> bench.dispatchAndKick(new int[0], search.tries(), search.seed());
            case DISPATCH -> bench.dispatchAndKick(start.handicaps(), search.tries(), search.seed());
            case GO_ON -> {
                bench.kickAndRefine(start.solution().copy(), search.tries(), search.seed());
                yield start.handicaps();
            }
            case REFINE -> {
                bench.refine(start.solution().copy(), search.tries(), search.seed());
                yield start.handicaps();
            }
        };
    }

    /** What a round came to. */
    public static final class Found {
        private final int index;
        private final Elite elite;
        private final long tries;

        private Found(int index, Elite elite, long tries) {
            this.index = index;
            this.elite = elite;
            this.tries = tries;
        }

        int index() {
            return index;
        }

        Elite elite() {
            return elite;
        }

        /** The best plan of the round. */
        public Plan plan() {
            return elite.plan();
        }

        /** Plans decoded in the round. */
        public long tries() {
            return tries;
        }
    }
}
