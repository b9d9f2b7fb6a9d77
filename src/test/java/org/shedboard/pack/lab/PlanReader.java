package org.shedboard.pack.lab;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** Writes down as a plan what the solver decided: starts, people and places; ends follow from them. */
final class PlanReader {
    private final Problem problem;
    private final Network network;
    private final CpSolver solver;

    PlanReader(Problem problem, Network network, CpSolver solver) {
        this.problem = problem;
        this.network = network;
        this.solver = solver;
    }

    Plan read(Map<String, Literal> placed, List<TaskVariables> tasks, List<StayVariables> stays) {
        List<Plan.Unplaced> unplaced = new ArrayList<>();
        List<Plan.TaskTime> times = new ArrayList<>();
        List<Plan.StayPlace> places = new ArrayList<>();
        placed.forEach((job, isIn) -> {
            if (!solver.booleanValue(isIn)) {
                unplaced.add(new Plan.Unplaced(job, "left out"));
            }
        });
        tasks.stream().filter(this::isPlaced).map(this::time).forEach(times::add);
        for (StayVariables stay : stays) {
            stay.in.forEach((place, isHere) -> {
                if (solver.booleanValue(isHere)) {
                    places.add(place(stay, place, times));
                }
            });
        }
        return new Plan(0, 0, unplaced, places, times, 0, 0, 0);
    }

    private boolean isPlaced(TaskVariables task) {
        return solver.booleanValue(task.placed);
    }

    private Plan.TaskTime time(TaskVariables task) {
        Work work = task.work;
        List<String> people = new ArrayList<>(work.settledPeople());
        task.by.forEach((person, role) -> {
            if (solver.booleanValue(role)) {
                people.add(person);
            }
        });
        Optional<String> posted = problem.posted()
                .flatMap(plan -> plan.findTask(work.job.id(), work.stayIndex, work.task.id()))
                .flatMap(Plan.TaskTime::person);
        people.sort(Comparator.comparing(person -> !posted.equals(Optional.of(person))));
        int start = (int) solver.value(task.start);
        int end = work.isSettled() ? work.settledEnd : end(work, start, people);
        return new Plan.TaskTime(
                work.job.id(),
                work.stayIndex,
                work.task.id(),
                people.stream().findFirst(),
                people.isEmpty() ? List.of() : people.subList(1, people.size()),
                listedStart(work.task, start),
                end);
    }

    private int end(Work work, int start, List<String> people) {
        return people.stream()
                .mapToInt(person -> network.calendars.get(person).end(start, work.able.get(person)))
                .max()
                .orElse(start);
    }

    private static int listedStart(Problem.Task task, int start) {
        return task.done()
                .map(Problem.Done::from)
                .orElse(task.started().map(Problem.Started::from).orElse(start));
    }

    private Plan.StayPlace place(StayVariables stay, String place, List<Plan.TaskTime> times) {
        int from = Integer.MAX_VALUE;
        int to = 0;
        for (Plan.TaskTime time : times) {
            if (time.job().equals(stay.job.id()) && time.stay() == stay.index) {
                Problem.Task task = stay.stay().tasks().get(stay.stay().indexOf(time.task()));
                from = Math.min(from, time.start());
                to = Math.max(to, time.end() + task.unattended());
            }
        }
        return new Plan.StayPlace(stay.job.id(), stay.index, place, from, to);
    }
}
