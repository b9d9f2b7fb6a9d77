package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.shedboard.files.DayFile;
import org.shedboard.files.PlanFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;

/**
 * Proves the optima of days, and writes the proven plans into a folder.
 *
 * <pre>
 *   ProveDays SECONDS WORKERS TRIES FOLDER DAY.json...       TRIES of the engine first, for a start; 0 for none
 * </pre>
 */
public final class ProveDays {
    private static final long SEED = 1;

    private final ExactLimit limit;
    private final long tries;
    private final Path folder;

    private ProveDays(ExactLimit limit, long tries, Path folder) {
        this.limit = limit;
        this.tries = tries;
        this.folder = folder;
    }

    public static void main(String[] arguments) throws IOException {
        List<String> all = Arrays.asList(arguments);
        ExactLimit limit = ExactLimit.of(Double.parseDouble(all.get(0)), Integer.parseInt(all.get(1)));
        ProveDays days = new ProveDays(limit, Long.parseLong(all.get(2)), Files.createDirectories(Path.of(all.get(3))));
        for (String day : all.subList(4, all.size())) {
            days.prove(Path.of(day));
        }
    }

    private void prove(Path day) throws IOException {
        Problem problem = DayFile.read(Files.readString(day)).expectValue();
        long began = System.nanoTime();
        ExactAnswer answer = ExactPacker.pack(
                problem, tries > 0 ? limit.withHint(Packer.pack(problem, Search.of(SEED, tries))) : limit);
        System.out.printf(
                Locale.ROOT,
                "%-36s %-8s %8s bound %d in %.1f s%n",
                day.getFileName(),
                answer.word(),
                answer.plan().map(Plan::cost).map(String::valueOf).orElse("-"),
                answer.bound(),
                (System.nanoTime() - began) / 1e9);
        if (answer.isProven()) {
            Plan plan = answer.expectPlan().withBound(answer.bound());
            Files.writeString(folder.resolve(day.getFileName()), PlanFile.write(plan));
        }
    }
}
