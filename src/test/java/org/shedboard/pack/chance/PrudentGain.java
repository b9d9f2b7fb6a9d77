package org.shedboard.pack.chance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shedboard.files.DayFile;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;
import org.shedboard.pack.search.Packer;

/**
 * Prints how many promises {@link Prudent} keeps, and {@link Packer} in as many tries, on drawn days that neither has seen. Run by
 * hand: the number of tries, then day files, which get the spreads of the shop's catalogue.
 */
public final class PrudentGain {
    private static final int DAYS = 4000;
    private static final long SEED = 5;
    private static final long UNSEEN = 1005;

    private PrudentGain() {}

    public static void main(String[] arguments) throws IOException {
        Search search = Search.of(SEED, Long.parseLong(arguments[0]));
        for (int index = 1; index < arguments.length; index++) {
            String text = Files.readString(Path.of(arguments[index]));
            Problem problem = Unsure.of(DayFile.read(text).value().orElseThrow());
            print(
                    Path.of(arguments[index]).getFileName().toString(),
                    problem,
                    PackedPlans.checked(problem, Packer.pack(problem, search)),
                    PackedPlans.checked(problem, Prudent.pack(problem, search)));
        }
    }

    private static void print(String name, Problem problem, Plan plain, Plan prudent) {
        int[] before = kept(problem, plain);
        int[] after = kept(problem, prudent);
        double sum = 0;
        double more = 0;
        double squares = 0;
        for (int day = 0; day < DAYS; day++) {
            int difference = after[day] - before[day];
            sum += before[day];
            more += difference;
            squares += difference * difference;
        }
        double mean = more / DAYS;
        System.out.printf(
                "%s: %d machines, %.3f promises kept, %+.3f +- %.3f prudently; mean cost %.0f and %.0f, middle %d and %d%n",
                name,
                problem.jobs().size(),
                sum / DAYS,
                mean,
                Math.sqrt((squares / DAYS - mean * mean) / DAYS),
                MeanCost.of(problem, plain, DAYS, UNSEEN).points(),
                MeanCost.of(problem, prudent, DAYS, UNSEEN).points(),
                plain.cost(),
                prudent.cost());
    }

    /** How many promises each of the days keeps. */
    private static int[] kept(Problem problem, Plan plan) {
        FlatProblem flat = new FlatProblem(problem);
        PlanReading reading = new PlanReading(flat, plan);
        Replay replay = new Replay(flat, reading, new DrawnMinutes(flat, UNSEEN));
        int[] kept = new int[DAYS];
        for (int day = 0; day < DAYS; day++) {
            replay.run(day);
            for (int job = 0; job < flat.jobs; job++) {
                boolean placed = reading.isPlaced[flat.firstTaskOfJob(job)];
                int promise = flat.job(job).promise().orElse(-1);
                kept[day] += placed && replay.finishOf(job) <= promise ? 1 : 0;
            }
        }
        return kept;
    }
}
