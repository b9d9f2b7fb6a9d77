package org.shedboard.app;

import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.shedboard.grid.Size;
import org.shedboard.look.Scheme;
import org.shedboard.store.Address;
import org.shedboard.term.CountedTerminal;
import org.shedboard.term.Display;
import org.shedboard.term.Palette;

/**
 * Prints how long it takes from the first byte of a key to the last byte of the picture it leads to: the real session over real records
 * with 40 visits, in a window of 200 by 60, while better plans are looked for beside it. Run by hand, after a warm-up; an argument says
 * how many keys, 2,500 without. A picture that follows by itself within the silence waited for counts as the key's own, so the figures
 * are rather too long than too short. Escape is told apart: it waits for the rest of a sequence that may yet come.
 */
public final class KeySpeed {
    private static final Size SIZE = new Size(200, 60);
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 12, 9, 40);
    private static final int VISITS = 40;
    private static final int WARM_UP = 600;
    private static final int PROCESSORS = 2;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final String ESCAPE = "\033";
    private static final String DOWN = "\033[B";
    private static final String UP = "\033[A";
    private static final long SILENCE_NANOSECONDS = Duration.ofMillis(20).toNanos();
    private static final long LONGEST_NANOSECONDS = Duration.ofSeconds(5).toNanos();
    /** Begun and ended on the board, so that it can be gone through again and again; each key changes what is seen. */
    private static final List<String> ROUND = List.of(
            DOWN, DOWN, DOWN, UP, DOWN, "\r", DOWN, UP, ESCAPE, ">", ">", "<", "<", "+", "-", "?", DOWN, UP, ESCAPE,
            "\t", DOWN, DOWN, "/", "m", "a", "r", "\177", ESCAPE, "\t", DOWN, "\t", "t", "q", "u", "e", "\177", ESCAPE,
            UP, UP, UP);

    private final PipedOutputStream keyboard = new PipedOutputStream();
    private final AtomicLong presses = new AtomicLong();
    private final CountedTerminal terminal;
    /** The thread that answers keys; its own work a key is the same however busy the machine is. */
    private long painter;

    private KeySpeed() throws IOException {
        terminal = CountedTerminal.of(SIZE, new PipedInputStream(keyboard));
    }

    public static void main(String[] arguments) throws Exception {
        int keys = arguments.length == 0 ? 2_500 : Integer.parseInt(arguments[0]);
        Path home = Files.createTempDirectory("key-speed");
        int visits = crowd(Demonstration.ready(home));
        System.out.println("the shop is crowded");
        new KeySpeed().run(home, visits, keys);
    }

    private void run(Path home, int visits, int keys) throws Exception {
        Display display = new Display(terminal, Palette.fixed(Scheme.DARK));
        Bench.Means means = Bench.Means.usual(Optional.of(MORNING), PROCESSORS);
        Session session = new Session(
                display,
                new Address.InHome(home),
                true,
                means,
                false,
                () -> Instant.EPOCH.plusSeconds(presses.incrementAndGet()));
        Thread running = new Thread(() -> run(session), "session");
        running.start();
        painter = running.getId();
        awaitSilence(Duration.ofSeconds(2).toNanos());
        try {
            measure(WARM_UP);
            long before = THREADS.getThreadCpuTime(painter);
            Map<String, List<Long>> taken = measure(keys);
            long worked = THREADS.getThreadCpuTime(painter) - before;
            print(visits, taken);
            System.out.printf(Locale.ROOT, "the painting thread worked %.1f ms a key%n", worked / 1e6 / count(taken));
        } finally {
            session.end();
        }
        running.join();
        display.close();
    }

    /** Books quads until there are as many visits as wanted; says how many there are. */
    private static int crowd(Address place) {
        try (Workshop workshop = Workshop.open(place, "crowd", Optional.of(MORNING))) {
            int booked = 0;
            while (workshop.day().visits().size() < VISITS) {
                Quads.book(workshop, MORNING, booked++);
            }
            return workshop.day().visits().size();
        }
    }

    private static void run(Session session) {
        try {
            session.run();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private Map<String, List<Long>> measure(int keys) throws IOException {
        Map<String, List<Long>> taken = new LinkedHashMap<>();
        for (int i = 0; i < keys || i % ROUND.size() != 0; i++) {
            String key = ROUND.get(i % ROUND.size());
            taken.computeIfAbsent(name(key), each -> new ArrayList<>()).add(press(key, i));
        }
        return taken;
    }

    /** Nanoseconds from the key to the last byte. */
    private long press(String key, int index) throws IOException {
        terminal.sent();
        long pressed = System.nanoTime();
        keyboard.write(key.getBytes(StandardCharsets.US_ASCII));
        keyboard.flush();
        while (terminal.lastSentAt() < pressed) {
            if (System.nanoTime() - pressed > LONGEST_NANOSECONDS) {
                throw new IllegalStateException(
                        "nothing was painted for key " + index % ROUND.size() + ", " + name(key));
            }
            LockSupport.parkNanos(100_000);
        }
        awaitSilence(SILENCE_NANOSECONDS);
        return terminal.lastSentAt() - pressed;
    }

    private void awaitSilence(long nanoseconds) {
        while (System.nanoTime() - terminal.lastSentAt() < nanoseconds) {
            LockSupport.parkNanos(500_000);
        }
    }

    private static int count(Map<String, List<Long>> taken) {
        return taken.values().stream().mapToInt(List::size).sum();
    }

    private static String name(String key) {
        return switch (key) {
            case ESCAPE -> "Escape";
            case DOWN -> "Down";
            case UP -> "Up";
            case "\r" -> "Enter";
            case "\t" -> "Tab";
            case "\177" -> "Backspace";
            default -> key;
        };
    }

    private static void print(int visits, Map<String, List<Long>> taken) {
        System.out.printf(Locale.ROOT, "%d visits, %d columns, %d rows%n", visits, SIZE.columns(), SIZE.rows());
        taken.forEach(KeySpeed::print);
        print("all", taken.values().stream().flatMap(List::stream).toList());
        print(
                "all but Escape",
                taken.entrySet().stream()
                        .filter(each -> !each.getKey().equals("Escape"))
                        .flatMap(each -> each.getValue().stream())
                        .toList());
    }

    private static void print(String name, List<Long> nanoseconds) {
        List<Long> sorted =
                nanoseconds.stream().sorted(Comparator.naturalOrder()).toList();
        int count = sorted.size();
        System.out.printf(
                Locale.ROOT,
                "%-14s %5d keys: median %6.1f ms, 99th percentile %6.1f ms, longest %6.1f ms%n",
                name,
                count,
                sorted.get(count / 2) / 1e6,
                sorted.get(Math.min(count - 1, count * 99 / 100)) / 1e6,
                sorted.get(count - 1) / 1e6);
    }
}
