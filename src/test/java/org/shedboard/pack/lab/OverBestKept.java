package org.shedboard.pack.lab;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** The days to judge on, held against the best plans kept of them; the median of the seeds counts, and every broken promise. */
final class OverBestKept implements Section {
    private final String name;
    private final String what;
    private final String target;
    private final int least;
    private final int most;
    private final double percent;
    /** Whether a plan may not miss a promise that the best one keeps. */
    private final boolean judgesPromises;

    private OverBestKept(
            String name, String what, String target, int least, int most, double percent, boolean judgesPromises) {
        this.name = name;
        this.what = what;
        this.target = target;
        this.least = least;
        this.most = most;
        this.percent = percent;
        this.judgesPromises = judgesPromises;
    }

    static OverBestKept few() {
        return new OverBestKept(
                "few",
                "up to 14 machines on the day, 2 s",
                "≤ 2 % over best kept; no promise missed that the best keeps",
                0,
                Laboratory.FEW_MACHINES,
                2,
                true);
    }

    static OverBestKept many() {
        return new OverBestKept(
                "many",
                "more than 14 machines, `tight-*` included, 10 s",
                "≤ 3 % over best kept",
                Laboratory.FEW_MACHINES + 1,
                Integer.MAX_VALUE,
                3,
                false);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String what() {
        return what;
    }

    @Override
    public String target() {
        return target;
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws IOException, InterruptedException {
        List<DayFolder.Day> days = lab.some(lab.days.judged(least, most));
        List<Standing> standings = new ArrayList<>();
        for (DayFolder.Day day : days) {
            standing(lab, rows, day).ifPresent(standings::add);
        }
        if (standings.isEmpty()) {
            return Reached.nothing("no best plan kept of any of %d days".formatted(days.size()));
        }
        return reached(standings, days.size(), lab.terms.seeds());
    }

    private Reached reached(List<Standing> standings, int days, int seeds) {
        Standing worst = standings.stream()
                .max(Comparator.comparingDouble(Standing::percentOver))
                .orElseThrow();
        long within = standings.stream().filter(one -> one.isWithin(percent)).count();
        int missing = standings.stream().mapToInt(Standing::missing).sum();
        return Reached.of(
                verdict(standings, days),
                "%d of %d days within, worst %s (%s), mean %s; %d of %d runs miss a promise the best keeps"
                        + " (%d of %d days have a best plan, %d seeds each)",
                within,
                standings.size(),
                Score.percent(worst.percentOver()),
                worst.day(),
                Score.percent(mean(standings)),
                missing,
                standings.size() * seeds,
                standings.size(),
                days,
                seeds);
    }

    /** Of the days on which as many are left out as in the best plan. */
    static double mean(List<Standing> standings) {
        return standings.stream()
                .mapToDouble(Standing::percentOver)
                .filter(Double::isFinite)
                .average()
                .orElse(0);
    }

    /** Missed where one day is; met only where each has a best plan to be held against. */
    Verdict verdict(List<Standing> standings, int days) {
        boolean isMet =
                standings.stream().allMatch(one -> one.isWithin(percent) && (!judgesPromises || one.missing() == 0));
        return Verdict.of(isMet).and(standings.size() == days ? Verdict.MET : Verdict.OPEN);
    }

    private Optional<Standing> standing(Laboratory lab, Rows rows, DayFolder.Day day)
            throws IOException, InterruptedException {
        Problem problem = day.problem();
        Optional<Plan> best = lab.kept.find(day.name(), problem);
        List<Plan> found = found(lab, day);
        List<Score> scores = found.stream().map(Score::of).toList();
        Optional<Standing> standing =
                best.map(plan -> new Standing(day.name(), Score.of(plan), scores, missing(problem, plan, found)));
        rows.add(
                "%-14s %2d machines  best kept %-10s found %s  median %s over, %s",
                day.name(),
                day.machines(),
                best.map(Score::of).map(Score::toString).orElse("-"),
                scores,
                standing.map(Standing::percentOver).map(Score::percent).orElse("-"),
                standing.map(one -> one.missing() + " runs miss a promise").orElse("no best plan kept"));
        return standing;
    }

    private static List<Plan> found(Laboratory lab, DayFolder.Day day) throws IOException, InterruptedException {
        List<Plan> found = new ArrayList<>();
        for (int seed = 1; seed <= lab.terms.seeds(); seed++) {
            found.add(lab.pack(day.problem(), seed, Laboratory.secondsFor(day)));
        }
        for (Plan plan : lab.terms.keep() ? found : List.<Plan>of()) {
            lab.kept.offer(day.name(), day.problem(), plan);
        }
        return found;
    }

    private static int missing(Problem problem, Plan best, List<Plan> found) {
        Promises kept = Promises.of(problem, best);
        return (int) found.stream()
                .filter(plan -> Promises.of(problem, plan).missedOf(kept) > 0)
                .count();
    }
}
