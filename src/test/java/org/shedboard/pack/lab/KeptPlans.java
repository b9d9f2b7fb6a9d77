package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.shedboard.files.PlanFile;
import org.shedboard.files.PlanLines;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;

/** A folder with the best plan ever found of each day, {@code NAME.plan.json}; only a better one that obeys every rule replaces it. */
final class KeptPlans {
    private final Path folder;

    KeptPlans(Path folder) {
        this.folder = folder;
    }

    private Path fileOf(String day) {
        return folder.resolve(day + ".plan.json");
    }

    /** The plan that is kept; one that breaks a rule, or that cannot be read, is as good as none. */
    Optional<Plan> find(String day, Problem problem) throws IOException {
        Path file = fileOf(day);
        return Files.exists(file)
                ? PlanFile.read(Files.readString(file)).value().filter(plan -> isLegal(problem, plan))
                : Optional.empty();
    }

    /** Keeps the plan if it is better than the one that is kept; whether it was. */
    boolean offer(String day, Problem problem, Plan plan) throws IOException {
        Optional<Plan> before = find(day, problem);
        boolean isBetter = isLegal(problem, plan) && (before.isEmpty() || plan.isBetterThan(before.get()));
        if (isBetter) {
            write(fileOf(day), plan);
        }
        return isBetter;
    }

    private static boolean isLegal(Problem problem, Plan plan) {
        return PlanCheck.of(problem, plan).isLegal();
    }

    /** Beside it first, so that whoever is stopped in the middle loses nothing. */
    private static void write(Path file, Plan plan) throws IOException {
        Files.createDirectories(file.getParent());
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(beside, PlanLines.write(plan));
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
