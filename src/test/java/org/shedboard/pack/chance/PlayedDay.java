package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.Unpinned;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;
import org.shedboard.pack.numbers.PlanReading;

/** A replay just played, with the minutes it was played with. */
record PlayedDay(FlatProblem flat, PlanReading reading, DrawnMinutes draws, Replay replay) {
    static PlayedDay of(Problem problem, Plan plan) {
        FlatProblem flat = new FlatProblem(problem);
        PlanReading reading = new PlanReading(flat, plan);
        DrawnMinutes draws = new DrawnMinutes(flat, 1);
        return new PlayedDay(flat, reading, draws, new Replay(flat, reading, draws));
    }

    Plan plan(List<Plan.Unplaced> unplaced) {
        return new ReplayWriter(flat, reading, replay).write(unplaced, 0);
    }

    /** A day file has one number for what is left of an interrupted task, whoever does it; two people draw two. */
    boolean isTellable() {
        return IntStream.range(0, flat.tasks)
                .noneMatch(task -> flat.state[task] == FlatProblem.INTERRUPTED && reading.who[task].length > 1);
    }

    /** The problem as it would have been had the drawn minutes been known, with endless hours for what runs on. */
    Problem asDrawn() {
        int horizon = flat.problem.horizon();
        Problem problem = flat.problem;
        List<Problem.Job> jobs = new ArrayList<>();
        for (int job = 0; job < flat.jobs; job++) {
            List<Problem.Stay> stays = new ArrayList<>();
            for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
                stays.add(asDrawn(stay));
            }
            jobs.add(flat.job(job).withStays(stays));
        }
        Problem longer = new Problem(
                problem.now(),
                Hours.FAR,
                problem.costs(),
                problem.places(),
                problem.people(),
                jobs,
                Optional.empty(),
                Optional.empty());
        return longer.withPeople(problem.people().stream()
                .map(person -> new Problem.Person(
                        person.id(),
                        person.skills(),
                        with(cut(person.shifts(), horizon), Span.of(horizon, Hours.FAR)),
                        cut(person.overtime(), horizon),
                        0))
                .toList());
    }

    private static List<Span> with(List<Span> spans, Span last) {
        List<Span> all = new ArrayList<>(spans);
        all.add(last);
        return all;
    }

    private static List<Span> cut(List<Span> spans, int horizon) {
        return spans.stream()
                .filter(span -> span.from() < horizon)
                .map(span -> Span.of(span.from(), Math.min(horizon, span.to())))
                .toList();
    }

    private Problem.Stay asDrawn(int stay) {
        List<Problem.Task> tasks = new ArrayList<>();
        for (int number = flat.firstTask[stay]; number < flat.firstTask[stay + 1]; number++) {
            tasks.add(asDrawn(number, flat.task[number]));
        }
        return flat.stay(stay).withTasks(tasks);
    }

    /** A pin to a minute that cannot be kept is a task that cannot start before. */
    private Problem.Task asDrawn(int number, Problem.Task task) {
        Map<String, Integer> minutes = new LinkedHashMap<>();
        for (int person : reading.who[number]) {
            minutes.put(flat.problem.people().get(person).id(), draws.minutes(number, person));
        }
        Problem.Task drawn = Unpinned.of(task)
                .withHandsOnBy(minutes)
                .withNotBefore(Math.max(task.notBefore(), task.at().orElse(0)));
        return task.started()
                .map(begun -> drawn.withStarted(new Problem.Started(
                        begun.person(), begun.from(), draws.minutes(number, reading.who[number][0]))))
                .orElse(drawn);
    }
}
