package org.shedboard.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.shedboard.board.Board;
import org.shedboard.board.Effect;
import org.shedboard.board.KeptForm;
import org.shedboard.board.Msg;
import org.shedboard.board.Turn;
import org.shedboard.board.Update;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Spot;
import org.shedboard.screen.Press;
import org.shedboard.screen.View;
import org.shedboard.store.Address;
import org.shedboard.term.Display;
import org.shedboard.term.Event;

/**
 * The full screen at work. One thread, the caller's, takes what happens from a queue, updates the board, hands out its effects
 * and paints; keys, the clock and the records each put messages into that queue and never touch the screen.
 */
final class Session {
    /** What goes into the queue: a message for the board, or something for the screen. */
    private sealed interface Happening {
        record Told(Msg msg) implements Happening {}

        record OnTerminal(Event event) implements Happening {}

        record Failed(Throwable fault) implements Happening {}

        record Ended() implements Happening {}
    }

    /** So often the board is told that time went by where nothing else happens. */
    private static final Duration STEP = Duration.ofSeconds(5);

    private final Display display;
    private final Bench bench;
    private final boolean ascii;
    private final Supplier<Instant> keyClock;
    private final BlockingQueue<Happening> queue = new LinkedBlockingQueue<>();
    private Board board;
    private boolean over;
    /** The form as it stands in the file. */
    private Map<String, String> kept = Map.of();

    /** What was painted last, before it was written in plain letters. */
    private Optional<Grid> painted = Optional.empty();

    /**
     * @param address where the shop is, or will be
     * @param at the moment to see a demonstration from
     * @param processors how many the machine has
     * @param access whether anything may be changed from here
     */
    Session(
            Display display,
            Address address,
            boolean demonstration,
            Optional<LocalDateTime> at,
            boolean ascii,
            int processors,
            Access access) {
        this(display, address, demonstration, Bench.Means.usual(at, processors, access), ascii, Session::monotonic);
    }

    /**
     * @param keyClock says when a key was pressed; it only goes forward
     */
    Session(
            Display display,
            Address address,
            boolean demonstration,
            Bench.Means means,
            boolean ascii,
            Supplier<Instant> keyClock) {
        this.display = display;
        this.keyClock = keyClock;
        this.ascii = ascii;
        Board starting = Board.starting(ZoneId.systemDefault());
        this.board = means.looksOnly() ? starting.lookingOnly() : starting;
        this.bench = new Bench(address, means, msg -> queue.add(new Happening.Told(msg)));
        if (demonstration) {
            bench.openDemonstration();
        } else {
            bench.open();
        }
    }

    /** Runs until somebody leaves. */
    void run() throws IOException {
        display.listen(event -> queue.add(new Happening.OnTerminal(event)));
        bench.start();
        try {
            paint();
            while (!over) {
                Happening next = queue.poll(STEP.toMillis(), TimeUnit.MILLISECONDS);
                if (next != null) handle(next);
                while (!over && !queue.isEmpty()) {
                    handle(queue.take());
                }
                if (!over) update(new Msg.TimeWent(keyClock.get()));
                if (!over) paint();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            keepForm();
            bench.close();
        }
    }

    /** A thread of the program has failed; the session ends with that. May be called from any thread. */
    void fail(Throwable fault) {
        queue.add(new Happening.Failed(fault));
    }

    /** Ends the session soon. May be called from any thread. */
    void end() {
        queue.add(new Happening.Ended());
    }

    private void handle(Happening happening) {
        if (happening instanceof Happening.Told told) {
            kept = told.msg() instanceof Msg.FormKept form ? form.words() : kept;
            update(told.msg());
        } else if (happening instanceof Happening.Failed failed) {
            throw new IllegalStateException("a thread of the program failed", failed.fault());
        } else if (happening instanceof Happening.Ended) {
            over = true;
        } else {
            handle(((Happening.OnTerminal) happening).event());
        }
    }

    private void handle(Event event) {
        if (event instanceof Event.Pressed pressed) {
            update(new Msg.Pressed(pressed.key(), keyClock.get()));
        } else if (event instanceof Event.Pointed pointed) {
            point(pointed);
        } else if (event instanceof Event.Gone) {
            over = true;
        }
    }

    /** What was pointed at is what was seen: on a board that has moved on since, it counts where the same row still stands there. */
    private void point(Event.Pointed pointed) {
        if (painted.isEmpty() || !painted.get().size().region().contains(pointed.column(), pointed.row())) {
            return;
        }
        Grid seen = painted.get();
        Grid now = View.of(board, seen.size());
        Optional<Spot.Meaning> meant = seen.meaningAt(pointed.column(), pointed.row());
        boolean stillStands = seen.lines().get(pointed.row()).equals(now.lines().get(pointed.row()))
                && meant.equals(now.meaningAt(pointed.column(), pointed.row()));
        if (stillStands) {
            meant.map(Press.class::cast).ifPresent(press -> update(new Msg.Pointed(press.keys(), keyClock.get())));
        }
    }

    /** A moment on a clock that only goes forward, for telling a bounce from a second press. */
    private static Instant monotonic() {
        return Instant.EPOCH.plus(Duration.ofNanos(System.nanoTime()));
    }

    private void update(Msg msg) {
        Board before = board;
        Turn turn = Update.of(before, msg);
        board = turn.board();
        if (!kept.isEmpty() && KeptForm.of(board).isEmpty()) {
            keepForm();
        }
        turn.effects().forEach(effect -> perform(effect, before));
    }

    /** @param before the board upon which somebody pressed the key that this comes of */
    private void perform(Effect effect, Board before) {
        if (effect instanceof Effect.Quit) {
            over = true;
        } else if (effect instanceof Effect.Repaint) {
            display.repaint();
        } else if (effect instanceof Effect.StandAside) {
            standAside();
        } else {
            bench.perform(effect, board.seen().isPresent() ? board.who() : "", before.decidingOn());
        }
    }

    private void paint() throws IOException {
        if (!over) {
            Grid grid = View.of(board, display.size());
            display.show(ascii ? grid.toAscii() : grid);
            painted = Optional.of(grid);
        }
    }

    /** The form that would be lost is kept for the next start; one that is taken in or dropped is not. */
    private void keepForm() {
        Map<String, String> form = KeptForm.of(board);
        if (!form.equals(kept)) {
            kept = form;
            bench.keep(form);
        }
    }

    private void standAside() {
        try {
            display.standAside();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
