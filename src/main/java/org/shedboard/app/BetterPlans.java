package org.shedboard.app;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.shedboard.board.Msg;
import org.shedboard.day.Outlook;
import org.shedboard.day.Posted;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;

/** Looks for a better plan than the posted one in the background, anew whenever the day changes. */
final class BetterPlans {
    /** Minutes, of one machine ready earlier, that a plan must gain before it is worth anybody's attention. Invented. */
    private static final int WORTH_SAYING = 30;

    /** It looks so often, each time from a seed of its own, and says each better plan as it comes. */
    private static final int LOOKS = 6;

    private static final long TRIES_A_LOOK = 10_000;

    private final Consumer<Msg> tell;
    private final Thread thread = new Thread(this::work, "better plans");
    private final AtomicLong round = new AtomicLong();
    private final Object lock = new Object();
    private Optional<Outlook> wanted = Optional.empty();
    private boolean over;

    BetterPlans(Consumer<Msg> tell) {
        this.tell = tell;
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
    }

    void start() {
        thread.start();
    }

    void lookFrom(Outlook outlook) {
        synchronized (lock) {
            wanted = Optional.of(outlook).filter(each -> each.day().isOpened());
            round.incrementAndGet();
            lock.notifyAll();
        }
    }

    void close() {
        synchronized (lock) {
            over = true;
            round.incrementAndGet();
            lock.notifyAll();
        }
    }

    private void work() {
        try {
            for (Optional<Outlook> next = await(); next.isPresent(); next = await()) {
                search(next.get());
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** The next day to look from; empty when it is over. */
    private Optional<Outlook> await() throws InterruptedException {
        synchronized (lock) {
            while (!over && wanted.isEmpty()) {
                lock.wait();
            }
            Optional<Outlook> next = over ? Optional.empty() : wanted;
            wanted = Optional.empty();
            return next;
        }
    }

    private void search(Outlook outlook) {
        long mine = round.get();
        Outlook seen = outlook;
        for (int seed = 1; seed <= LOOKS && round.get() == mine; seed++) {
            Search search = new Search(seed, TRIES_A_LOOK);
            Plan found = Packer.pack(outlook.problem(), search, () -> round.get() != mine, better -> {});
            if (round.get() == mine && seen.isWorth(found, WORTH_SAYING)) {
                seen = seen.with(found);
                tell.accept(
                        new Msg.BetterFound(new Posted(found, outlook.day().origin()), outlook.differenceTo(found)));
            }
        }
    }
}
