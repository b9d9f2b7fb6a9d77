package org.shedboard.app;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.board.Msg;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * Searches beside the screen, one at a time, on threads that leave the screen a processor where there are several. A new search takes
 * the place of the one before, which ends after its next try; nothing is told of it from then on.
 */
final class BackgroundSearch {
    /**
     * What to look for.
     *
     * @param better what to tell of each plan that is better than all before it and obeys every rule; it is asked quickly
     */
    record Wanted(Problem problem, SearchLimit limit, long seed, Function<Plan, Optional<Msg>> better) {}

    private final Consumer<Msg> tell;
    private final int threads;
    private final Thread thread = new Thread(this::work, "background search");
    private Optional<Wanted> wanted = Optional.empty();
    private Optional<SearchRun> running = Optional.empty();
    private boolean over;

    /** @param processors how many the machine has */
    BackgroundSearch(int processors, Consumer<Msg> tell) {
        this.tell = tell;
        this.threads = Math.max(1, Math.min(SearchLimit.USEFUL_THREADS, processors - 1));
        thread.setDaemon(true);
        // the threads of a search are begun by this one, and are of its priority
        thread.setPriority(Thread.MIN_PRIORITY);
    }

    void start() {
        thread.start();
    }

    synchronized void lookFor(Wanted next) {
        stop();
        wanted = Optional.of(next);
        notifyAll();
    }

    /** What is being looked for is not wanted any more. */
    synchronized void stop() {
        wanted = Optional.empty();
        running.ifPresent(SearchRun::stop);
        running = Optional.empty();
    }

    synchronized void close() {
        stop();
        over = true;
        notifyAll();
    }

    private void work() {
        try {
            for (Optional<Look> next = await(); next.isPresent(); next = await()) {
                next.get().run();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** What is to run next, running from here on; empty when it is over. */
    private synchronized Optional<Look> await() throws InterruptedException {
        while (!over && wanted.isEmpty()) {
            wait();
        }
        Optional<Look> next = over ? Optional.empty() : wanted.map(Look::new);
        wanted = Optional.empty();
        running = next.map(look -> look.run);
        return next;
    }

    /** Whoever stops the search waits until it is told, and hears no more afterwards. */
    private synchronized void tellOf(SearchRun run, Wanted mine, Plan plan) {
        if (isRunning(run)) {
            mine.better().apply(plan).ifPresent(tell);
        }
    }

    private synchronized boolean isRunning(SearchRun run) {
        return running.filter(current -> current == run).isPresent();
    }

    private synchronized void end(SearchRun run) {
        if (isRunning(run)) {
            running = Optional.empty();
        }
    }

    /** One search, and the best plan of it that was told. */
    private final class Look {
        private final Wanted mine;
        private final SearchRun run;
        private Optional<Plan> told = Optional.empty();

        Look(Wanted mine) {
            this.mine = mine;
            this.run = new SearchRun(mine.problem(), mine.limit(), mine.seed(), threads, running -> look());
        }

        void run() {
            tellIfBetter(run.run());
            end(run);
        }

        /** Whether a plan has been seen is asked first: judging one by every rule takes longer. */
        private void look() {
            if (isRunning(run) && run.seen().filter(this::isNews).isPresent()) {
                tellIfBetter(run.best());
            }
        }

        private void tellIfBetter(Plan plan) {
            if (isNews(plan)) {
                told = Optional.of(plan);
                tellOf(run, mine, plan);
            }
        }

        private boolean isNews(Plan plan) {
            return told.isEmpty() || plan.isBetterThan(told.get());
        }
    }
}
