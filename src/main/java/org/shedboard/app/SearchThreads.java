package org.shedboard.app;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.search.Round;

/** Runs the rounds of one step of a search on several threads at once; what comes out does not depend on how many there are. */
final class SearchThreads implements AutoCloseable {
    private final ExecutorService threads;
    private final BooleanSupplier stop;
    private final Consumer<Plan> glimpse;
    private List<RoundInHand> running = List.of();
    /** Tries of the rounds that are over. */
    private long triesBefore;

    /**
     * @param stop asked after every try; true ends every round
     * @param glimpse told, on the round's thread, of each plan that is better than all before it in its round
     */
    SearchThreads(int count, BooleanSupplier stop, Consumer<Plan> glimpse) {
        this.threads = Executors.newFixedThreadPool(count, SearchThreads::daemon);
        this.stop = stop;
        this.glimpse = glimpse;
    }

    /** A program that wants to end does not wait for a search. */
    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "search");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Runs every round, or the part of it until it is told to stop.
     *
     * @param wait called while rounds are running, as often as it returns; it says how many milliseconds to wait before the next call
     * @return what the rounds found that came to their own end, in the order of the rounds
     */
    List<Round.Found> run(List<Round> rounds, Waiting wait) throws InterruptedException {
        List<RoundInHand> all =
                rounds.stream().map(round -> new RoundInHand(round, stop)).toList();
        begin(all);
        List<Future<Round.Found>> futures = new ArrayList<>();
        for (RoundInHand round : all) {
            futures.add(threads.submit(() -> round.run(glimpse)));
        }
        List<Round.Found> whole = new ArrayList<>();
        for (int index = 0; index < all.size(); index++) {
            Round.Found found = await(futures.get(index), wait);
            if (all.get(index).isWhole()) {
                whole.add(found);
            }
        }
        return whole;
    }

    private static Round.Found await(Future<Round.Found> future, Waiting wait) throws InterruptedException {
        while (true) {
            try {
                return future.get(wait.milliseconds(), TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                continue;
            } catch (ExecutionException failed) {
                throw new IllegalStateException("a round of the search failed", failed.getCause());
            }
        }
    }

    private synchronized void begin(List<RoundInHand> rounds) {
        triesBefore = tries();
        running = rounds;
    }

    /** Tries made so far in all rounds, whole or not. */
    synchronized long tries() {
        return triesBefore + running.stream().mapToLong(RoundInHand::tries).sum();
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }

    /** What is to be seen to while rounds are running. */
    interface Waiting {
        /** Does it, and says how long to wait before it is to be done again. */
        long milliseconds();
    }
}
