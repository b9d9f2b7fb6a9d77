package org.shedboard.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.shedboard.app.command.BenchRow;
import org.shedboard.app.command.BenchTerms;
import org.shedboard.files.Reading;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.words.Words;

/** Packs every problem of a folder, once for each seed. */
final class BenchRun {
    private final BenchFolder folder;
    private final BenchTerms terms;
    private final Progress progress;

    BenchRun(BenchFolder folder, BenchTerms terms, Progress progress) {
        this.folder = folder;
        this.terms = terms;
        this.progress = progress;
    }

    /** @param each told of each row as it comes */
    List<BenchRow> run(Consumer<BenchRow> each) {
        List<BenchRow> rows = new ArrayList<>();
        int number = 0;
        for (BenchFolder.Case one : folder.cases()) {
            number++;
            Reading<Problem> reading = one.read().get();
            if (reading.value().isEmpty()) {
                folder.skip(one.file(), reading.faults());
            } else {
                BenchRow row = pack(one, reading.value().get(), number);
                rows.add(row);
                progress.wipe();
                each.accept(row);
            }
        }
        progress.end();
        return rows;
    }

    private BenchRow pack(BenchFolder.Case one, Problem problem, int number) {
        List<Plan> plans = new ArrayList<>();
        long tries = 0;
        long nanoseconds = 0;
        for (int seed = 1; seed <= terms.seeds(); seed++) {
            int now = seed;
            SearchRun search = new SearchRun(
                    problem,
                    terms.limit(),
                    seed,
                    terms.threads(),
                    running -> progress.show(() -> line(one, number, now, running)));
            plans.add(search.run());
            tries += search.tries();
            nanoseconds += search.taken().toNanos();
        }
        return BenchRow.of(one.name(), problem, plans, folder.knownOf(one, problem), tries, nanoseconds);
    }

    private String line(BenchFolder.Case one, int number, int seed, SearchRun search) {
        return Words.say(
                "command.bench.progress",
                number,
                folder.cases().size(),
                one.name(),
                seed,
                search.seen().map(Plan::cost).orElse(0L),
                search.tries());
    }
}
