package org.shedboard.pack.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.numbers.FlatProblem;

/** Makes plans: one at once, the posted one moved along, or the best found in so many tries. */
public final class Packer {
    private Packer() {}

    /** The jobs that no plan can hold, whatever else is left out, with the reason of each. */
    public static Map<String, String> hopeless(Problem problem) {
        FlatProblem flat = new FlatProblem(problem);
        Map<String, String> reasons = new LinkedHashMap<>();
        for (int job = 0; job < flat.jobs; job++) {
            if (flat.hopeless[job] != null) {
                reasons.put(flat.job(job).id(), flat.hopeless[job]);
            }
        }
        return reasons;
    }

    /** A plan at once, by dispatching rules. */
    public static Plan first(Problem problem) {
        return Bench.of(problem).first();
    }

    /** The posted plan moved along: the same people, places and order as far as they can be kept. */
    public static Plan follow(Problem problem) {
        return Bench.of(problem).follow();
    }

    /**
     * The posted plan moved along, and nothing else tried; empty where what has begun cannot be finished that way. Without a posted
     * plan, the first one.
     */
    public static Optional<Plan> keep(Problem problem) {
        return Bench.of(problem).keep();
    }

    /** A plan found in about so many tries, from the posted one on; empty where what has begun cannot be finished in it. */
    public static Optional<Plan> sketch(Problem problem, long tries) {
        return Bench.of(problem).sketch(tries);
    }

    /** A plan for jobs that have all begun, looked for until each fits or the tries are over. */
    public static Plan packBegun(Problem problem, long tries) {
        return Bench.of(problem).packBegun(tries);
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
        Packing packing = Packing.of(problem, search.seed());
        boolean[] stopped = {false};
        BooleanSupplier noted = () -> stopped[0] |= stop.getAsBoolean();
        Best best = new Best(packing.plan(), plan -> better.accept(plan.withSearch(search)));
        List<Round> rounds = packing.rounds(search.tries());
        while (!rounds.isEmpty() && !stopped[0]) {
            List<Round.Found> found = new ArrayList<>();
            for (Round round : rounds) {
                if (!stopped[0]) {
                    found.add(round.run(noted, best));
                }
            }
            packing = packing.after(found);
            rounds = packing.rounds(search.tries() - packing.tries());
        }
        return packing.plan().withSearch(search);
    }

    /** Passes on only what is better than all that came before. */
    private static final class Best implements Consumer<Plan> {
        private final Consumer<Plan> better;
        private Plan plan;

        Best(Plan first, Consumer<Plan> better) {
            this.better = better;
            plan = first;
            better.accept(first);
        }

        @Override
        public void accept(Plan found) {
            if (found.isBetterThan(plan)) {
                plan = found;
                better.accept(found);
            }
        }
    }
}
