package org.shedboard.pack.numbers;

import java.util.Arrays;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;

/** What the pieces of a plan cost, by the day file's formula, once it is known who does what where. */
public final class CostParts {
    /** Posted starts so close to now cost {@link #NEAR_FACTOR} times as much to move. */
    private static final int NEAR_MINUTES = 60;

    private static final int NEAR_FACTOR = 4;

    private final FlatProblem flat;
    private final PlanReading plan;
    private final Costs costs;

    public CostParts(FlatProblem flat, PlanReading plan) {
        this.flat = flat;
        this.plan = plan;
        costs = flat.problem.costs();
    }

    /** What the job costs by finishing at that minute. */
    public long finish(int job, int minute) {
        Problem.Job values = flat.job(job);
        int over = values.promise().isPresent()
                ? Math.max(0, minute - values.promise().getAsInt())
                : 0;
        return values.weight() * (costs.flow() * minute + costs.late() * over);
    }

    /** What it costs that a person works from one working minute to another. */
    public long overtime(int person, int from, int to) {
        Hours hours = flat.hours[person];
        return costs.overtime() == 0 ? 0 : costs.overtime() * (hours.overtimeBefore(to) - hours.overtimeBefore(from));
    }

    /** What it costs that the task does not start when it is posted. */
    public long moved(int task, int start) {
        int posted = flat.postedStart[task];
        if (costs.moved() == 0 || posted < 0 || flat.state[task] != FlatProblem.OPEN) {
            return 0;
        }
        boolean near = Math.abs(posted - flat.problem.now()) <= NEAR_MINUTES;
        return costs.moved() * Math.abs(start - posted) * (near ? NEAR_FACTOR : 1);
    }

    /** What the job costs by who does it and where, whenever that is: handovers, and what is not as posted. */
    public long people(int job) {
        long points = 0;
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            points += handover(stay) + swappedPlace(stay);
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                points += swappedPerson(task);
            }
        }
        return points;
    }

    private long handover(int stay) {
        long different = Arrays.stream(plan.who, flat.firstTask[stay], flat.firstTask[stay + 1])
                .flatMapToInt(Arrays::stream)
                .distinct()
                .count();
        return costs.handover() * Math.max(0, different - flat.crewOfStay[stay]);
    }

    private long swappedPlace(int stay) {
        int place = plan.placeOfStay[stay];
        boolean judged = !flat.stayHasBegun[stay] && flat.postedPlace[stay] != -1 && place >= 0;
        return judged && place != flat.postedPlace[stay] ? costs.swapped() : 0;
    }

    private long swappedPerson(int task) {
        boolean judged = plan.isPlaced[task] && flat.state[task] == FlatProblem.OPEN && flat.postedStart[task] >= 0;
        int person = plan.who[task].length == 0 ? -1 : plan.who[task][0];
        return judged && person != flat.postedPerson[task] ? costs.swapped() : 0;
    }
}
