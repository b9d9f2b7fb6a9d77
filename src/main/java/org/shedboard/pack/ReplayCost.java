package org.shedboard.pack;

import java.util.Arrays;

/** What the plan would have cost that a replay has just played, by the day file's formula. */
final class ReplayCost {
    /** Posted starts so close to now cost {@link #NEAR_FACTOR} times as much to move. */
    private static final int NEAR_MINUTES = 60;

    private static final int NEAR_FACTOR = 4;

    private final FlatProblem flat;
    private final PlanReading plan;
    private final Replay replay;
    private final Costs costs;
    private final boolean[] isPlaced;
    /** What does not depend on the minutes that were drawn. */
    private final long people;

    ReplayCost(FlatProblem flat, PlanReading plan, Replay replay) {
        this.flat = flat;
        this.plan = plan;
        this.replay = replay;
        costs = flat.problem.costs();
        isPlaced = new boolean[flat.jobs];
        for (int task : plan.order) {
            isPlaced[flat.jobOfTask[task]] = true;
        }
        people = handovers() + swaps();
    }

    long count() {
        long sum = people;
        int latest = 0;
        for (int job = 0; job < flat.jobs; job++) {
            if (isPlaced[job]) {
                int finish = replay.finishOf(job);
                latest = Math.max(latest, finish);
                sum += points(flat.job(job), finish);
            }
        }
        for (int turn = 0; turn < plan.order.length; turn++) {
            sum += costs.overtime() > 0 ? costs.overtime() * overtime(turn) : 0;
            sum += costs.moved() > 0 ? costs.moved() * moved(turn) : 0;
        }
        return sum + costs.makespan() * latest;
    }

    private long points(Problem.Job job, int finish) {
        int over =
                job.promise().isPresent() ? Math.max(0, finish - job.promise().getAsInt()) : 0;
        return job.weight() * (costs.flow() * finish + costs.late() * over);
    }

    private int overtime(int turn) {
        int minutes = 0;
        for (int member = replay.firstMember(turn); member < replay.firstMember(turn + 1); member++) {
            Hours hours = flat.hours[replay.personOf(member)];
            minutes += hours.overtimeBefore(replay.workToOf(member)) - hours.overtimeBefore(replay.workFromOf(member));
        }
        return minutes;
    }

    private long moved(int turn) {
        int task = plan.order[turn];
        int posted = flat.postedStart[task];
        if (posted < 0 || flat.state[task] != FlatProblem.OPEN) {
            return 0;
        }
        boolean near = Math.abs(posted - flat.problem.now()) <= NEAR_MINUTES;
        return (long) Math.abs(replay.startOf(turn) - posted) * (near ? NEAR_FACTOR : 1);
    }

    private long handovers() {
        long points = 0;
        for (int stay = 0; stay < flat.stays; stay++) {
            int tasks = flat.firstTask[stay];
            int[] different = Arrays.stream(plan.who, tasks, flat.firstTask[stay + 1])
                    .flatMapToInt(Arrays::stream)
                    .distinct()
                    .toArray();
            points += costs.handover() * Math.max(0, different.length - flat.crewOfStay[stay]);
        }
        return points;
    }

    private long swaps() {
        long points = 0;
        for (int task : plan.order) {
            boolean judged = flat.state[task] == FlatProblem.OPEN && flat.postedStart[task] >= 0;
            int person = plan.who[task].length == 0 ? -1 : plan.who[task][0];
            points += judged && person != flat.postedPerson[task] ? costs.swapped() : 0;
        }
        for (int stay = 0; stay < flat.stays; stay++) {
            int place = plan.placeOfStay[stay];
            boolean judged = !flat.stayHasBegun[stay] && flat.postedPlace[stay] != -1 && place >= 0;
            points += judged && place != flat.postedPlace[stay] ? costs.swapped() : 0;
        }
        return points;
    }
}
