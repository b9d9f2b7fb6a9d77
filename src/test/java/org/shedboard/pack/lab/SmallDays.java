package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Plan;

/** Small days with proven optima, each met or not from each seed. */
final class SmallDays implements Section {
    private static final int ONE_DAY = 1440;
    private static final double ONE_DAY_SECONDS = 0.5;
    private static final double MORE_DAYS_SECONDS = 5;

    @Override
    public String name() {
        return "small";
    }

    @Override
    public String what() {
        return "`days/small-*`: one-day files in 0.5 s warm, three-day files in 5 s";
    }

    @Override
    public String target() {
        return "the proven optimum on every file and seed (optimum.csv)";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws InterruptedException {
        List<DayFolder.Day> days = lab.some(lab.days.proven());
        if (days.isEmpty()) {
            return Reached.nothing("no proven day");
        }
        int met = 0;
        for (DayFolder.Day day : days) {
            met += met(lab, rows, day);
        }
        int runs = days.size() * lab.terms.seeds();
        return Reached.of(
                Verdict.of(met == runs),
                "%d of %d runs (%d files, %d seeds each)",
                met,
                runs,
                days.size(),
                lab.terms.seeds());
    }

    private static int met(Laboratory lab, Rows rows, DayFolder.Day day) throws InterruptedException {
        double seconds = day.problem().horizon() <= ONE_DAY ? ONE_DAY_SECONDS : MORE_DAYS_SECONDS;
        Score optimum = new Score(0, lab.days.optimumOf(day));
        List<Score> scores = new ArrayList<>();
        for (int seed = 1; seed <= lab.terms.seeds(); seed++) {
            Plan plan = lab.pack(day.problem(), seed, seconds);
            scores.add(Score.of(plan));
            if (optimum.isWorseThan(Score.of(plan))) {
                throw new IllegalStateException("a plan of " + day.name() + " is better than its optimum: " + plan);
            }
        }
        int met = (int) scores.stream().filter(optimum::equals).count();
        rows.add(
                "%-30s %2d machines %4.1f s  optimum %-8s found %s %s",
                day.name(), day.machines(), lab.scaled(seconds), optimum, scores, met == scores.size() ? "" : "missed");
        return met;
    }
}
