package org.shedboard.app;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.board.Msg;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;

/**
 * Searches beside the screen, one at a time, on threads that leave the screen a processor where there are several. A new search takes
 * the place of the one before of its kind, which ends after its next try; nothing is told of that from then on. Somebody waits for a
 * quote, so a search for better plans makes way for it, and begins anew afterwards.
 */
final class BackgroundSearch {
    /** What a search is for, the most urgent first. */
    enum Kind {
        QUOTE,
        TRIAL,
        BETTER_PLAN
    }

    /**
     * What to look for.
     *
     * @param better what to tell of each plan that is better than all before it and obeys every rule; it is asked quickly
     * @param last what to tell of the plan that stands at the end
     */
    record Wanted(
            Kind kind,
            Problem problem,
            SearchLimit limit,
            long seed,
            Function<Plan, Optional<Msg>> better,
            Function<Plan, Optional<Msg>> last) {
        static Wanted betterPlan(Problem problem, SearchLimit limit, long seed, Function<Plan, Optional<Msg>> better) {
            return new Wanted(Kind.BETTER_PLAN, problem, limit, seed, better, plan -> Optional.empty());
        }

        static Wanted quote(Problem problem, Search search, Function<Plan, Msg> quoted) {
            SearchLimit limit = SearchLimit.ofTries(search.tries());
            return new Wanted(
                    Kind.QUOTE,
                    problem,
                    limit,
                    search.seed(),
                    plan -> Optional.empty(),
                    plan -> Optional.of(quoted.apply(plan)));
        }
    }

    private final Consumer<Msg> tell;
    private final int threads;
    private final Thread thread = new Thread(this::work, "background search");
    private final Map<Kind, Wanted> waiting = new EnumMap<>(Kind.class);
    private Optional<Look> running = Optional.empty();
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
        stop(next.kind());
        makeWayFor(next.kind());
        waiting.put(next.kind(), next);
        notifyAll();
    }

    /** What is being looked for is not wanted any more. */
    synchronized void stop(Kind kind) {
        waiting.remove(kind);
        running.filter(look -> look.wanted.kind() == kind).ifPresent(this::stop);
    }

    private void stop(Look look) {
        look.run.stop();
        running = Optional.empty();
    }

    private void makeWayFor(Kind kind) {
        running.filter(look -> look.wanted.kind().compareTo(kind) > 0).ifPresent(look -> {
            waiting.put(look.wanted.kind(), look.wanted);
            stop(look);
        });
    }

    synchronized void close() {
        over = true;
        waiting.clear();
        running.ifPresent(this::stop);
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
        while (!over && waiting.isEmpty()) {
            wait();
        }
        Optional<Kind> next = waiting.keySet().stream().findFirst();
        running = next.map(waiting::remove).map(Look::new);
        return running;
    }

    /** Whoever stops the search waits until it is told, and hears no more afterwards. */
    private synchronized void tellOfBetter(Look look, Plan plan) {
        if (isRunning(look)) {
            look.wanted.better().apply(plan).ifPresent(tell);
        }
    }

    private synchronized void end(Look look, Optional<Msg> last) {
        if (isRunning(look)) {
            last.ifPresent(tell);
            running = Optional.empty();
        }
    }

    private synchronized boolean isRunning(Look look) {
        return running.filter(current -> current == look).isPresent();
    }

    /** One search, and the best plan of it that was judged. */
    private final class Look {
        private final Wanted wanted;
        private final SearchRun run;
        private Optional<Plan> judged = Optional.empty();

        Look(Wanted wanted) {
            this.wanted = wanted;
            this.run = new SearchRun(wanted.problem(), wanted.limit(), wanted.seed(), threads, running -> glance());
        }

        void run() {
            Plan last = run.run();
            tellIfBetter(last);
            end(this, isRunning(this) ? wanted.last().apply(last) : Optional.empty());
        }

        /** Whether a better plan has been seen is asked first: judging one by every rule takes longer. */
        private void glance() {
            if (isRunning(this) && run.seen().filter(this::isNews).isPresent()) {
                tellIfBetter(run.best());
            }
        }

        private void tellIfBetter(Plan plan) {
            if (isNews(plan)) {
                judged = Optional.of(plan);
                tellOfBetter(this, plan);
            }
        }

        private boolean isNews(Plan plan) {
            return judged.isEmpty() || plan.isBetterThan(judged.get());
        }
    }
}
