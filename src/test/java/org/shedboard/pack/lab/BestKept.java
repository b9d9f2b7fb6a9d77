package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.files.DayFile;
import org.shedboard.files.PlanFile;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;

/**
 * Packs every day of a folder and keeps the best plan ever found of each in {@code FOLDER/best/NAME.plan.json}.
 *
 * <pre>
 *   BestKept FOLDER SECONDS [SEED]           the engine on two threads
 *   BestKept FOLDER SECONDS [SEED] solver    the constraint solver, from the plan that is kept
 * </pre>
 */
public final class BestKept {
    private static final int THREADS = 2;

    private final Path folder;
    private final double seconds;
    private final long seed;

    private BestKept(Path folder, double seconds, long seed) {
        this.folder = folder;
        this.seconds = seconds;
        this.seed = seed;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        boolean bySolver = arguments.length > 3;
        BestKept kept = new BestKept(Path.of(arguments[0]), Double.parseDouble(arguments[1]), seed);
        try (TimedPacking engine = new TimedPacking(THREADS)) {
            for (Path day : kept.days()) {
                Problem problem = DayFile.read(Files.readString(day)).expectValue();
                kept.keep(day, problem, bySolver ? kept.solved(day, problem) : kept.packed(engine, problem));
            }
        }
    }

    private List<Path> days() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    private Optional<Plan> packed(TimedPacking engine, Problem problem) throws InterruptedException {
        return Optional.of(engine.pack(problem, seed, seconds));
    }

    private Optional<Plan> solved(Path day, Problem problem) throws IOException {
        ExactLimit limit = ExactLimit.of(seconds, THREADS);
        Optional<Plan> start = kept(day, problem);
        ExactAnswer answer =
                ExactPacker.pack(problem, start.map(limit::withHint).orElse(limit));
        return answer.plan().map(plan -> plan.withBound(answer.bound()));
    }

    private Path fileOf(Path day) {
        String name = day.getFileName().toString().replaceAll("\\.json$", ".plan.json");
        return folder.resolve("best").resolve(name);
    }

    /** The plan that is kept; one that breaks a rule is as good as none. */
    private Optional<Plan> kept(Path day, Problem problem) throws IOException {
        Path file = fileOf(day);
        return Files.exists(file)
                ? PlanFile.read(Files.readString(file))
                        .value()
                        .filter(plan -> PlanCheck.of(problem, plan).isLegal())
                : Optional.empty();
    }

    private void keep(Path day, Problem problem, Optional<Plan> found) throws IOException {
        Optional<Plan> before = kept(day, problem);
        boolean isLegal =
                found.isPresent() && PlanCheck.of(problem, found.get()).isLegal();
        boolean isBetter = isLegal && (before.isEmpty() || found.get().isBetterThan(before.get()));
        if (isBetter) {
            Path file = fileOf(day);
            Files.createDirectories(file.getParent());
            Path beside = file.resolveSibling(file.getFileName() + ".new");
            Files.writeString(beside, PlanFile.write(found.get()));
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        }
        System.out.printf(
                Locale.ROOT,
                "%-36s kept %-14s found %-14s %s%n",
                day.getFileName(),
                before.map(BestKept::cost).orElse("-"),
                found.map(BestKept::cost).orElse("-"),
                isBetter ? "better" : "");
    }

    private static String cost(Plan plan) {
        return plan.unplaced().size() + "/" + plan.cost();
    }
}
