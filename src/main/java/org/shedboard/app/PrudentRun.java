package org.shedboard.app;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import org.shedboard.app.command.PackTerms;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.chance.KeptPromises;
import org.shedboard.pack.chance.Prudent;
import org.shedboard.pack.check.PlanCheck;

/**
 * Packs a problem against risk once it was packed as usual, for as long again. The plan hangs on the seed and the tries alone where
 * those were given, as the usual one does.
 */
final class PrudentRun {
    /**
     * What came of it.
     *
     * @param kept by the usual plan, and by the one against risk
     * @param plan the one against risk where that keeps more, otherwise the usual one
     */
    record Outcome(Plan plan, KeptPromises kept) {}

    private final Problem problem;
    private final PackTerms terms;
    private final LongConsumer news;
    private long tries;
    private Duration taken = Duration.ZERO;
    private volatile boolean stopped;
    private volatile SearchRun running;

    /** @param news told of the tries so far about five times a second */
    PrudentRun(Problem problem, PackTerms terms, LongConsumer news) {
        this.problem = problem;
        this.terms = terms;
        this.news = news;
    }

    /** @param found more plans of the problem, that the usual search came across */
    Outcome run(Plan usual, List<Plan> found) {
        List<Plan> plans = new ArrayList<>(found);
        plans.add(usual);
        List<Problem> days = Prudent.longerDays(problem);
        for (Problem day : days) {
            plans.addAll(pack(day, terms.limit().shared(days.size())));
        }
        Plan prudent = checked(
                Prudent.pick(problem, plans, terms.seed()).withSearch(Search.of(terms.seed(), usual.tries() + tries)));
        KeptPromises kept = Prudent.judged(problem, usual, prudent, terms.seed());
        boolean bounds = prudent.unplaced().size() == usual.unplaced().size();
        return new Outcome(kept.isMore() ? prudent.withBound(bounds ? usual.bound() : prudent.bound()) : usual, kept);
    }

    private List<Plan> pack(Problem day, SearchLimit limit) {
        SearchRun run =
                new SearchRun(day, limit, terms.seed(), terms.threads(), now -> news.accept(tries + now.tries()));
        running = run;
        if (stopped) {
            run.stop();
        }
        List<Plan> plans = new ArrayList<>();
        plans.add(run.run());
        plans.addAll(run.found());
        tries += run.tries();
        taken = taken.plus(run.taken());
        return plans;
    }

    /** Ends soon; what comes of it then is not to be told. */
    void stop() {
        stopped = true;
        if (running != null) {
            running.stop();
        }
    }

    private Plan checked(Plan plan) {
        PlanCheck check = PlanCheck.of(problem, plan);
        if (!check.isLegal()) {
            throw new IllegalStateException("packing against risk broke a rule: " + check);
        }
        return plan;
    }
}
