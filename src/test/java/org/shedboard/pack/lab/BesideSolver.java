package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.pack.Plan;

/** The engine and the constraint solver on the same days, one after the other, each on two threads for as long by the clock. */
final class BesideSolver implements Section {
    private static final int DAYS = 12;
    private static final int LEAST_MACHINES = 5;
    private static final double[] SECONDS = {1, 10};
    private static final double LONGEST_SECONDS = 60;
    private static final long SEED = 1;

    /** Of one day and one time. */
    record Pair(Score engine, Optional<Score> solver) {
        boolean isWorse() {
            return solver.filter(engine::isWorseThan).isPresent();
        }

        /** The engine's cost over the solver's; empty where they leave out different numbers of jobs, or the solver has no plan. */
        Optional<Double> ratio() {
            return solver.filter(score -> score.unplaced() == engine.unplaced())
                    .map(score -> (double) engine.cost() / Math.max(1, score.cost()));
        }

        private String ratioText() {
            return ratio().map(ratio -> String.format(Locale.ROOT, "%.4f", ratio))
                    .orElse("-");
        }
    }

    @Override
    public String name() {
        return "solver";
    }

    @Override
    public String what() {
        return "CP-SAT side by side (2 workers), equal wall time 1, 10, 60 s, 12 days";
    }

    @Override
    public String target() {
        return "never worse from 5 machines up; ratio reported";
    }

    @Override
    public Reached measure(Laboratory lab, Rows rows) throws InterruptedException {
        List<DayFolder.Day> days = lab.some(lab.days.judged(LEAST_MACHINES, Integer.MAX_VALUE), DAYS);
        if (days.isEmpty()) {
            return Reached.nothing("no day to judge on");
        }
        List<Pair> pairs = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (double seconds : SECONDS) {
            texts.add(both(lab, rows, days, seconds, pairs));
        }
        List<DayFolder.Day> longDays = days.subList(0, Math.min(days.size(), lab.terms.longDays()));
        texts.add(both(lab, rows, longDays, LONGEST_SECONDS, pairs));
        return Reached.of(
                Verdict.of(pairs.stream().noneMatch(Pair::isWorse)),
                "worse in %d of %d; %s (1 seed)",
                pairs.stream().filter(Pair::isWorse).count(),
                pairs.size(),
                String.join("; ", texts));
    }

    /** Adds what it found to {@code pairs}, and says what the ratios were. */
    private static String both(Laboratory lab, Rows rows, List<DayFolder.Day> days, double seconds, List<Pair> pairs)
            throws InterruptedException {
        List<Pair> here = new ArrayList<>();
        for (DayFolder.Day day : days) {
            here.add(both(lab, rows, day, seconds));
        }
        pairs.addAll(here);
        return "%.0f s, %d days: %s".formatted(seconds, here.size(), ratios(here));
    }

    /** The least and the greatest ratio, and where there is none for want of the solver's plan. */
    static String ratios(List<Pair> pairs) {
        double[] ratios = pairs.stream()
                .flatMap(pair -> pair.ratio().stream())
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        long without = pairs.stream().filter(pair -> pair.solver().isEmpty()).count();
        String between = ratios.length == 0
                ? "no ratio"
                : String.format(Locale.ROOT, "ratio %.3f to %.3f", ratios[0], ratios[ratios.length - 1]);
        return without == 0 ? between : between + ", no plan by the solver on " + without;
    }

    private static Pair both(Laboratory lab, Rows rows, DayFolder.Day day, double seconds) throws InterruptedException {
        Plan plan = lab.pack(day.problem(), SEED, seconds);
        ExactLimit limit = ExactLimit.of(lab.scaled(seconds), Laboratory.THREADS);
        ExactAnswer answer = ExactPacker.pack(day.problem(), limit);
        Pair pair = new Pair(Score.of(plan), answer.plan().map(Score::of));
        rows.add(
                "%-14s %2d machines %4.1f s  engine %-10s solver %-10s %-8s bound %-8d ratio %s %s",
                day.name(),
                day.machines(),
                lab.scaled(seconds),
                pair.engine(),
                pair.solver().map(Score::toString).orElse("-"),
                answer.word(),
                answer.bound(),
                pair.ratioText(),
                pair.isWorse() ? "worse" : "");
        return pair;
    }
}
