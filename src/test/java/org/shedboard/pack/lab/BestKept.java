package org.shedboard.pack.lab;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/**
 * Goes through the days of a folder, those with a proven optimum left out, and keeps the best plan ever found of each in
 * {@code KEPT/NAME.plan.json}. It can be broken off at any time.
 *
 * <pre>
 *   BestKept DAYS KEPT SECONDS [FIRST_SEED [LAST_SEED]]     the engine from nothing, so long a day, all days once a seed
 *   BestKept DAYS KEPT SECONDS FIRST_SEED LAST_SEED on      the engine from the plan that is kept
 *   BestKept DAYS KEPT SECONDS 1 1 solver                   the constraint solver from the plan that is kept
 * </pre>
 */
public final class BestKept {
    private static final int THREADS = 2;

    private final KeptPlans kept;
    private final double seconds;
    private final Search search;

    /** Looks for a plan of a day. */
    private interface Search {
        Optional<Plan> find(Problem problem, Optional<Plan> before, long seed) throws InterruptedException;
    }

    private BestKept(Path folder, double seconds, TimedPacking engine, String way) {
        this.kept = new KeptPlans(folder);
        this.seconds = seconds;
        this.search = switch (way) {
            case "new" -> (problem, before, seed) -> Optional.of(engine.pack(problem, seed, seconds));
            case "on" ->
                (problem, before, seed) ->
                        Optional.of(engine.pack(before.map(problem::withPosted).orElse(problem), seed, seconds));
            case "solver" -> (problem, before, seed) -> solved(problem, before);
            default -> throw new IllegalArgumentException("no way " + way + " to look for plans; on or solver");
        };
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Locale.setDefault(Locale.ROOT);
        DayFolder days = DayFolder.read(Path.of(arguments[0]));
        long firstSeed = arguments.length > 3 ? Long.parseLong(arguments[3]) : 1;
        long lastSeed = arguments.length > 4 ? Long.parseLong(arguments[4]) : firstSeed;
        String way = arguments.length > 5 ? arguments[5] : "new";
        try (TimedPacking engine = new TimedPacking(THREADS)) {
            BestKept best = new BestKept(Path.of(arguments[1]), Double.parseDouble(arguments[2]), engine, way);
            for (long seed = firstSeed; seed <= lastSeed; seed++) {
                for (DayFolder.Day day : days.unproven()) {
                    best.look(day, seed);
                }
            }
        }
    }

    private Optional<Plan> solved(Problem problem, Optional<Plan> before) {
        ExactLimit limit = ExactLimit.of(seconds, THREADS);
        ExactAnswer answer =
                ExactPacker.pack(problem, before.map(limit::withHint).orElse(limit));
        return answer.plan().map(plan -> plan.withBound(answer.bound()));
    }

    private void look(DayFolder.Day day, long seed) throws IOException, InterruptedException {
        Problem problem = day.problem();
        Optional<Plan> before = kept.find(day.name(), problem);
        Optional<Plan> found = search.find(problem, before, seed);
        boolean isBetter = found.isPresent() && kept.offer(day.name(), problem, found.get());
        System.out.printf(
                "%-16s seed %-4d kept %-12s found %-12s %s%n",
                day.name(), seed, text(before), text(found), isBetter ? "better" : "");
    }

    private static String text(Optional<Plan> plan) {
        return plan.map(Score::of).map(Score::toString).orElse("-");
    }
}
