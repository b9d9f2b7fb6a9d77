package org.shedboard.app;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.shedboard.board.Msg;
import org.shedboard.store.StoreFailure;
import org.shedboard.words.Words;

/**
 * Makes the day's backup beside the screen, when the shop is opened and when the date turns, and tells the board what is not as it should
 * be with the backups and the clock. Its thread is never interrupted: the database would close its file.
 */
final class SafeWatch {
    private static final long LOOK_EVERY_MILLIS = 60_000;
    /** A backup that could not be made is not tried again at every look. */
    private static final Duration PATIENCE = Duration.ofHours(1);
    /** Nobody waits longer for one that is under way when the program is left; it leaves nothing behind. */
    private static final long LEAVING_MILLIS = 3000;

    private final Consumer<Msg> tell;
    private final Thread thread = new Thread(this::work, "safe watch");
    private Optional<Workshop> watched = Optional.empty();
    private boolean over;
    private Optional<String> failed = Optional.empty();
    private Instant nextTry = Instant.MIN;
    private List<String> told = List.of();

    SafeWatch(Consumer<Msg> tell) {
        this.tell = tell;
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
    }

    void start() {
        thread.start();
    }

    /** Looks after this shop from now on. */
    synchronized void watch(Workshop workshop) {
        watched = Optional.of(workshop);
        notifyAll();
    }

    void close() {
        synchronized (this) {
            over = true;
            notifyAll();
        }
        try {
            thread.join(LEAVING_MILLIS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void work() {
        try {
            for (Optional<Workshop> shop = next(0); shop.isPresent(); shop = next(LOOK_EVERY_MILLIS)) {
                look(shop.get());
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** The shop to look after, a while after the last look; empty when all is over. */
    private synchronized Optional<Workshop> next(long millis) throws InterruptedException {
        if (millis > 0 && !over) {
            wait(millis);
        }
        while (watched.isEmpty() && !over) {
            wait();
        }
        return over ? Optional.empty() : watched;
    }

    private void look(Workshop shop) {
        try {
            backUp(shop);
            List<String> warnings = new ArrayList<>(failed.stream().toList());
            warnings.addAll(shop.safekeeping().warnings());
            if (!warnings.equals(told)) {
                told = warnings;
                tell.accept(new Msg.Warned(warnings));
            }
        } catch (StoreFailure | IllegalStateException gone) {
            // the records cannot be read just now, which the board tells by itself, or they are closed
        }
    }

    private void backUp(Workshop shop) {
        if (shop.now().isBefore(nextTry)) {
            return;
        }
        try {
            shop.safekeeping().backUpOfDay();
            failed = Optional.empty();
        } catch (StoreFailure failure) {
            failed = Optional.of(Words.say("warning.backup_failed", failure.getMessage()));
            nextTry = shop.now().plus(PATIENCE);
        }
    }
}
