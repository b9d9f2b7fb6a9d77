package org.shedboard.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.search.Packing;
import org.shedboard.pack.search.Round;

/** Runs the rounds of one step of a search on several threads at once; what comes out does not depend on how many there are. */
final class SearchThreads implements AutoCloseable {
    private static final long STOP_WITHIN_MILLISECONDS = 10;

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
        List<Future<Optional<Round.Found>>> futures = new ArrayList<>();
        for (RoundInHand round : all) {
            futures.add(threads.submit(() -> round.run(glimpse)));
        }
        List<Round.Found> whole = new ArrayList<>();
        for (int index = 0; index < all.size(); index++) {
            Optional<Round.Found> found = await(futures.get(index), wait);
            if (all.get(index).isWhole()) {
                whole.add(found.orElseThrow());
            }
        }
        return whole;
    }

    private static <T> T await(Future<T> future, Waiting wait) throws InterruptedException {
        Optional<T> done = Optional.empty();
        while (done.isEmpty()) {
            done = await(future, wait.milliseconds());
        }
        return done.get();
    }

    /** What comes of it; empty when it takes longer than that. */
    private static <T> Optional<T> await(Future<T> future, long milliseconds) throws InterruptedException {
        try {
            return Optional.of(future.get(milliseconds, TimeUnit.MILLISECONDS));
        } catch (TimeoutException notYet) {
            return Optional.empty();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a part of the search failed", failed.getCause());
        }
    }

    /**
     * The search with what can be proven of its plans, worked out on one of the threads, since nobody can stop that.
     *
     * @param unwanted whether nobody waits for it any more
     * @return empty when it was not waited for
     */
    Optional<Packing> prove(Packing packing, BooleanSupplier unwanted) throws InterruptedException {
        Future<Packing> future = threads.submit(packing::proven);
        while (!unwanted.getAsBoolean()) {
            Optional<Packing> proven = await(future, STOP_WITHIN_MILLISECONDS);
            if (proven.isPresent()) {
                return proven;
            }
        }
        return Optional.empty();
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
