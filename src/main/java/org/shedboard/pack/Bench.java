package org.shedboard.pack;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** One problem being packed: dispatching rules first, then annealed handicaps of jobs, then annealed lists of tasks. */
final class Bench {
    /** Share of the tries for the handicaps: large days get most of their gain there, small ones from the lists. */
    private static final int LEAST_HANDICAP_PERCENT = 20;

    private static final int MOST_HANDICAP_PERCENT = 60;

    private final FlatProblem flat;
    private final Decoder decoder;
    private final Tally tally;
    private final boolean[] left;

    Bench(Problem problem) {
        flat = new FlatProblem(problem);
        decoder = new Decoder(flat);
        tally = new Tally(decoder);
        left = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            left[job] = flat.hopeless[job] != null;
        }
        decoder.leaveOut(left);
    }

    Plan first() {
        Trial trial = trial(() -> false, found -> {});
        new Handicaps(flat, trial).tryRules();
        return trial.expectPlan();
    }

    Plan follow() {
        if (flat.problem.posted().isEmpty()) {
            return first();
        }
        Trial trial = trial(() -> false, found -> {});
        trial.decode(new Follow(flat, decoder, tally, left).solve());
        return trial.bestStranded() > 0 ? first() : trial.expectPlan();
    }

    /** A plan for jobs that have all begun, looked for until each fits or the tries are over. */
    Plan packBegun(int tries) {
        Trial trial = trial(() -> tally.stranded == 0, found -> {});
        new Handicaps(flat, trial).tryRules();
        new Lists(flat, trial, left, Chance.of(1, "begun")).anneal(tries);
        return trial.bestPlan();
    }

    Plan pack(Search search, BooleanSupplier stop, Consumer<Plan> better) {
        Trial trial = trial(stop, plan -> better.accept(plan.withSearch(search)));
        Handicaps handicaps = new Handicaps(flat, trial);
        handicaps.tryRules();
        if (flat.problem.posted().isPresent()) {
            trial.decode(new Follow(flat, decoder, tally, left).solve());
        }
        handicaps.anneal(search.tries() * handicapPercent() / 100, Chance.of(search.seed(), "handicaps"));
        new Lists(flat, trial, left, Chance.of(search.seed(), "lists")).anneal(search.tries() - trial.tries);
        trial.tell();
        return trial.expectPlan().withSearch(search);
    }

    private int handicapPercent() {
        return Math.max(LEAST_HANDICAP_PERCENT, Math.min(MOST_HANDICAP_PERCENT, flat.jobs * 3));
    }

    private Trial trial(BooleanSupplier stop, Consumer<Plan> better) {
        return new Trial(decoder, tally, stop, better);
    }
}
