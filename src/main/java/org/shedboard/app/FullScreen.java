package org.shedboard.app;

import java.io.IOException;
import java.io.PrintStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.shedboard.app.command.Globals;
import org.shedboard.look.Scheme;
import org.shedboard.store.Address;
import org.shedboard.term.Display;

/** The full screen from start to end: whatever ends it, the records are closed and the terminal is given back. */
final class FullScreen {
    /** Longest wait for the records when the machine wants the program gone. */
    private static final long PATIENCE_SECONDS = 8;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Log log;
    private final Manner manner;

    /**
     * How the screen is shown on this terminal.
     *
     * @param takesMouse whether pointing at it presses its keys
     */
    record Manner(boolean isAscii, Scheme scheme, boolean takesMouse) {}

    FullScreen(Log log, Manner manner) {
        this.log = log;
        this.manner = manner;
    }

    void run(Address address, Globals globals, int processors) throws IOException {
        try (Display display = Display.open(manner.scheme(), manner.takesMouse())) {
            Access access = globals.lookOnly() ? Access.LOOK : Access.WORK;
            Session session =
                    new Session(display, address, globals.demo(), globals.at(), manner.isAscii(), processors, access);
            runGuarded(session);
        } finally {
            ended.countDown();
        }
    }

    /** What libraries print goes to the log, a fault in any thread ends the session, and so does a signal. */
    private void runGuarded(Session session) throws IOException {
        Thread hook = new Thread(() -> endOnSignal(session), "signal");
        PrintStream out = System.out;
        PrintStream err = System.err;
        var handler = Thread.getDefaultUncaughtExceptionHandler();
        Runtime.getRuntime().addShutdownHook(hook);
        try (PrintStream toLog = log.stream()) {
            System.setOut(toLog);
            System.setErr(toLog);
            Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> session.fail(fault));
            session.run();
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(handler);
            System.setOut(out);
            System.setErr(err);
            forget(hook);
        }
    }

    private void endOnSignal(Session session) {
        session.end();
        try {
            ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Takes a shutdown hook back, unless it is at work already. */
    static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // the hook is what ends us
        }
    }
}
