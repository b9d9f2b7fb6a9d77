package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.CostParts;
import org.shedboard.pack.numbers.Engagements;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;
import org.shedboard.pack.search.Packer;

/**
 * Fits one more job into a posted plan at once. The job is tried from every minute at which the plan has something begin or end, in
 * gaps and between what is planned; what stands behind it is pushed along in its order. The few ways that cost least, and the one
 * that {@link Packer#follow} finds, are tried on the same drawn days, and the one that costs least on their mean is taken.
 */
public final class Insertion {
    /** From so many minutes, at most, the job is tried. Invented. */
    private static final int MOST_POINTS = 60;
    /** So many ways are tried on drawn days. Invented. */
    private static final int MOST_WAYS = 4;

    private static final int DRAWS = 100;
    private static final long SEED = 11;

    private final FlatProblem flat;
    private final PlanReading base;
    private final Plan posted;
    private final int job;
    private final Engagements engagements;
    private final DrawnMinutes draws;
    /** What the others cost by who does what where, which fitting one more in does not change. */
    private final long othersPeople;

    private final List<Way> ways = new ArrayList<>();

    private Insertion(FlatProblem flat, Plan posted, int job) {
        this.flat = flat;
        this.posted = posted;
        this.job = job;
        base = new PlanReading(flat, posted);
        engagements = new Engagements(flat, base);
        draws = new DrawnMinutes(flat, SEED);
        othersPeople = ReplayCost.peopleOf(flat, base);
    }

    /** A way to fit the job in, and what it costs when everything takes its middle minutes. */
    private record Way(PlanReading reading, long cost) {}

    /**
     * The plan with the job in it; empty where it does not fit unless another job is left out, or has begun.
     *
     * @param problem with a posted plan in it that holds all other jobs that can be placed
     */
    public static Optional<Plan> of(Problem problem, String job) {
        List<Problem.Job> others =
                problem.jobs().stream().filter(each -> !each.id().equals(job)).toList();
        Plan moved = Packer.follow(problem.withJobs(others));
        FlatProblem flat = new FlatProblem(problem);
        int number = problem.jobs()
                .indexOf(problem.jobs().stream()
                        .filter(each -> each.id().equals(job))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("no job " + job + " in the problem")));
        if (flat.hopeless[number] != null || flat.jobHasBegun[number]) {
            return Optional.empty();
        }
        return new Insertion(flat, moved, number).find(Packer.follow(problem));
    }

    private Optional<Plan> find(Plan followed) {
        for (int minute : points()) {
            tryFrom(minute, true);
            tryFrom(minute, false);
        }
        List<Plan> plans = new ArrayList<>(fewest().stream().map(this::write).toList());
        if (followed.unplaced().size() <= unplaced().size()) {
            plans.add(followed);
        }
        return plans.stream()
                .min(Comparator.<Plan>comparingInt(plan -> plan.unplaced().size())
                        .thenComparingDouble(plan -> new MeanCost.Trials(flat, plan, draws).sumOf(DRAWS)));
    }

    /** The ways that cost least; of those that cost the same, which are mostly the same, one. */
    private List<Way> fewest() {
        ways.sort(Comparator.comparingLong(Way::cost));
        List<Way> few = new ArrayList<>();
        for (Way way : ways) {
            boolean isOther = few.stream().noneMatch(each -> each.cost == way.cost);
            if (isOther && few.size() < MOST_WAYS) {
                few.add(way);
            }
        }
        return few;
    }

    private int[] points() {
        int earliest = Math.max(flat.problem.now(), flat.job(job).arrives());
        TreeSet<Integer> minutes = new TreeSet<>();
        minutes.add(earliest);
        for (int task : base.order) {
            minutes.add(Math.max(earliest, base.start[task]));
            minutes.add(Math.max(earliest, base.end[task] + flat.unattended[task]));
        }
        int[] all = minutes.stream().mapToInt(Integer::intValue).toArray();
        int step = 1 + (all.length - 1) / MOST_POINTS;
        int[] some = new int[(all.length + step - 1) / step];
        Arrays.setAll(some, index -> all[index * step]);
        return some;
    }

    private void tryFrom(int minute, boolean intoGaps) {
        PlanReading reading = Fitting.of(flat, base, engagements, job, minute, intoGaps);
        if (reading == null) {
            return;
        }
        Replay replay = new Replay(flat, reading, draws);
        replay.runMiddle(base.start);
        if (isLegal(reading, replay)) {
            long people = othersPeople + new CostParts(flat, reading).people(job);
            ways.add(new Way(reading, new ReplayCost(flat, reading, replay, people).count()));
        }
    }

    private Plan write(Way way) {
        Replay replay = new Replay(flat, way.reading, draws);
        replay.runMiddle(base.start);
        return new ReplayWriter(flat, way.reading, replay).write(unplaced(), way.cost);
    }

    private boolean isLegal(PlanReading reading, Replay replay) {
        for (int turn = 0; turn < reading.order.length; turn++) {
            int pinned = flat.at[reading.order[turn]];
            if (pinned >= 0 && replay.startOf(turn) != pinned || replay.completeOf(turn) > flat.problem.horizon()) {
                return false;
            }
        }
        return true;
    }

    private List<Plan.Unplaced> unplaced() {
        String id = flat.job(job).id();
        return posted.unplaced().stream().filter(left -> !left.job().equals(id)).toList();
    }
}
