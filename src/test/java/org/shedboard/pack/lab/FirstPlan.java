package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.shedboard.files.DayFile;
import org.shedboard.pack.Problem;
import org.shedboard.pack.search.Packing;

/** The first plan of a process that has done nothing but read the file; each turn is a process of its own. */
final class FirstPlan implements Section {
    private static final double MOST_MILLISECONDS = 50;
    private static final long SEED = 1;

    /** What one process says: how long the plan took, and the calibration loop's pace in it. */
    private record Said(double milliseconds, double millionSteps) {
        static Said parse(String text) {
            String[] words = text.split(" ");
            return new Said(Double.parseDouble(words[0]), Double.parseDouble(words[1]));
        }
    }

    /** Such a process: one day file, named. */
    public static void main(String[] arguments) throws IOException {
        Problem problem = DayFile.read(Files.readString(Path.of(arguments[0]))).expectValue();
        long begun = System.nanoTime();
        Packing.of(problem, SEED).plan();
        long taken = System.nanoTime() - begun;
        System.out.printf(Locale.ROOT, "%.2f %.0f%n", taken / 1e6, Calibration.millionSteps());
    }

    @Override
    public String name() {
        return "first";
    }

    @Override
    public String what() {
        return "first plan, cold JVM, after the file is read";
    }

    @Override
    public String target() {
        return "≤ 50 ms at 40 machines";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws IOException, InterruptedException {
        Said last = null;
        for (DayFolder.Day day : TimedDays.of(lab)) {
            last = best(lab.days.fileOf(day));
            rows.add(
                    "%-14s %2d machines  %6.1f ms  loop %.0f M/s",
                    day.name(), day.machines(), last.milliseconds, last.millionSteps);
        }
        return Reached.of(
                Verdict.of(last.milliseconds <= MOST_MILLISECONDS),
                "%.1f ms (best of %d processes, loop %.0f M/s)",
                last.milliseconds,
                Calibration.TURNS,
                last.millionSteps);
    }

    private static Said best(Path file) throws IOException, InterruptedException {
        Said best = fresh(file);
        for (int turn = 1; turn < Calibration.TURNS; turn++) {
            Said said = fresh(file);
            best = said.milliseconds < best.milliseconds ? said : best;
        }
        return best;
    }

    private static Said fresh(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        FirstPlan.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the fresh process failed on " + file);
        }
        return Said.parse(said.strip());
    }
}
