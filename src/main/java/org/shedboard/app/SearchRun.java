package org.shedboard.app;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.day.Quoting;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packing;
import org.shedboard.pack.search.Round;

/**
 * One problem being packed on several threads. With a number of tries the plan hangs on the seed and on them alone. With a time,
 * rounds that it cuts off do not count as a part of the search, but a better plan that was seen in one is not thrown away: it
 * is the answer, which then says how many tries were made in all and cannot be had again by them. Time is counted from the making
 * of this object. A plan whose cost is proven to be least ends the search early, which hangs on no clock either.
 */
final class SearchRun {
    /** How often whoever watches hears of it. */
    private static final long NEWS_MILLISECONDS = 200;

    private final Problem problem;
    private final SearchLimit limit;
    private final long seed;
    private final int threadCount;
    private final Consumer<SearchRun> news;
    private final long begun = System.nanoTime();
    private volatile boolean stopped;
    /** Somebody told it to stop, other than the time. */
    private volatile boolean isUnwanted;

    private volatile SearchThreads threads;
    private volatile Packing packing;
    private volatile long endedNanoseconds;
    private Optional<Plan> glimpsed = Optional.empty();
    /** Of each whole round the best plan, in order. */
    private final List<Plan> found = new ArrayList<>();

    /** @param news called about five times a second while it runs, on the thread that called {@link #run} */
    SearchRun(Problem problem, SearchLimit limit, long seed, int threadCount, Consumer<SearchRun> news) {
        this.problem = problem;
        this.limit = limit;
        this.seed = seed;
        this.threadCount = threadCount;
        this.news = news;
    }

    /** Packs on so many threads whatever a quote asks for. */
    static Quoting.Repacking repacking(int threads) {
        return (problem, search) -> new SearchRun(
                        problem, SearchLimit.ofTries(search.tries()), search.seed(), threads, running -> {})
                .run();
    }

    /** The plan that is there at once; from here on there is one for whoever stops it. */
    void begin() {
        packing = Packing.of(problem, seed);
    }

    /** Searches until the limit, or until it is stopped; the plan obeys every rule. */
    Plan run() {
        begin();
        try (SearchThreads all = new SearchThreads(threadCount, () -> stopped, this::glimpse)) {
            threads = all;
            boolean gotOn = true;
            while (gotOn && isToGoOn()) {
                gotOn = step(all);
            }
        } catch (InterruptedException interrupted) {
            stop();
            Thread.currentThread().interrupt();
        }
        endedNanoseconds = System.nanoTime();
        return limit.tries().isPresent() && !stopped ? checked(packing.plan()) : best();
    }

    private boolean isToGoOn() {
        return !stopped && !isTimeUp() && !isProven(packing.plan()) && limit.triesLeft(packing.tries()) > 0;
    }

    /** False when there was nothing to try, so that there will not be later on either. */
    private boolean step(SearchThreads all) throws InterruptedException {
        long before = packing.tries();
        List<Round> rounds = packing.rounds(limit.triesLeft(before));
        List<Round.Found> whole = all.run(rounds, this::look);
        whole.forEach(each -> found.add(each.plan()));
        packing = packing.after(whole);
        packing = all.prove(packing, () -> isUnwanted).orElse(packing);
        return packing.tries() > before;
    }

    /** A cost can be proven to be least among plans with as few jobs left out, so it says nothing while any is. */
    private static boolean isProven(Plan plan) {
        return plan.unplaced().isEmpty() && plan.cost() <= plan.bound();
    }

    private boolean isTimeUp() {
        return limit.tries().isEmpty() && nanosecondsLeft() <= 0;
    }

    private long nanosecondsLeft() {
        return limit.time().toNanos() - (System.nanoTime() - begun);
    }

    /** Seen to while rounds run. */
    private long look() {
        if (isTimeUp()) {
            stopped = true;
        }
        news.accept(this);
        return limit.tries().isPresent() || stopped
                ? NEWS_MILLISECONDS
                : Math.min(NEWS_MILLISECONDS, 1 + TimeUnit.NANOSECONDS.toMillis(nanosecondsLeft()));
    }

    void stop() {
        isUnwanted = true;
        stopped = true;
    }

    private synchronized void glimpse(Plan plan) {
        if (glimpsed.isEmpty() || plan.isBetterThan(glimpsed.get())) {
            glimpsed = Optional.of(plan);
        }
    }

    /** The best plan seen so far by anyone; not necessarily one that obeys every rule. */
    synchronized Optional<Plan> seen() {
        Optional<Plan> counted = Optional.ofNullable(packing).map(Packing::plan);
        return glimpsed.filter(plan -> counted.isEmpty() || plan.isBetterThan(counted.get()))
                .or(() -> counted);
    }

    /** After it has run: the best plan of each of its whole rounds, which hang on the seed and the tries alone where those were given. */
    List<Plan> found() {
        return List.copyOf(found);
    }

    /** The best plan so far that obeys every rule: the last one glimpsed may still lack a job that has begun. */
    Plan best() {
        return seen().filter(plan -> PlanCheck.of(problem, plan).isLegal())
                .map(plan -> plan.withSearch(Search.of(seed, tries())))
                .map(this::withBound)
                .orElseGet(() -> checked(packing.plan()));
    }

    /** What is proven of the plans that leave out as many is proven of this one too. */
    private Plan withBound(Plan plan) {
        Plan counted = packing.plan();
        return plan.unplaced().size() == counted.unplaced().size()
                ? plan.withBound(Math.max(plan.bound(), counted.bound()))
                : plan;
    }

    private Plan checked(Plan plan) {
        PlanCheck check = PlanCheck.of(problem, plan);
        if (!check.isLegal()) {
            throw new IllegalStateException("the packing engine broke a rule: " + check);
        }
        return plan;
    }

    /** Tries made so far, in rounds that were cut off too. */
    long tries() {
        return threads == null ? 0 : threads.tries();
    }

    /** How long it searched; as long as it has so far where it has not ended. */
    Duration taken() {
        long end = endedNanoseconds == 0 ? System.nanoTime() : endedNanoseconds;
        return Duration.ofNanos(end - begun);
    }
}
