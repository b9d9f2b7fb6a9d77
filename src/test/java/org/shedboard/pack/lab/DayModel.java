package org.shedboard.pack.lab;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** All of a day file's rules and its cost, as constraints. */
final class DayModel {
    private static final int SOON_MINUTES = 60;
    private static final int SOON_FACTOR = 4;

    final CpModel model = new CpModel();
    final Network network;
    final Map<String, Literal> placed = new LinkedHashMap<>();
    private final Problem problem;
    private final boolean mayLeaveOut;
    private final List<TaskVariables> tasks = new ArrayList<>();
    private final List<StayVariables> stays = new ArrayList<>();
    private final Map<String, IntVar> finishes = new LinkedHashMap<>();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();

    /** @param mayLeaveOut whether jobs that have not begun may be left out */
    DayModel(Network network, boolean mayLeaveOut) {
        this.network = network;
        this.mayLeaveOut = mayLeaveOut;
        problem = network.problem;
        for (Problem.Job job : problem.jobs()) {
            boolean isOpen = mayLeaveOut && !job.hasBegun();
            placed.put(job.id(), isOpen ? model.newBoolVar("placed " + job.id()) : model.trueLiteral());
            addJob(job);
        }
        addOrder();
        addNotBy();
        addPeople();
        addPlaces();
        addCosts();
    }

    private void addJob(Problem.Job job) {
        for (int stay = 0; stay < job.stays().size(); stay++) {
            List<TaskVariables> here = new ArrayList<>();
            for (Work work : network.of(job, stay)) {
                here.add(new TaskVariables(model, network, work, placed.get(job.id())));
            }
            tasks.addAll(here);
            stays.add(new StayVariables(model, problem, job, stay, here));
        }
    }

    private void addOrder() {
        Map<Work, TaskVariables> of = new LinkedHashMap<>();
        tasks.forEach(task -> of.put(task.work, task));
        for (TaskVariables task : tasks) {
            for (Work before : task.work.isSettled() ? List.<Work>of() : task.work.before) {
                model.addGreaterOrEqual(task.start, of.get(before).complete()).onlyEnforceIf(task.placed);
            }
        }
    }

    private void addNotBy() {
        for (TaskVariables one : tasks) {
            for (TaskVariables other : tasks) {
                boolean named = one != other
                        && one.work.job == other.work.job
                        && one.work.task.notBy().contains(other.work.task.id());
                if (named) {
                    keepApart(one, other);
                    keepApart(other, one);
                }
            }
        }
    }

    private void keepApart(TaskVariables one, TaskVariables other) {
        one.by.forEach((person, role) -> {
            if (other.work.settledPeople().contains(person)) {
                model.addEquality(role, 0);
            } else if (other.by.containsKey(person)) {
                model.addAtMostOne(new Literal[] {role, other.by.get(person)});
            }
        });
    }

    private void addPeople() {
        Map<String, List<IntervalVar>> busy = new LinkedHashMap<>();
        problem.people().forEach(person -> busy.put(person.id(), new ArrayList<>()));
        tasks.forEach(task -> task.addBusy(busy));
        busy.values().forEach(model::addNoOverlap);
    }

    private void addPlaces() {
        Map<String, List<IntervalVar>> held = new LinkedHashMap<>();
        Map<String, List<IntervalVar>> barred = new LinkedHashMap<>();
        problem.places().forEach(place -> held.put(place.id(), new ArrayList<>()));
        problem.places().forEach(place -> barred.put(place.id(), new ArrayList<>()));
        stays.forEach(stay -> stay.addHeld(held, barred));
        held.values().forEach(model::addNoOverlap);
        for (Problem.Place place : problem.places()) {
            // each alone: two closed spans of one place may overlap each other
            place.closed().stream().filter(span -> span.minutes() > 0).forEach(span -> {
                IntervalVar shut = model.newFixedInterval(span.from(), span.minutes(), "closed " + place.id());
                barred.get(place.id()).forEach(stay -> model.addNoOverlap(List.of(stay, shut)));
            });
        }
    }

    private void addCosts() {
        for (Problem.Job job : problem.jobs()) {
            addFinish(job);
        }
        IntVar latest = model.newIntVar(0, problem.horizon(), "latest");
        finishes.values().forEach(finish -> model.addGreaterOrEqual(latest, finish));
        cost.addTerm(latest, problem.costs().makespan());
        tasks.forEach(task -> task.addOvertimeCost(cost, problem.costs().overtime()));
        stays.forEach(stay -> stay.addHandoverCost(cost, problem.costs().handover()));
        tasks.forEach(this::addChanges);
        stays.forEach(this::addSwappedPlace);
    }

    private void addFinish(Problem.Job job) {
        IntVar finish = model.newIntVar(0, problem.horizon(), "finish " + job.id());
        finishes.put(job.id(), finish);
        tasks.stream()
                .filter(task -> task.work.job == job)
                .forEach(
                        task -> model.addGreaterOrEqual(finish, task.complete()).onlyEnforceIf(placed.get(job.id())));
        cost.addTerm(finish, problem.costs().flow() * job.weight());
        if (job.promise().isPresent() && job.promise().getAsInt() < problem.horizon()) {
            IntVar late = model.newIntVar(0, problem.horizon(), "late " + job.id());
            model.addGreaterOrEqual(
                    late, LinearExpr.newBuilder().add(finish).add(-job.promise().getAsInt()));
            cost.addTerm(late, problem.costs().late() * job.weight());
        }
    }

    private void addChanges(TaskVariables task) {
        Work work = task.work;
        Optional<Plan.TaskTime> posted =
                problem.posted().flatMap(plan -> plan.findTask(work.job.id(), work.stayIndex, work.task.id()));
        if (posted.isEmpty() || work.task.hasBegun()) {
            return;
        }
        int minute = posted.get().start();
        boolean isSoon = Math.abs(minute - problem.now()) <= SOON_MINUTES;
        IntVar moved = model.newIntVar(0, Math.max(minute, problem.horizon()), "moved " + work.task.id());
        model.addGreaterOrEqual(moved, LinearExpr.affine(task.start, 1, -minute))
                .onlyEnforceIf(task.placed);
        model.addGreaterOrEqual(moved, LinearExpr.affine(task.start, -1, minute))
                .onlyEnforceIf(task.placed);
        cost.addTerm(moved, problem.costs().moved() * (isSoon ? SOON_FACTOR : 1));
        addSwappedPerson(task, posted.get());
    }

    /** Where the posted person is of the crew, the plan names them first. */
    private void addSwappedPerson(TaskVariables task, Plan.TaskTime posted) {
        boolean neverBy = posted.person().isPresent()
                && !task.by.containsKey(posted.person().get());
        boolean wasNobody = posted.person().isEmpty() && task.work.crew() > 0;
        if (neverBy || wasNobody) {
            cost.addTerm(task.placed, problem.costs().swapped());
        } else if (posted.person().isPresent()) {
            addUnlessKept(task.placed, task.by.get(posted.person().get()));
        }
    }

    private void addSwappedPlace(StayVariables stay) {
        Optional<Plan.StayPlace> posted = problem.posted().flatMap(plan -> plan.findStay(stay.job.id(), stay.index));
        if (posted.isEmpty() || stay.stay().hasBegun() || stay.stay().kinds().isEmpty()) {
            return;
        }
        Literal isPlaced = placed.get(stay.job.id());
        if (stay.in.containsKey(posted.get().place())) {
            addUnlessKept(isPlaced, stay.in.get(posted.get().place()));
        } else {
            cost.addTerm(isPlaced, problem.costs().swapped());
        }
    }

    /** Kept implies placed, so this is the swap of a placed job and nothing otherwise. */
    private void addUnlessKept(Literal isPlaced, BoolVar isKept) {
        cost.addTerm(isPlaced, problem.costs().swapped());
        cost.addTerm(isKept, -problem.costs().swapped());
    }

    LinearExpr cost() {
        return cost.build();
    }

    LinearExpr placedJobs() {
        return TaskVariables.sum(placed.values());
    }

    void hint(Plan plan) {
        for (Problem.Job job : problem.jobs()) {
            boolean isIn = plan.findUnplaced(job.id()).isEmpty();
            if (mayLeaveOut && !job.hasBegun()) {
                model.addHint(placed.get(job.id()), isIn);
            }
            plan.finishOf(job).ifPresent(finish -> model.addHint(finishes.get(job.id()), finish));
        }
        for (TaskVariables task : tasks) {
            plan.findTask(task.work.job.id(), task.work.stayIndex, task.work.task.id())
                    .ifPresent(time -> hint(task, time));
        }
        for (StayVariables stay : stays) {
            plan.findStay(stay.job.id(), stay.index).ifPresent(at -> stay.hint(at.from(), at.to(), at.place()));
        }
    }

    private void hint(TaskVariables task, Plan.TaskTime time) {
        if (!task.work.isInterrupted()) {
            task.hint(time.start(), time.end(), time.people());
        }
    }

    /** Reads the plan out of a solver that found one; its cost is left at 0. */
    Plan read(CpSolver solver) {
        return new PlanReader(problem, network, solver).read(placed, tasks, stays);
    }
}
