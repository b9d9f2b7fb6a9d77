package org.shedboard.app;

import java.util.function.Consumer;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.words.Words;

/** One problem being packed from the command line. Whoever interrupts it gets the best plan seen so far. */
final class PackRun {
    private final SearchRun search;
    private final Progress progress;
    private final Consumer<Plan> print;
    private boolean printed;

    /** @param print called once, with a plan that obeys every rule */
    PackRun(Problem problem, SearchLimit limit, long seed, int threads, Progress progress, Consumer<Plan> print) {
        this.search = new SearchRun(problem, limit, seed, threads, running -> tell());
        this.progress = progress;
        this.print = print;
    }

    void run() {
        printOnce(search.run());
    }

    /** The best plan so far is printed, unless one was; for whoever does not want to wait longer. */
    void interrupt() {
        search.stop();
        if (hasPlan()) {
            printOnce(search.best());
        }
    }

    boolean hasPlan() {
        return search.seen().isPresent();
    }

    /** Whoever comes second waits until the plan is out, so that the program does not end in the middle of it. */
    private synchronized void printOnce(Plan plan) {
        if (printed) {
            return;
        }
        printed = true;
        progress.end();
        print.accept(plan.withMillis(search.taken().toMillis()));
    }

    private void tell() {
        search.seen().ifPresent(plan -> progress.show(() -> line(plan)));
    }

    private String line(Plan plan) {
        int left = plan.unplaced().size();
        return left == 0
                ? Words.say("command.search.progress", plan.cost(), plan.bound(), search.tries())
                : Words.say("command.search.progress_left_out", plan.cost(), plan.bound(), search.tries(), left);
    }
}
