package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import org.shedboard.app.command.PackTerms;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.files.DayFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.KeptPromises;
import org.shedboard.pack.chance.MeanCost;

/**
 * Prints how many promises are kept by the plan of {@code pack --against-risk}, and by the usual one, on drawn days that neither was
 * chosen or judged by. Run by hand: the seconds of one search, then day files, which get the spreads of the shop's catalogue. One
 * thread; each plan of a line has had all that its kind of search takes, the usual one that long and the other twice.
 */
public final class PrudentGain {
    private static final int DAYS = 4000;
    private static final long SEED = 5;
    private static final long UNSEEN = 1005;

    private PrudentGain() {}

    public static void main(String[] arguments) throws IOException {
        long milliseconds = (long) (1000 * Double.parseDouble(arguments[0]));
        for (int index = 1; index < arguments.length; index++) {
            Path file = Path.of(arguments[index]);
            Problem problem = Unsure.of(DayFile.read(Files.readString(file)).expectValue());
            print(file.getFileName().toString(), problem, SearchLimit.ofTime(Duration.ofMillis(milliseconds)));
        }
    }

    private static void print(String name, Problem problem, SearchLimit limit) {
        PackTerms terms = new PackTerms(limit, SEED, 1, true);
        SearchRun search = new SearchRun(problem, limit, SEED, 1, running -> {});
        Plan usual = search.run();
        PrudentRun.Outcome outcome = new PrudentRun(problem, terms, tries -> {}).run(usual, search.found());
        SearchRun longer = new SearchRun(problem, twice(limit), SEED, 1, running -> {});
        KeptPromises kept = KeptPromises.of(problem, usual, outcome.plan(), DAYS, UNSEEN);
        KeptPromises asLong = KeptPromises.of(problem, usual, longer.run(), DAYS, UNSEEN);
        System.out.printf(
                Locale.ROOT,
                "%s: %d machines, %.3f promises kept, %+.3f against risk, error %.3f, %+.3f as usual for as long; "
                        + "mean cost %.0f and %.0f, middle %d and %d%s%n",
                name,
                problem.jobs().size(),
                kept.one(),
                kept.more(),
                kept.error(),
                asLong.more(),
                MeanCost.of(problem, usual, DAYS, UNSEEN).points(),
                MeanCost.of(problem, outcome.plan(), DAYS, UNSEEN).points(),
                usual.cost(),
                outcome.plan().cost(),
                outcome.kept().isMore() ? "" : " (the usual plan)");
    }

    private static SearchLimit twice(SearchLimit limit) {
        return SearchLimit.ofTime(limit.time().multipliedBy(2));
    }
}
