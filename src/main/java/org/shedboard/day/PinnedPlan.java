package org.shedboard.day;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.TaskPin;
import org.shedboard.shop.Visit;

/**
 * The first plan in which a task is where it was put by hand, and everything else where it was as far as that goes. It is there
 * between two keys; a better one is looked for beside the screen afterwards.
 */
final class PinnedPlan {
    /** So many tries, where the rest cannot simply follow. */
    static final long TRIES = 300;

    private final Day before;
    private final Day day;
    private final Instant now;
    private final Visit visit;
    private final Task task;
    private final int stay;

    /** @param day the day before it with the pin in it */
    PinnedPlan(Day before, Day day, Instant now, String visitId, String taskId) {
        this.before = before;
        this.day = day;
        this.now = now;
        this.visit = day.expectVisit(visitId);
        this.task = visit.findTask(taskId).orElseThrow();
        this.stay = visit.stays().indexOf(visit.stayOf(taskId).orElseThrow());
    }

    /** Empty where what is insisted on cannot be. */
    Optional<Plan> find() {
        Problems.Insisting insisting = Problems.insisting(before, day, now, visit.id());
        Problem problem = insisting.problem();
        Problem led = problem.posted().map(this::led).map(problem::withPosted).orElse(problem);
        return Packer.keep(led)
                .filter(plan -> holds(plan, insisting))
                .or(() -> Packer.sketch(led, TRIES).filter(plan -> holds(plan, insisting)))
                .map(plan -> Planning.costIn(problem, plan))
                .filter(plan -> PlanCheck.of(problem, plan).isLegal());
    }

    private static boolean holds(Plan plan, Problems.Insisting insisting) {
        return insisting.visits().stream().allMatch(id -> plan.findUnplaced(id).isEmpty());
    }

    /** The posted plan with the task where it is wanted, and what comes before it out of its way. */
    private Plan led(Plan posted) {
        return new Plan(
                0,
                0,
                List.of(),
                posted.stays().stream().map(this::led).toList(),
                posted.tasks().stream().map(this::led).toList(),
                posted.seed(),
                posted.tries(),
                posted.millis());
    }

    private Plan.StayPlace led(Plan.StayPlace at) {
        boolean isIts = at.job().equals(visit.id()) && at.stay() == stay;
        return new Plan.StayPlace(
                at.job(), at.stay(), isIts ? pin().placeId().orElse(at.place()) : at.place(), at.from(), at.to());
    }

    private Plan.TaskTime led(Plan.TaskTime time) {
        if (!time.job().equals(visit.id())) {
            return time;
        }
        if (time.stay() == stay && time.task().equals(task.id())) {
            int minutes = time.end() - time.start();
            int start = pin().at().map(day::minuteOf).orElse(time.start());
            return new Plan.TaskTime(
                    time.job(),
                    time.stay(),
                    time.task(),
                    task.handsOn() > 0 ? pin().personId().or(time::person) : time.person(),
                    time.with(),
                    start,
                    start + minutes);
        }
        return isBefore(time) ? earlier(time) : time;
    }

    private boolean isBefore(Plan.TaskTime time) {
        Stay own = visit.stays().get(stay);
        boolean isInIt = time.stay() == stay
                && own.findTask(time.task()).map(own.tasks()::indexOf).orElse(-1)
                        < own.tasks().indexOf(task);
        return time.stay() < stay || isInIt;
    }

    /** What is posted so late that the task would have to wait for it goes as early as it can. */
    private Plan.TaskTime earlier(Plan.TaskTime time) {
        boolean isInTheWay =
                pin().at().filter(at -> time.end() > day.minuteOf(at)).isPresent();
        int start = day.minuteOf(now);
        return isInTheWay && time.start() > start
                ? new Plan.TaskTime(
                        time.job(),
                        time.stay(),
                        time.task(),
                        time.person(),
                        time.with(),
                        start,
                        start + time.end() - time.start())
                : time;
    }

    private TaskPin pin() {
        return task.pin().orElseThrow();
    }
}
