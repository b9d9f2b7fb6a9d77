package org.shedboard.pack;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.shedboard.files.DayFile;
import org.shedboard.pack.chance.Chances;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.search.Packer;
import org.shedboard.pack.search.Packing;
import org.shedboard.pack.search.Round;

/**
 * How fast the engine is, to be run by hand on a folder of day files; it prints one table. Every figure stands beside the pace of
 * a fixed loop measured right after it, so that two runs can be compared although the machine was busier in one of them.
 */
final class EngineBench {
    private static final int[] MACHINES = {6, 20, 40};
    private static final long WARM_NANOSECONDS = TimeUnit.SECONDS.toNanos(4);
    private static final long MEASURED_NANOSECONDS = TimeUnit.SECONDS.toNanos(4);
    private static final int COLD_STARTS = 5;
    private static final int STOPS = 200;
    private static final int LONGEST_BEFORE_STOP_MILLISECONDS = 30;
    private static final int DRAWS = 1000;
    private static final int REPLANNINGS = 300;
    private static final long TRIES_A_REPLANNING = 200;

    private EngineBench() {}

    /** @param arguments a folder of day files; or {@code first} and one file, to be timed in this young process */
    public static void main(String[] arguments) throws Exception {
        Locale.setDefault(Locale.ROOT);
        if (arguments.length == 2 && arguments[0].equals("first")) {
            timeFirstPlan(Path.of(arguments[1]));
            return;
        }
        if (arguments.length != 1) {
            throw new IllegalArgumentException("name a folder of day files");
        }
        List<Path> files = chosen(Path.of(arguments[0]));
        row("what", "figure", "loop, M/s");
        for (Path file : files) {
            measurePace(file);
        }
        for (Path file : files) {
            measureFirstPlan(file);
        }
        for (Path file : files) {
            measureStops(file);
            measureReplays(file);
        }
        measureHeap(files.get(0));
    }

    /** For each number of machines the file that comes nearest to it. */
    private static List<Path> chosen(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.list(folder)) {
            all = files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> DayFile.read(text(file)).value().isPresent())
                    .sorted()
                    .toList();
        }
        List<Path> chosen = new ArrayList<>();
        for (int machines : MACHINES) {
            all.stream()
                    .min(Comparator.comparingInt(
                            file -> Math.abs(problem(file).jobs().size() - machines)))
                    .ifPresent(chosen::add);
        }
        if (chosen.isEmpty()) {
            throw new IllegalArgumentException("no day file in " + folder);
        }
        return chosen;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new IllegalArgumentException(file + " cannot be read", unreadable);
        }
    }

    private static Problem problem(Path file) {
        return DayFile.read(text(file)).expectValue();
    }

    private static void row(String what, String figure, String loop) {
        System.out.printf("%-74s %20s %10s%n", what, figure, loop);
    }

    private static void row(Path file, String what, String figure) {
        int machines = problem(file).jobs().size();
        String name = "%s, %d machines (%s)".formatted(what, machines, file.getFileName());
        row(name, figure, "%.0f".formatted(loopsASecond() / 1e6));
    }

    /** Steps of a fixed loop a second, in this process, now. */
    private static double loopsASecond() {
        long steps = 60_000_000;
        long begun = System.nanoTime();
        long sum = 0;
        for (long step = 0; step < steps; step++) {
            sum += Chance.mix(step ^ sum);
        }
        long nanoseconds = System.nanoTime() - begun;
        return sum == 0 ? 0 : steps * 1e9 / nanoseconds;
    }

    /** Plans decoded a second on one thread, once the search is warm. */
    private static void measurePace(Path file) {
        Problem problem = problem(file);
        search(problem, 1, WARM_NANOSECONDS);
        long begun = System.nanoTime();
        long tries = search(problem, 2, MEASURED_NANOSECONDS);
        double seconds = (System.nanoTime() - begun) / 1e9;
        row(file, "plans decoded a second, warm", "%,.0f".formatted(tries / seconds));
    }

    /** Tries made in so long. */
    private static long search(Problem problem, long seed, long nanoseconds) {
        long end = System.nanoTime() + nanoseconds;
        AtomicLong tries = new AtomicLong();
        Packing packing = Packing.of(problem, seed);
        while (System.nanoTime() < end) {
            List<Round.Found> found = new ArrayList<>();
            for (Round round : packing.rounds()) {
                found.add(round.run(
                        () -> {
                            tries.lazySet(tries.getPlain() + 1);
                            return System.nanoTime() >= end;
                        },
                        better -> {}));
            }
            packing = packing.after(found);
        }
        return tries.get();
    }

    /** The first plan in a process that has done nothing but read the file: the best of some processes. */
    private static void measureFirstPlan(Path file) throws Exception {
        String best = "";
        for (int start = 0; start < COLD_STARTS; start++) {
            String said = runFresh(file);
            if (best.isEmpty() || milliseconds(said) < milliseconds(best)) {
                best = said;
            }
        }
        int machines = problem(file).jobs().size();
        row(
                "first plan of a cold process, %d machines (%s)".formatted(machines, file.getFileName()),
                best.split(" ")[0] + " ms",
                best.split(" ")[1]);
    }

    private static double milliseconds(String said) {
        return Double.parseDouble(said.split(" ")[0]);
    }

    private static String runFresh(Path file) throws Exception {
        Process process = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        EngineBench.class.getName(),
                        "first",
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the fresh process failed");
        }
        return said.strip();
    }

    private static void timeFirstPlan(Path file) {
        Problem problem = problem(file);
        long begun = System.nanoTime();
        Packer.first(problem);
        long taken = System.nanoTime() - begun;
        System.out.printf("%.1f %.0f%n", taken / 1e6, loopsASecond() / 1e6);
    }

    /** How long one stop took: by the clock, and of the search's own time on a processor, which no other process prolongs. */
    private record Stop(long wallNanoseconds, long ownNanoseconds) {}

    /** From the moment a round is told to stop until it has. */
    private static void measureStops(Path file) throws InterruptedException {
        Round round = Packing.of(problem(file), 1).rounds().get(0);
        Chance chance = Chance.of(1, "stops");
        List<Stop> stops = new ArrayList<>();
        for (int stop = 0; stop < STOPS; stop++) {
            stops.add(stopOnce(round, 1 + chance.below(LONGEST_BEFORE_STOP_MILLISECONDS)));
        }
        row(file, "longest of %d stops".formatted(STOPS), longest(stops, Stop::wallNanoseconds));
        row(file, "the same in its own time", longest(stops, Stop::ownNanoseconds));
    }

    private static String longest(List<Stop> stops, ToLongFunction<Stop> length) {
        return "%.2f ms".formatted(stops.stream().mapToLong(length).max().orElse(0) / 1e6);
    }

    private static Stop stopOnce(Round round, int afterMilliseconds) throws InterruptedException {
        ThreadMXBean times = ManagementFactory.getThreadMXBean();
        AtomicBoolean stop = new AtomicBoolean();
        AtomicLong stopped = new AtomicLong();
        AtomicLong ownAtEnd = new AtomicLong();
        Thread thread = new Thread(() -> {
            while (!stop.get()) {
                round.run(stop::get, better -> {});
            }
            stopped.set(System.nanoTime());
            ownAtEnd.set(times.getCurrentThreadCpuTime());
        });
        thread.start();
        Thread.sleep(afterMilliseconds);
        long own = times.getThreadCpuTime(thread.getId());
        long told = System.nanoTime();
        stop.set(true);
        thread.join();
        return new Stop(stopped.get() - told, ownAtEnd.get() - own);
    }

    /** The chances of a plan from so many replays, best of some. */
    private static void measureReplays(Path file) {
        Problem problem = problem(file);
        Plan plan = Packer.first(problem);
        long nanoseconds = best(20, () -> {
            long begun = System.nanoTime();
            Chances.of(problem, plan, DRAWS, 1);
            return System.nanoTime() - begun;
        });
        row(file, "%,d replays".formatted(DRAWS), "%.1f ms".formatted(nanoseconds / 1e6));
    }

    private static long best(int times, LongSupplier taken) {
        long best = Long.MAX_VALUE;
        for (int time = 0; time < times; time++) {
            best = Math.min(best, taken.getAsLong());
        }
        return best;
    }

    /** Whether anything is kept from one replanning to the next. */
    private static void measureHeap(Path file) {
        Problem problem = problem(file);
        Plan posted = Packer.first(problem);
        for (int replanning = 0; replanning <= REPLANNINGS; replanning++) {
            if (replanning % (REPLANNINGS / 3) == 0) {
                row(file, "heap after %d replannings".formatted(replanning), "%,d kB".formatted(heapKilobytes()));
            }
            Search search = Search.of(replanning, TRIES_A_REPLANNING);
            posted = Packer.pack(problem.withPosted(posted), search);
            Packer.follow(problem.withPosted(posted));
        }
    }

    private static long heapKilobytes() {
        Runtime runtime = Runtime.getRuntime();
        for (int time = 0; time < 3; time++) {
            runtime.gc();
        }
        return (runtime.totalMemory() - runtime.freeMemory()) / 1024;
    }
}
