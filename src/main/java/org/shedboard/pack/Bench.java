package org.shedboard.pack;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** One problem being packed: its arrays, the decoder, and the best plan so far. */
final class Bench {
    final FlatProblem flat;
    final Decoder decoder;
    final Tally tally;
    final Dispatcher dispatcher;
    final boolean[] left;

    Bench(Problem problem) {
        flat = new FlatProblem(problem);
        decoder = new Decoder(flat);
        tally = new Tally(decoder);
        dispatcher = new Dispatcher(decoder);
        left = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            left[job] = flat.hopeless[job] != null;
        }
    }

    Plan first() {
        dispatcher.dispatch(Solution.plain(flat), new int[flat.jobs], left);
        tally.count(left);
        return new PlanWriter(decoder, tally).write();
    }

    /** A plan for jobs that have all begun. */
    Plan packBegun(int tries) {
        return first();
    }

    Plan follow() {
        return first();
    }

    Plan pack(Search search, BooleanSupplier stop, Consumer<Plan> better) {
        return first().withSearch(search);
    }
}
