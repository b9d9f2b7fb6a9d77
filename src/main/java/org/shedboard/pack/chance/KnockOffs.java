package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/**
 * How sure it is that the days of a plan are over in time, and on which stays that hangs most. The days drawn are the same as those
 * of {@link Chances} for the same number of draws and seed.
 */
public final class KnockOffs {
    private final FlatProblem flat;
    private final PlanReading plan;
    private final Replay replay;
    private final DayEnds ends;
    private final int draws;
    private final boolean[][] late;

    private KnockOffs(FlatProblem flat, Plan plan, int draws, long seed) {
        this.flat = flat;
        this.plan = new PlanReading(flat, plan);
        this.draws = draws;
        replay = new Replay(flat, this.plan, new DrawnMinutes(flat, seed));
        ends = new DayEnds(flat, this.plan, replay);
        late = new boolean[draws][ends.days];
        for (int draw = 0; draw < draws; draw++) {
            replay.run(draw);
            ends.markLate(late[draw]);
        }
    }

    public static KnockOffs of(Problem problem, Plan plan, int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("a chance takes at least one draw, not " + draws);
        }
        return new KnockOffs(new FlatProblem(problem), plan, draws, seed);
    }

    /** The days on which the plan has somebody's work end, in order. */
    public List<KnockOff> days() {
        return IntStream.range(0, ends.days)
                .filter(day -> ends.minuteOf(day) >= 0)
                .mapToObj(this::knockOff)
                .toList();
    }

    private KnockOff knockOff(int day) {
        long inTime = IntStream.range(0, draws).filter(draw -> !late[draw][day]).count();
        double chance = (double) inTime / draws;
        return new KnockOff(day, ends.minuteOf(day), chance, StrictMath.sqrt(chance * (1 - chance) / draws));
    }

    /**
     * The stays that decide most whether the day is over in time, the greatest drop first. All draws are replayed once for every
     * stay with work before the end of the day.
     */
    public List<KnockOff.Decider> deciders(KnockOff day, int most) {
        return IntStream.range(0, flat.stays)
                .filter(stay -> isUnsure(stay, day.minute()))
                .mapToObj(stay -> decider(stay, day.day()))
                .filter(decider -> decider.drop() > 0)
                .sorted(Comparator.comparingDouble(KnockOff.Decider::drop).reversed())
                .limit(most)
                .toList();
    }

    /** Whether any minutes of the stay are drawn for work that the plan starts before that minute. */
    private boolean isUnsure(int stay, int minute) {
        return IntStream.range(flat.firstTask[stay], flat.firstTask[stay + 1])
                .filter(task -> plan.isPlaced[task] && plan.start[task] < minute)
                .anyMatch(task -> plan.who[task].length > 0 && flat.state[task] != FlatProblem.DONE);
    }

    private KnockOff.Decider decider(int stay, int day) {
        boolean[] held = new boolean[ends.days];
        List<Integer> differences = new ArrayList<>();
        for (int draw = 0; draw < draws; draw++) {
            replay.runHolding(draw, stay);
            ends.markLate(held);
            differences.add((late[draw][day] ? 1 : 0) - (held[day] ? 1 : 0));
        }
        double drop = differences.stream().mapToInt(Integer::intValue).sum() / (double) draws;
        double squares = differences.stream().mapToInt(each -> each * each).sum() / (double) draws;
        int job = flat.jobOfStay[stay];
        double error = StrictMath.sqrt(Math.max(0, squares - drop * drop) / draws);
        return new KnockOff.Decider(flat.job(job).id(), stay - flat.firstStay[job], drop, error);
    }
}
