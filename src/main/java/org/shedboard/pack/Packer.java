package org.shedboard.pack;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Makes plans: one at once, the posted one moved along, or the best found in so many tries. */
public final class Packer {
    private Packer() {}

    /** A plan at once, by dispatching rules. */
    public static Plan first(Problem problem) {
        return new Bench(problem).first();
    }

    /** The posted plan moved along: the same people, places and order as far as they can be kept. */
    public static Plan follow(Problem problem) {
        return new Bench(problem).follow();
    }

    /** The best plan found; the same problem, seed and tries give the same plan. */
    public static Plan pack(Problem problem, Search search) {
        return pack(problem, search, () -> false, plan -> {});
    }

    /**
     * As {@link #pack(Problem, Search)}, but ends early when told to.
     *
     * @param stop asked after every try
     * @param better told of each plan that is better than all before it
     */
    public static Plan pack(Problem problem, Search search, BooleanSupplier stop, Consumer<Plan> better) {
        return new Bench(problem).pack(search, stop, better);
    }

    /**
     * The same plan with the best bound that can be proven on the cost of any plan with as few unplaced jobs. It takes as long as
     * some hundred rounds through all tasks, so ask for it once, at the end of a search.
     */
    public static Plan proven(Problem problem, Plan plan) {
        long least = Bound.of(problem).costAtLeast(plan.unplaced().size());
        return plan.withBound(Math.max(plan.bound(), least));
    }
}
