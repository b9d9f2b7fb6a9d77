package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
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

    /**
     * The reasons of a task, then those of what it waits for longest, and so on back, until what holds it up is no other task.
     *
     * @param most links at most
     */
    public List<Link> chain(String job, int stay, String task, int most) {
        List<Link> links = new ArrayList<>();
        Optional<Integer> next = find(job, stay, task).filter(number -> plan.isPlaced[number]);
        Set<Integer> seen = new HashSet<>();
        while (next.isPresent() && seen.add(next.get()) && links.size() < most) {
            Link link = link(next.get());
            links.add(link);
            next = behind(link);
        }
        return List.copyOf(links);
    }

    private Link link(int number) {
        int holder = flat.jobOfTask[number];
        return new Link(
                flat.job(holder).id(),
                flat.stayOfTask[number] - flat.firstStay[holder],
                flat.task[number].id(),
                plan.start[number],
                reasons(number));
    }

    /** Of the reasons that are other tasks, the one that holds longest, and the first of several. */
    private Optional<Integer> behind(Link link) {
        Optional<Integer> behind = Optional.empty();
        for (Reason reason : link.reasons()) {
            Optional<Integer> cause = cause(link, reason).filter(each -> plan.isPlaced[each]);
            if (cause.isPresent() && (behind.isEmpty() || over(cause.get()) > over(behind.get()))) {
                behind = cause;
            }
        }
        return behind;
    }

    private int over(int task) {
        return plan.end[task] + flat.unattended[task];
    }

    private Optional<Integer> cause(Link link, Reason reason) {
        if (reason instanceof Reason.Task waits) {
            return find(link.job(), link.stay(), waits.task());
        } else if (reason instanceof Reason.Busy busy) {
            return find(busy.job(), busy.stay(), busy.task());
        } else if (reason instanceof Reason.PlaceTaken taken) {
            return lastOf(taken.job(), taken.stay());
        } else if (reason instanceof Reason.StayBefore before) {
            return lastOf(link.job(), before.stay());
        }
        return Optional.empty();
    }

    private Optional<Integer> lastOf(String job, int stay) {
        return IntStream.range(0, flat.tasks)
                .filter(number -> plan.isPlaced[number])
                .filter(number -> flat.job(flat.jobOfTask[number]).id().equals(job))
                .filter(number -> flat.stayOfTask[number] - flat.firstStay[flat.jobOfTask[number]] == stay)
                .boxed()
                .max(Comparator.comparingInt(this::over));
    }

    /** Everybody else, and when each could start the task, were it theirs. */
    public List<Instead> otherPeople(String job, int stay, String task) {
        return others(job, stay, task).map(Others::people).orElse(List.of());
    }

    /** Every other place of its kind, and when the task could start there. */
    public List<Instead> otherPlaces(String job, int stay, String task) {
        return others(job, stay, task).map(Others::places).orElse(List.of());
    }

    private Optional<Others> others(String job, int stay, String task) {
        return find(job, stay, task)
                .filter(number -> plan.isPlaced[number])
                .map(number -> new Others(flat, plan, engagements, number));
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
