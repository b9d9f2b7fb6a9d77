package org.shedboard.pack.lab;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.pack.Problem;

/** Where one stay is, and from when to when. */
final class StayVariables {
    final Problem.Job job;
    final int index;
    final IntVar from;
    final IntVar to;
    /** Whether it is in this place; empty where it needs none. */
    final Map<String, BoolVar> in = new LinkedHashMap<>();

    private final CpModel model;
    private final Problem problem;
    private final List<TaskVariables> tasks;
    private final Literal placed;

    StayVariables(CpModel model, Problem problem, Problem.Job job, int index, List<TaskVariables> tasks) {
        this.model = model;
        this.problem = problem;
        this.job = job;
        this.index = index;
        this.tasks = tasks;
        placed = tasks.get(0).placed;
        from = model.newIntVar(problem.now(), problem.horizon(), "from " + job.id() + "/" + index);
        to = model.newIntVar(problem.now(), problem.horizon(), "to " + job.id() + "/" + index);
        for (TaskVariables task : tasks) {
            model.addGreaterOrEqual(to, task.complete()).onlyEnforceIf(placed);
            if (!stay().hasBegun()) {
                model.addLessOrEqual(from, task.start).onlyEnforceIf(placed);
            }
        }
        if (stay().hasBegun()) {
            model.addEquality(from, problem.now());
        }
        addPlaces();
    }

    Problem.Stay stay() {
        return job.stays().get(index);
    }

    private void addPlaces() {
        if (stay().kinds().isEmpty()) {
            return;
        }
        for (Problem.Place place : problem.places()) {
            if (mayBeIn(place)) {
                in.put(place.id(), model.newBoolVar(job.id() + "/" + index + " in " + place.id()));
            }
        }
        model.addEquality(TaskVariables.sum(in.values()), placed);
    }

    private boolean mayBeIn(Problem.Place place) {
        boolean isNamed = stay().place().orElse(place.id()).equals(place.id());
        boolean isFit = stay().kinds().contains(place.kind()) && job.massKg() <= place.ratedKg();
        return isNamed && (isFit || stay().hasBegun());
    }

    void addHeld(Map<String, List<IntervalVar>> held, Map<String, List<IntervalVar>> barred) {
        if (in.isEmpty()) {
            return;
        }
        IntVar size = model.newIntVar(0, problem.horizon(), "length " + job.id() + "/" + index);
        in.forEach((place, isHere) -> {
            IntervalVar interval =
                    model.newOptionalIntervalVar(from, size, to, isHere, job.id() + "/" + index + " holds " + place);
            held.get(place).add(interval);
            if (!stay().hasBegun()) {
                barred.get(place).add(interval);
            }
        });
    }

    /** Adds what the handovers cost: different people beyond the largest crew. */
    void addHandoverCost(LinearExprBuilder cost, long each) {
        int crew = stay().tasks().stream().mapToInt(Problem.Task::people).max().orElseThrow();
        LinearExprBuilder different = LinearExpr.newBuilder();
        int most = 0;
        for (Problem.Person person : problem.people()) {
            List<BoolVar> roles = tasks.stream()
                    .filter(task -> task.by.containsKey(person.id()))
                    .map(task -> task.by.get(person.id()))
                    .toList();
            boolean isSettled =
                    tasks.stream().anyMatch(task -> task.work.settledPeople().contains(person.id()));
            if (isSettled) {
                different.add(1);
            } else if (!roles.isEmpty()) {
                BoolVar takesPart = model.newBoolVar(person.id() + " on " + job.id() + "/" + index);
                roles.forEach(role -> model.addImplication(role, takesPart));
                different.addTerm(takesPart, 1);
            }
            most += isSettled || !roles.isEmpty() ? 1 : 0;
        }
        if (most > crew) {
            IntVar handovers = model.newIntVar(0, most - crew, "handovers " + job.id() + "/" + index);
            model.addGreaterOrEqual(handovers, different.add(-crew)).onlyEnforceIf(placed);
            cost.addTerm(handovers, each);
        }
    }

    void hint(int fromMinute, int toMinute, String place) {
        model.addHint(from, Math.max(fromMinute, problem.now()));
        model.addHint(to, Math.max(toMinute, problem.now()));
        in.forEach((id, isHere) -> model.addHint((Literal) isHere, id.equals(place)));
    }
}
