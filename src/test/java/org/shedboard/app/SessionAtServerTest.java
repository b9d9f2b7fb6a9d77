package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.look.Scheme;
import org.shedboard.store.Address;
import org.shedboard.store.Served;
import org.shedboard.term.Display;
import org.shedboard.term.Palette;
import org.shedboard.testing.TestTerminal;

/** Boards at two terminals that have joined a server, which comes and goes. */
@Timeout(120)
class SessionAtServerTest {
    private static final long PATIENCE_NANOSECONDS = TimeUnit.SECONDS.toNanos(40);
    private static final long BETWEEN_LOOKS_NANOSECONDS = TimeUnit.MILLISECONDS.toNanos(5);
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 12, 9, 40);
    private static final String NAME = "Tussock Flat Machinery";
    private static final String AWAY = "not connected";

    @TempDir
    private Path home;

    @TempDir
    private Path desk;

    @TempDir
    private Path bay;

    private Served served;
    private Seat atDesk;
    private Seat inBay;

    @BeforeEach
    void start() throws IOException {
        served = Served.at(Demonstration.ready(home).home());
        atDesk = new Seat(served.joined(desk));
        inBay = new Seat(served.joined(bay));
        atDesk.await(NAME);
        inBay.await(NAME);
    }

    @AfterEach
    void stop() throws InterruptedException {
        atDesk.leave();
        inBay.leave();
        served.close();
    }

    private void loseServer() {
        served.close();
        atDesk.await(AWAY);
        inBay.await(AWAY);
    }

    private void findServer() {
        served = served.again(Homes.demonstration(home));
    }

    @Test
    void a_change_at_one_terminal_is_on_the_screen_of_the_other() {
        atDesk.fillIn();
        atDesk.terminal.press(KeyType.Enter);
        atDesk.await("1 (Marrowby, Dry Gully) is taken in.");
        inBay.await("1 Marrowby, Dr");
    }

    @Test
    void without_its_server_a_board_says_so_and_keeps_the_last_view_and_what_was_typed() {
        inBay.fillIn();
        loseServer();
        atDesk.await("Shown as of 09:4");
        assertTrue(atDesk.shows(NAME));
        assertTrue(inBay.shows("as the day is posted:"));
        findServer();
        inBay.awaitGone(AWAY);
        atDesk.awaitGone(AWAY);
        inBay.terminal.press(KeyType.Enter);
        inBay.await("1 (Marrowby, Dry Gully) is taken in.");
        atDesk.await("1 Marrowby, Dr");
    }

    @Test
    void what_is_saved_while_the_server_is_started_again_is_saved_once() {
        inBay.fillIn();
        loseServer();
        inBay.terminal.press(KeyType.Enter);
        findServer();
        inBay.await("1 (Marrowby, Dry Gully) is taken in.");
        atDesk.await("1 Marrowby, Dr");
        assertFalse(atDesk.shows("2 Marrowby, Dr"));
    }

    private static boolean has(List<String> rows, String text) {
        return rows.stream().anyMatch(row -> row.contains(text));
    }

    /** That the server is away stands there before; what cannot be saved is told in its place. */
    @Test
    void a_form_that_cannot_be_saved_stays() {
        inBay.fillIn();
        loseServer();
        inBay.await("Shown as of");
        inBay.terminal.press(KeyType.Enter);
        inBay.awaitScreen(
                "that it is not saved",
                rows -> has(rows, "The records: no server answers") && !has(rows, "Shown as of"));
        assertTrue(inBay.shows("as the day is posted:"));
        findServer();
        inBay.awaitGone(AWAY);
        inBay.terminal.press(KeyType.Enter);
        inBay.await("1 (Marrowby, Dry Gully) is taken in.");
    }

    @Test
    void a_terminal_can_be_started_before_its_server() throws Exception {
        loseServer();
        inBay.leave();
        inBay = new Seat(served.joined(bay));
        inBay.await("The board opens by itself");
        findServer();
        inBay.await(NAME);
        inBay.awaitGone(AWAY);
    }

    @Test
    void of_two_that_take_the_same_machine_in_one_is_told_and_keeps_what_was_typed() {
        atDesk.fillIn();
        inBay.fillIn();
        atDesk.terminal.press(KeyType.Enter);
        atDesk.await("1 (Marrowby, Dry Gully) is taken in.");
        inBay.terminal.press(KeyType.Enter);
        inBay.await("Marrowby");
        inBay.await("is here already");
        assertTrue(inBay.shows("as the day is posted:"));
    }

    /** Somebody at a terminal. */
    private static final class Seat {
        private final AtomicLong presses = new AtomicLong();
        private final TestTerminal terminal = new TestTerminal(120, 36);
        private final Thread running;

        Seat(Address address) throws IOException {
            Session session = new Session(
                    new Display(terminal, Palette.fixed(Scheme.DARK)),
                    address,
                    false,
                    Bench.Means.usual(Optional.of(MORNING), 2),
                    false,
                    () -> Instant.EPOCH.plusSeconds(presses.incrementAndGet()));
            running = new Thread(() -> run(session), "session at " + address.home());
            running.start();
        }

        private static void run(Session session) {
            try {
                session.run();
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }

        /** The form for a machine, up to the last key. */
        void fillIn() {
            terminal.type("t");
            await("Take a machine in");
            terminal.type("marrowby burr");
            await("▶ Marrowby, Dry Gully, Quarrick Burr 520");
            terminal.press(KeyType.Enter);
            await("Work for this machine");
            terminal.type("m");
            await("✓ Minor service");
            terminal.press(KeyType.Enter);
            await("Mud");
            terminal.type("2");
            await("as the day is posted:");
        }

        void await(String text) {
            await(text, true);
        }

        void awaitGone(String text) {
            await(text, false);
        }

        private void await(String text, boolean isThere) {
            awaitScreen(text, rows -> has(rows, text) == isThere);
        }

        /** Looks at all rows at one time, again and again: one look after another may fall on either side of a painting. */
        void awaitScreen(String what, Predicate<List<String>> isSo) {
            long end = System.nanoTime() + PATIENCE_NANOSECONDS;
            while (!isSo.test(screen())) {
                if (System.nanoTime() > end || !running.isAlive()) {
                    throw new AssertionError(
                            "waited in vain for %s; the screen is%n%s".formatted(what, String.join("\n", screen())));
                }
                LockSupport.parkNanos(BETWEEN_LOOKS_NANOSECONDS);
            }
        }

        boolean shows(String text) {
            return has(screen(), text);
        }

        private List<String> screen() {
            return IntStream.range(0, terminal.getTerminalSize().getRows())
                    .mapToObj(terminal::row)
                    .toList();
        }

        void leave() throws InterruptedException {
            terminal.press(KeyType.EOF);
            running.join(TimeUnit.NANOSECONDS.toMillis(PATIENCE_NANOSECONDS));
            assertFalse(running.isAlive(), "the session goes on without a terminal");
        }
    }
}
