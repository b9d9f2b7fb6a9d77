package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.Engagements;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/**
 * Why each task of a plan starts when it does and not earlier, with the same people in the same place and everything else of the plan
 * as it is.
 *
 * <p>The reasons of a task belong together: each of them forbids the minute before its start, and without all of them it could start
 * then. Where that is only because somebody is off, what forbids the last minute before they went is among them too, and so on
 * back: "busy until nine, then a break".
 */
public final class Why {
    private final FlatProblem flat;
    private final PlanReading plan;
    private final Engagements engagements;

    private Why(FlatProblem flat, PlanReading plan) {
        this.flat = flat;
        this.plan = plan;
        engagements = new Engagements(flat, plan);
    }

    public static Why of(Problem problem, Plan plan) {
        FlatProblem flat = new FlatProblem(problem);
        return new Why(flat, new PlanReading(flat, plan));
    }

    /**
     * The reasons of a task, at least one; empty when it is not in the plan.
     *
     * @param stay the stay's place in the job
     */
    public List<Reason> of(String job, int stay, String task) {
        Optional<Integer> found = find(job, stay, task);
        return found.filter(number -> plan.isPlaced[number]).map(this::reasons).orElse(List.of());
    }

    private Optional<Integer> find(String job, int stay, String task) {
        for (int number = 0; number < flat.tasks; number++) {
            int holder = flat.jobOfTask[number];
            boolean same = flat.stayOfTask[number] - flat.firstStay[holder] == stay
                    && flat.task[number].id().equals(task)
                    && flat.job(holder).id().equals(job);
            if (same) {
                return Optional.of(number);
            }
        }
        return Optional.empty();
    }

    private List<Reason> reasons(int task) {
        if (flat.state[task] == FlatProblem.DONE || flat.state[task] == FlatProblem.GOING) {
            return List.of(new Reason.Begun());
        }
        StartCheck check = new StartCheck(flat, plan, engagements, task);
        for (int minute = check.noEarlierThan(); minute < plan.start[task]; minute++) {
            if (check.against(minute).isEmpty()) {
                return List.of(new Reason.Chosen(minute, plan.start[task] == flat.postedStart[task]));
            }
        }
        return chain(check, plan.start[task] - 1);
    }

    private static List<Reason> chain(StartCheck check, int before) {
        List<Reason> reasons = new ArrayList<>();
        int minute = before;
        boolean onlyOff = true;
        while (onlyOff) {
            List<Reason> against = check.against(minute);
            reasons.addAll(against);
            onlyOff = against.stream().allMatch(Reason.Off.class::isInstance);
            for (Reason reason : against) {
                minute = reason instanceof Reason.Off off ? Math.min(minute, off.from() - 1) : minute;
            }
        }
        return List.copyOf(reasons);
    }
}
