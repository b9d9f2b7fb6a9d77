package org.shedboard.pack;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** A part of a search that depends on nothing but the step before it; see {@link Packing}. */
public final class Round {
    private final Problem problem;
    private final Search search;

    Round(Problem problem, Search search) {
        this.problem = problem;
        this.search = search;
    }

    public Found run() {
        return run(() -> false, better -> {});
    }

    /**
     * Runs the round, or the part of it until it is told to stop.
     *
     * @param stop asked after every try
     * @param better told of each plan that is better than all before it in this round
     */
    public Found run(BooleanSupplier stop, Consumer<Plan> better) {
        return new Found(Packer.pack(problem, search, stop, better), search.tries());
    }

    /** What a round came to. */
    public static final class Found {
        private final Plan plan;
        private final long tries;

        Found(Plan plan, long tries) {
            this.plan = plan;
            this.tries = tries;
        }

        /** The best plan of the round. */
        public Plan plan() {
            return plan;
        }

        /** Plans decoded in the round. */
        public long tries() {
            return tries;
        }
    }
}
