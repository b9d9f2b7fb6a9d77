package org.shedboard.app;

import java.util.Optional;
import java.util.function.Consumer;
import org.shedboard.board.Msg;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;

/**
 * Works out beside the screen what takes longer than a frame, anew whenever the day was read: how sure knock-off is, and what runs away
 * from what is said of it.
 */
final class DayWatch {
    private final Consumer<Msg> tell;
    private final Thread thread = new Thread(this::work, "day watch");
    private Optional<Outlook> waiting = Optional.empty();

    DayWatch(Consumer<Msg> tell) {
        this.tell = tell;
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
    }

    void start() {
        thread.start();
    }

    /** The day was read anew; one that still waits is passed over. */
    synchronized void look(Outlook outlook) {
        waiting = Optional.of(outlook);
        notifyAll();
    }

    void close() {
        thread.interrupt();
    }

    private void work() {
        try {
            while (true) {
                Outlook outlook = await();
                tell.accept(new Msg.KnockOffSeen(KnockOffChance.of(outlook)));
                tell.accept(
                        new Msg.DriftsSeen(outlook.day().books().experience().drifts()));
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized Outlook await() throws InterruptedException {
        while (waiting.isEmpty()) {
            wait();
        }
        Outlook next = waiting.get();
        waiting = Optional.empty();
        return next;
    }
}
