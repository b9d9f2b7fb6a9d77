package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.look.Scheme;
import org.shedboard.store.Address;
import org.shedboard.term.Display;
import org.shedboard.term.Palette;
import org.shedboard.testing.TestTerminal;

/** The real session over real records, on a terminal in memory: keys in, what the window shows out. */
@Timeout(120)
class SessionTest {
    private static final long PATIENCE_NANOSECONDS = TimeUnit.SECONDS.toNanos(30);
    private static final long BETWEEN_LOOKS_NANOSECONDS = TimeUnit.MILLISECONDS.toNanos(5);
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rw-------");
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 12, 9, 40);

    @TempDir
    private static Path made;

    @TempDir
    private Path home;

    private final AtomicLong presses = new AtomicLong();
    private TestTerminal terminal;
    private Thread running;

    @BeforeAll
    static void make() {
        Demonstration.ready(made);
    }

    @BeforeEach
    void start() throws IOException {
        try (Stream<Path> files = Files.walk(made)) {
            files.forEach(file -> copy(file, home.resolve(made.relativize(file))));
        }
        run();
    }

    @AfterEach
    void end() throws InterruptedException {
        terminal.press(KeyType.EOF);
        running.join(TimeUnit.NANOSECONDS.toMillis(PATIENCE_NANOSECONDS));
        assertFalse(running.isAlive(), "the session goes on without a terminal");
    }

    @Test
    void the_board_shows_the_morning_of_the_demonstration() {
        await("Tussock Flat Machinery   4 here");
        await("9 Jory, 51m left");
        await("Tue 12 May  09:4");
    }

    @Test
    void a_machine_taken_in_is_there_when_the_program_is_started_again() throws Exception {
        await("Tussock Flat Machinery");
        takeIn();
        leave();
        run();
        await("1 Marrowby, Dr");
        terminal.type("1");
        await("▶   1 Marrowby, Dr");
    }

    @Test
    void a_form_half_filled_in_when_the_line_is_cut_is_offered_at_the_next_start_and_gone_once_taken_in()
            throws Exception {
        await("Tussock Flat Machinery");
        terminal.type("t");
        await("Take a machine in");
        terminal.type("marrowby burr");
        await("▶ Marrowby, Dry Gully, Quarrick Burr 520");
        terminal.press(KeyType.Enter);
        await("Work for this machine");
        terminal.type("m");
        await("✓ Minor service");
        terminal.press(KeyType.EOF);
        running.join(TimeUnit.NANOSECONDS.toMillis(PATIENCE_NANOSECONDS));
        Path kept = new DraftFile(Homes.demonstration(home)).file();
        assertEquals(OWNER_ONLY, Files.getPosixFilePermissions(kept));
        run();
        await("A machine was half taken in when this ended last");
        terminal.type("t1");
        await("✓ Minor service");
        terminal.press(KeyType.Enter);
        await("Mud");
        terminal.type("2");
        await("as the day is posted:");
        terminal.press(KeyType.Enter);
        await("1 (Marrowby, Dry Gully) is taken in.");
        leave();
        assertFalse(Files.exists(kept), "the form is kept although the machine is here");
    }

    @Test
    void keys_pressed_while_the_screen_is_not_painted_yet_all_count() {
        await("Tussock Flat Machinery");
        terminal.type("tmarrowby burr");
        terminal.press(KeyType.Enter);
        terminal.type("m");
        terminal.press(KeyType.Enter);
        await("▶Mud");
    }

    @Test
    void a_storm_of_window_sizes_ends_in_the_last_one() {
        await("Tussock Flat Machinery");
        for (int i = 0; i < 200; i++) {
            terminal.resize(20 + i % 150, 5 + i % 60);
        }
        terminal.resize(100, 30);
        await("Tussock Flat Machinery");
        await("Needs you");
    }

    private void takeIn() {
        terminal.type("t");
        await("Take a machine in");
        terminal.type("marrowby burr");
        await("▶ Marrowby, Dry Gully, Quarrick Burr 520");
        terminal.press(KeyType.Enter);
        await("Work for this machine");
        terminal.type("m");
        await("✓ Minor service");
        terminal.press(KeyType.Enter);
        terminal.type("2");
        await("as the day is posted:");
        terminal.press(KeyType.Enter);
        await("1 (Marrowby, Dry Gully) is taken in.");
        await(" saved");
    }

    @Test
    void a_person_goes_through_a_task_on_the_number_pad() {
        await("Tussock Flat Machinery");
        terminal.type("n");
        await("Whose next machine?");
        terminal.type("1");
        await("Marnie: YOUR NEXT MACHINE");
        String task = textAfter("First: ");
        terminal.type("5");
        await("Now: " + task);
        terminal.type("6");
        await("is finished.");
        await("First: ");
        terminal.type("0");
        await("Tussock Flat Machinery");
    }

    /** What was typed before is in the act, and needs no typing again. */
    @Test
    void who_comes_second_is_told_who_was_first_and_does_it_all_the_same_by_one_key() {
        await("Tussock Flat Machinery");
        terminal.type("9p");
        await("When is 9 (Marrowby, Dry Gully) promised?");
        IntStream.range(0, 20).forEach(i -> terminal.press(KeyType.Backspace));
        terminal.type("1530");
        terminal.press(KeyType.Enter);
        await("Why");
        terminal.type("belt not in");
        terminal.press(KeyType.Enter);
        await("Whose wish");
        promiseElsewhere();
        terminal.type("2");
        await("Save yours all the same?");
        await("Tobin was first, at 09:4");
        terminal.type("1");
        await("The promise for 9 (Marrowby, Dry Gully) is recorded.");
        await(" saved");
    }

    private void promiseElsewhere() {
        Address there = new Address.InHome(Homes.demonstration(home));
        try (Workshop other = Workshop.open(there, "board", Optional.of(MORNING))) {
            String visit = other.day().findByTag(9).orElseThrow().id();
            Instant at = other.now().plus(Duration.ofHours(6));
            Quads.expectDone(other.carryOut(new Act.SayPromise(visit, at, "P2", "Marrowby", "tyre", true), "P2"));
        }
    }

    @Test
    void a_point_is_marked_and_the_next_one_shows() {
        await("Tussock Flat Machinery");
        terminal.type("n2");
        await("Point 10 of 26");
        terminal.type("1");
        await("Point 11 of 26");
        terminal.type("7");
        await("recorded as good");
    }

    @Test
    void the_screen_follows_the_window() {
        await("Tussock Flat Machinery");
        terminal.resize(120, 36);
        await("Light hoist 900 kg");
        terminal.resize(60, 20);
        await("This screen needs 80 columns and 24 rows and has 60 and");
        terminal.resize(50, 20);
        await("The screen has 50 columns and 20 rows");
        terminal.resize(80, 24);
        await("Min/safe");
    }

    @Test
    void the_help_of_the_board_says_its_keys() {
        await("Tussock Flat Machinery");
        terminal.type("?");
        await("Take a machine in, or book one");
        terminal.press(KeyType.Escape);
        await("Needs you");
    }

    @Test
    void q_leaves() throws InterruptedException {
        await("Tussock Flat Machinery");
        leave();
    }

    private void run() throws IOException {
        terminal = new TestTerminal(80, 24);
        Display display = new Display(terminal, Palette.fixed(Scheme.DARK));
        Session session = new Session(
                display,
                new Address.InHome(home),
                true,
                Bench.Means.usual(Optional.of(MORNING), 2),
                false,
                () -> Instant.EPOCH.plusSeconds(presses.incrementAndGet()));
        running = new Thread(() -> run(session), "session under test");
        running.start();
    }

    private static void run(Session session) {
        try {
            session.run();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void leave() throws InterruptedException {
        terminal.type("q");
        running.join(TimeUnit.NANOSECONDS.toMillis(PATIENCE_NANOSECONDS));
        assertTrue(!running.isAlive(), "q does not leave");
    }

    private void await(String text) {
        long end = System.nanoTime() + PATIENCE_NANOSECONDS;
        while (screen().stream().noneMatch(row -> row.contains(text))) {
            if (System.nanoTime() > end || !running.isAlive()) {
                throw new AssertionError("waited in vain for " + text + "; the screen is\n"
                        + screen().stream().collect(Collectors.joining("\n")));
            }
            LockSupport.parkNanos(BETWEEN_LOOKS_NANOSECONDS);
        }
    }

    /**
     * What stands behind this at the beginning of a row, once there is such a row and it is painted whole: looked at twice, it is the same. A
     * question over the screen may have the same in the middle of a row.
     */
    private String textAfter(String text) {
        long end = System.nanoTime() + PATIENCE_NANOSECONDS;
        Optional<String> before = Optional.empty();
        while (System.nanoTime() < end) {
            Optional<String> found = screen().stream()
                    .map(String::strip)
                    .filter(row -> row.startsWith(text))
                    .findFirst();
            if (found.isPresent() && found.equals(before)) {
                return found.get().substring(text.length()).strip();
            }
            before = found;
            LockSupport.parkNanos(BETWEEN_LOOKS_NANOSECONDS);
        }
        throw new AssertionError("no row begins with " + text);
    }

    private List<String> screen() {
        int rows = terminal.getTerminalSize().getRows();
        return IntStream.range(0, rows).mapToObj(terminal::row).toList();
    }

    private static void copy(Path from, Path to) {
        try {
            if (Files.isDirectory(from)) {
                Files.createDirectories(to);
            } else {
                Files.copy(from, to);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
