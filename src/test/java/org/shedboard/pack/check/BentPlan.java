package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** A legal plan that is being bent: one line is changed, and what merely follows from it (ends, stays, cost) is put right again. */
final class BentPlan {
    final Problem problem;
    final Map<String, Windows> hours = new LinkedHashMap<>();
    private final Plan plan;
    private final List<Plan.TaskTime> tasks;
    private final List<Plan.StayPlace> stays;
    private final List<Plan.Unplaced> unplaced;

    BentPlan(Problem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        tasks = new ArrayList<>(plan.tasks());
        stays = new ArrayList<>(plan.stays());
        unplaced = new ArrayList<>(plan.unplaced());
        problem.people().forEach(person -> hours.put(person.id(), new Windows(person)));
    }

    BentPlan with(Plan.TaskTime old, Plan.TaskTime changed) {
        tasks.set(tasks.indexOf(old), changed);
        return this;
    }

    BentPlan with(Plan.StayPlace old, Plan.StayPlace changed) {
        stays.set(stays.indexOf(old), changed);
        return this;
    }

    BentPlan without(Plan.TaskTime time) {
        tasks.remove(time);
        return this;
    }

    BentPlan without(Plan.StayPlace stay) {
        stays.remove(stay);
        return this;
    }

    BentPlan plus(Plan.TaskTime time) {
        tasks.add(time);
        return this;
    }

    BentPlan plus(Plan.StayPlace stay) {
        stays.add(stay);
        return this;
    }

    BentPlan plus(Plan.Unplaced left) {
        unplaced.add(left);
        return this;
    }

    /** All lines of a job are dropped. */
    BentPlan without(String job) {
        tasks.removeIf(time -> time.job().equals(job));
        stays.removeIf(stay -> stay.job().equals(job));
        return this;
    }

    /** The task at another minute, by the same people, with the end that follows. */
    BentPlan moved(Plan.TaskTime time, Problem.Task task, int start) {
        int end = start;
        for (String person : time.people()) {
            List<Windows.Stretch> work = hours.get(person).work(start, task.minutesBy(person));
            end = work.isEmpty() ? end : Math.max(end, work.get(work.size() - 1).to());
        }
        return with(
                time, new Plan.TaskTime(time.job(), time.stay(), time.task(), time.person(), time.with(), start, end));
    }

    /** The task at the same minute by others, with the end that follows. */
    BentPlan by(Plan.TaskTime time, Problem.Task task, List<String> people) {
        Plan.TaskTime changed = new Plan.TaskTime(
                time.job(),
                time.stay(),
                time.task(),
                people.stream().findFirst(),
                people.isEmpty() ? List.of() : people.subList(1, people.size()),
                time.start(),
                time.end());
        with(time, changed);
        boolean allKnown = people.stream().allMatch(hours::containsKey);
        return allKnown && !task.hasBegun() && task.handsOn() > 0 ? moved(changed, task, time.start()) : this;
    }

    /** Stays from the first start to the last completion of what is listed. */
    BentPlan refitted() {
        stays.replaceAll(this::refitted);
        return this;
    }

    private Plan.StayPlace refitted(Plan.StayPlace stay) {
        int from = Integer.MAX_VALUE;
        int to = 0;
        for (Plan.TaskTime time : tasks) {
            Optional<Problem.Task> task = task(time);
            if (time.job().equals(stay.job()) && time.stay() == stay.stay() && task.isPresent()) {
                from = Math.min(from, time.start());
                to = Math.max(to, time.end() + task.get().unattended());
            }
        }
        return to == 0 ? stay : new Plan.StayPlace(stay.job(), stay.stay(), stay.place(), from, to);
    }

    private Optional<Problem.Task> task(Plan.TaskTime time) {
        return problem.jobs().stream()
                .filter(job ->
                        job.id().equals(time.job()) && time.stay() < job.stays().size())
                .flatMap(job -> job.stays().get(time.stay()).tasks().stream())
                .filter(task -> task.id().equals(time.task()))
                .findFirst();
    }

    /** The bent plan with the cost it has. */
    Plan priced() {
        return costing(PlanCheck.of(problem, costing(0)).cost());
    }

    Plan costing(long cost) {
        return new Plan(cost, 0, unplaced, stays, tasks, plan.seed(), plan.tries(), 0);
    }
}
