package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.shedboard.files.DayFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * The engine and the constraint solver on the same days, each on two threads.
 *
 * <pre>
 *   SideBySide equal 1,10,60 DAY.json...     both for as many seconds, one after the other
 *   SideBySide hint 10,60 DAY.json...        the engine for the first, then the solver for the second from the engine's plan
 * </pre>
 *
 * A cost is written as {@code unplaced/cost}; the last column is the engine's cost over the solver's where as many are unplaced.
 */
public final class SideBySide {
    private static final int THREADS = 2;
    private static final long SEED = 1;

    private final TimedPacking engine;

    private SideBySide(TimedPacking engine) {
        this.engine = engine;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        double[] seconds = Arrays.stream(arguments[1].split(","))
                .mapToDouble(Double::parseDouble)
                .toArray();
        List<String> files = Arrays.asList(arguments).subList(2, arguments.length);
        try (TimedPacking engine = new TimedPacking(THREADS)) {
            SideBySide both = new SideBySide(engine);
            for (String file : files) {
                if (arguments[0].equals("hint")) {
                    both.hint(Path.of(file), seconds[0], seconds[1]);
                } else {
                    both.equal(Path.of(file), seconds);
                }
            }
        }
    }

    private void equal(Path file, double[] seconds) throws IOException, InterruptedException {
        Problem problem = DayFile.read(Files.readString(file)).expectValue();
        for (double time : seconds) {
            Plan plan = engine.pack(problem, SEED, time);
            print(file, time, plan, ExactPacker.pack(problem, ExactLimit.of(time, THREADS)));
        }
    }

    private void hint(Path file, double engineSeconds, double solverSeconds) throws IOException, InterruptedException {
        Problem problem = DayFile.read(Files.readString(file)).expectValue();
        Plan plan = engine.pack(problem, SEED, engineSeconds);
        ExactLimit limit = ExactLimit.of(solverSeconds, THREADS).withHint(plan);
        print(file, engineSeconds, plan, ExactPacker.pack(problem, limit));
    }

    private static void print(Path file, double seconds, Plan plan, ExactAnswer answer) {
        String solver = answer.plan().map(SideBySide::cost).orElse("-");
        System.out.printf(
                Locale.ROOT,
                "%-36s %5.0f s  engine %-12s solver %-12s %-8s bound %-9d ratio %s%n",
                file.getFileName(),
                seconds,
                cost(plan),
                solver,
                answer.word(),
                answer.bound(),
                answer.plan().map(other -> ratio(plan, other)).orElse("-"));
    }

    private static String cost(Plan plan) {
        return plan.unplaced().size() + "/" + plan.cost();
    }

    private static String ratio(Plan plan, Plan other) {
        return plan.unplaced().size() == other.unplaced().size()
                ? String.format(Locale.ROOT, "%.4f", (double) plan.cost() / Math.max(1, other.cost()))
                : "-";
    }
}
