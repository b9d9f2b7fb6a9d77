package org.shedboard.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Search;
import org.shedboard.pack.Unsure;
import org.shedboard.pack.chance.Chances;
import org.shedboard.pack.search.Packer;

/**
 * Prints how many replays a second {@link Chances} makes of day files, warm and on one thread. Run by hand with day files as
 * arguments; the fastest of several turns counts, since others may use the machine meanwhile.
 */
public final class ReplaySpeed {
    private static final int DRAWS = 1000;
    private static final int TURNS = 100;

    private ReplaySpeed() {}

    public static void main(String[] files) throws IOException {
        for (String file : files) {
            String text = Files.readString(Path.of(file));
            Problem problem = Unsure.of(DayFile.read(text).value().orElseThrow());
            print(file, problem, Packer.pack(problem, Search.of(1, 500)));
        }
    }

    private static void print(String file, Problem problem, Plan plan) {
        long fastest = Long.MAX_VALUE;
        for (int turn = 0; turn < TURNS; turn++) {
            long from = System.nanoTime();
            Chances.of(problem, plan, DRAWS, turn);
            fastest = Math.min(fastest, System.nanoTime() - from);
        }
        System.out.printf(
                "%s: %d machines, %d tasks, %d draws in %.1f ms, %.0f replays a second%n",
                Path.of(file).getFileName(),
                problem.jobs().size(),
                plan.tasks().size(),
                DRAWS,
                fastest / 1e6,
                DRAWS * 1e9 / fastest);
    }
}
