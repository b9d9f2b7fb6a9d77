package org.shedboard.app;

import java.util.Optional;
import java.util.function.Consumer;
import org.shedboard.board.Msg;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;

/** Works out beside the screen how sure knock-off is, which takes longer than a frame, anew whenever the day was read. */
final class KnockOffWatch {
    private final Consumer<Msg> tell;
    private final Thread thread = new Thread(this::work, "knock-off");
    private Optional<Outlook> waiting = Optional.empty();

    KnockOffWatch(Consumer<Msg> tell) {
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
                tell.accept(new Msg.KnockOffSeen(KnockOffChance.of(await())));
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
