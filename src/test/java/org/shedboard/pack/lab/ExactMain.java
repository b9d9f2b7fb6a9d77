package org.shedboard.pack.lab;

import java.nio.file.Files;
import java.nio.file.Path;
import org.shedboard.files.DayFile;
import org.shedboard.files.PlanFile;
import org.shedboard.pack.Packer;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;

/** Packs day files with the constraint solver: seconds, workers, tries of the engine for a hint, folder for the plans, day files. */
final class ExactMain {
    private ExactMain() {}

    public static void main(String[] arguments) throws java.io.IOException {
        for (int index = 4; index < arguments.length; index++) {
            Path file = Path.of(arguments[index]);
            Problem problem = DayFile.read(Files.readString(file)).expectValue();
            long tries = Long.parseLong(arguments[2]);
            ExactLimit limit = ExactLimit.of(Double.parseDouble(arguments[0]), Integer.parseInt(arguments[1]));
            long began = System.nanoTime();
            if (tries > 0) {
                Plan hint = Packer.pack(problem, Search.of(1, tries));
                System.out.printf(
                        "hint %d %d unplaced%n", hint.cost(), hint.unplaced().size());
                limit = limit.withHint(hint);
            }
            ExactAnswer answer = ExactPacker.pack(problem, limit);
            System.out.printf(
                    "%-32s %-8s %8s bound %d %.1f s%n",
                    file.getFileName(),
                    answer.word(),
                    answer.plan().map(Plan::cost).map(String::valueOf).orElse("-"),
                    answer.bound(),
                    (System.nanoTime() - began) / 1e9);
            if (answer.isProven()) {
                Path plan = Path.of(arguments[3]).resolve(file.getFileName());
                Files.writeString(plan, PlanFile.write(answer.expectPlan().withBound(answer.bound())));
            }
        }
    }
}
