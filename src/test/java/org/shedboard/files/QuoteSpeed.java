package org.shedboard.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.Chances;
import org.shedboard.pack.chance.Insertion;
import org.shedboard.pack.chance.MeanCost;
import org.shedboard.pack.search.Packer;

/**
 * Prints how long a quote for one more machine takes, warm and on one thread: fitting the last machine of a day file into the plan of
 * the others, and the chances of that plan. Beside it stand the mean costs of that plan and of the posted one followed. Run by hand
 * with day files as arguments; the fastest of several turns counts.
 */
public final class QuoteSpeed {
    private static final int TURNS = 15;
    private static final int DRAWS = 1000;
    private static final long UNSEEN = 99;

    private QuoteSpeed() {}

    public static void main(String[] files) throws IOException {
        for (String file : files) {
            Problem problem = Unsure.of(
                    DayFile.read(Files.readString(Path.of(file))).value().orElseThrow());
            List<Problem.Job> jobs = problem.jobs();
            Problem others = problem.withJobs(jobs.subList(0, jobs.size() - 1));
            print(file, problem.withPosted(Packer.pack(others, Search.of(1, 2000))), jobs.get(jobs.size() - 1));
        }
    }

    private static void print(String file, Problem problem, Problem.Job last) {
        long fitting = Long.MAX_VALUE;
        long chances = Long.MAX_VALUE;
        Optional<Plan> plan = Optional.empty();
        for (int turn = 0; turn < TURNS; turn++) {
            long from = System.nanoTime();
            plan = Insertion.of(problem, last.id());
            long fitted = System.nanoTime();
            Chances.of(problem, plan.orElseThrow(), DRAWS, 1);
            fitting = Math.min(fitting, fitted - from);
            chances = Math.min(chances, System.nanoTime() - fitted);
        }
        System.out.printf(
                "%s: %d machines, fitted in %.1f ms, chances in %.1f ms; mean cost %.0f, followed %.0f%n",
                Path.of(file).getFileName(),
                problem.jobs().size(),
                fitting / 1e6,
                chances / 1e6,
                MeanCost.of(problem, plan.orElseThrow(), DRAWS, UNSEEN).points(),
                MeanCost.of(problem, Packer.follow(problem), DRAWS, UNSEEN).points());
    }
}
