package org.shedboard.app;

import java.util.Optional;
import org.shedboard.app.command.PackTerms;
import org.shedboard.app.command.RiskText;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.words.Words;

/** One problem being packed from the command line. Whoever interrupts it gets the best plan seen so far. */
final class PackRun {
    /** Prints the answer: a plan that obeys every rule, and what else there is to say. */
    interface Printing {
        void print(Plan plan, Optional<String> remark);
    }

    private final Problem problem;
    private final boolean againstRisk;
    private final SearchRun search;
    private final PrudentRun prudent;
    private final Progress progress;
    private final Printing printing;
    private volatile boolean stopped;
    private boolean printed;

    /** @param printing asked once */
    PackRun(Problem problem, PackTerms terms, Progress progress, Printing printing) {
        this.problem = problem;
        this.againstRisk = terms.againstRisk();
        this.search = new SearchRun(problem, terms.limit(), terms.seed(), terms.threads(), running -> tell());
        this.prudent = new PrudentRun(problem, terms, this::tell);
        this.progress = progress;
        this.printing = printing;
    }

    void run() {
        Plan usual = search.run().withMillis(search.taken().toMillis());
        if (againstRisk && !stopped) {
            PrudentRun.Outcome outcome = prudent.run(usual, search.found());
            printOnce(outcome.plan(), Optional.of(RiskText.of(problem, outcome.kept())));
        } else {
            printOnce(usual, remarkWhenCut());
        }
    }

    private Optional<String> remarkWhenCut() {
        return Optional.of(Words.say("command.pack.risk_cut")).filter(remark -> againstRisk);
    }

    /** The best plan so far is printed, unless one was; for whoever does not want to wait longer. */
    void interrupt() {
        stopped = true;
        search.stop();
        prudent.stop();
        if (hasPlan()) {
            printOnce(search.best().withMillis(search.taken().toMillis()), remarkWhenCut());
        }
    }

    boolean hasPlan() {
        return search.seen().isPresent();
    }

    /** Whoever comes second waits until the plan is out, so that the program does not end in the middle of it. */
    private synchronized void printOnce(Plan plan, Optional<String> remark) {
        if (printed) {
            return;
        }
        printed = true;
        progress.end();
        printing.print(plan, remark);
    }

    private void tell() {
        search.seen().ifPresent(plan -> progress.show(() -> line(plan)));
    }

    private void tell(long tries) {
        progress.show(() -> Words.say("command.search.progress_risk", tries));
    }

    private String line(Plan plan) {
        int left = plan.unplaced().size();
        return left == 0
                ? Words.say("command.search.progress", plan.cost(), plan.bound(), search.tries())
                : Words.say("command.search.progress_left_out", plan.cost(), plan.bound(), search.tries(), left);
    }
}
