package org.shedboard.app;

import java.net.InetSocketAddress;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.ServeCommand;
import org.shedboard.app.command.ServerName;
import org.shedboard.board.Msg;
import org.shedboard.store.Address;
import org.shedboard.store.Serving;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;
import org.shedboard.words.Words;

/** Serves a shop until somebody ends it; then terminals are put out first, and the records closed after them. */
final class ServeRun {
    private static final String TERMINAL = "server";
    private static final long LOOK_MILLIS = 1000;
    private static final long PATIENCE_SECONDS = 8;

    private final Shedboard program;
    private final CountDownLatch end = new CountDownLatch(1);
    private final CountDownLatch ended = new CountDownLatch(1);
    private String lastTrouble = "";

    ServeRun(Shedboard program) {
        this.program = program;
    }

    int run(ServeCommand asked) {
        Address place = program.workshops().place();
        if (!(place instanceof Address.InHome)) {
            throw new CannotDo("serve.not_here");
        }
        if (!Store.exists(place)) {
            throw new CannotDo("command.no_shop", place.home());
        }
        Thread hook = new Thread(this::endOnSignal, "signal");
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            serve(place, asked);
        } finally {
            ended.countDown();
            FullScreen.forget(hook);
        }
        return Shedboard.DONE;
    }

    private void serve(Address place, ServeCommand asked) {
        ServerName listen = asked.listen();
        InetSocketAddress where = new InetSocketAddress(listen.host(), listen.port());
        try (Workshop workshop =
                        Workshop.open(place, TERMINAL, program.globals().at());
                Serving serving = Serving.start(place.home(), where, asked.isNewPassword())) {
            program.answer(told(workshop, serving, where).answer());
            lookAfter(workshop);
        }
    }

    /** Until it is to end; the day's backup is made meanwhile, as by a board. */
    private void lookAfter(Workshop workshop) {
        SafeWatch safety = new SafeWatch(this::warn);
        safety.watch(workshop);
        safety.start();
        while (!isToEnd()) {
            keepOpen(workshop);
        }
        safety.close();
    }

    private void warn(Msg msg) {
        if (msg instanceof Msg.Warned warned) {
            program.voice().complain(warned.sentences());
        }
    }

    private static ServeCommand.Served told(Workshop workshop, Serving serving, InetSocketAddress where) {
        return new ServeCommand.Served(
                workshop.day().shop().name(),
                new ServerName(where.getHostString(), serving.address().getPort()),
                serving.address().getAddress().isLoopbackAddress(),
                serving.fingerprint().toString(),
                serving.drawn()
                        .map(drawn -> List.of(drawn.name(), drawn.password()))
                        .orElse(List.of()));
    }

    /** Where another program of this machine had the records open and leaves, this one takes them over, for whoever is connected. */
    private void keepOpen(Workshop workshop) {
        try {
            workshop.newestChange();
            lastTrouble = "";
        } catch (StoreFailure failure) {
            if (!failure.getMessage().equals(lastTrouble)) {
                lastTrouble = failure.getMessage();
                program.voice().complain(List.of(Words.say("app.records", lastTrouble)));
            }
        }
    }

    private boolean isToEnd() {
        try {
            return end.await(LOOK_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private void endOnSignal() {
        end.countDown();
        try {
            ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
