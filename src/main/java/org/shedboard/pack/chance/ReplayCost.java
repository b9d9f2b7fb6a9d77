package org.shedboard.pack.chance;

import java.util.stream.IntStream;
import org.shedboard.pack.numbers.CostParts;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/** What the plan would have cost that a replay has just played. */
final class ReplayCost {
    private final FlatProblem flat;
    private final PlanReading plan;
    private final Replay replay;
    private final CostParts parts;
    /** What does not depend on the minutes that were drawn. */
    private final long people;

    ReplayCost(FlatProblem flat, PlanReading plan, Replay replay) {
        this(flat, plan, replay, peopleOf(flat, plan));
    }

    /** For whoever knows already what the plan costs by who does what where. */
    ReplayCost(FlatProblem flat, PlanReading plan, Replay replay, long people) {
        this.flat = flat;
        this.plan = plan;
        this.replay = replay;
        this.people = people;
        parts = new CostParts(flat, plan);
    }

    static long peopleOf(FlatProblem flat, PlanReading plan) {
        CostParts parts = new CostParts(flat, plan);
        return IntStream.range(0, flat.jobs).mapToLong(parts::people).sum();
    }

    long count() {
        long sum = people;
        int latest = 0;
        for (int job = 0; job < flat.jobs; job++) {
            int finish = replay.finishOf(job);
            latest = Math.max(latest, finish);
            sum += plan.isPlaced[flat.firstTaskOfJob(job)] ? parts.finish(job, finish) : 0;
        }
        for (int turn = 0; turn < plan.order.length; turn++) {
            sum += parts.moved(plan.order[turn], replay.startOf(turn));
            for (int member = replay.firstMember(turn); member < replay.firstMember(turn + 1); member++) {
                sum += parts.overtime(replay.personOf(member), replay.workFromOf(member), replay.workToOf(member));
            }
        }
        return sum + flat.problem.costs().makespan() * latest;
    }
}
