package org.shedboard.pack.lab;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.check.PlanCheck;

/** Packs a problem with a general constraint solver, which proves that nothing is better when it has the time. */
final class ExactPacker {
    private final Problem problem;
    private final ExactLimit limit;
    private final long began = System.nanoTime();

    private ExactPacker(Problem problem, ExactLimit limit) {
        this.problem = problem;
        this.limit = limit;
    }

    /** Every plan in the answer has been through the checker; {@link NativeSolver} says whether this can be called here. */
    static ExactAnswer pack(Problem problem, ExactLimit limit) {
        NativeSolver.load();
        return new ExactPacker(problem, limit).pack();
    }

    private double secondsLeft() {
        return Math.max(0.01, limit.seconds() - (System.nanoTime() - began) / 1e9);
    }

    private ExactAnswer pack() {
        Optional<Plan> hint = limit.hint();
        boolean isFull = hint.isPresent() && hint.get().unplaced().isEmpty();
        if (isFull) {
            return cheapest(0, hint, true);
        }
        DayModel day = new DayModel(new Network(problem), true);
        day.model.maximize(day.placedJobs());
        hint.ifPresent(day::hint);
        CpSolver solver = solver();
        CpSolverStatus status = solver.solve(day.model);
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return new ExactAnswer(false, hint, 0);
        }
        Plan found = priced(day.read(solver));
        Plan start = hint.filter(plan -> !found.isBetterThan(plan)).orElse(found);
        return cheapest(start.unplaced().size(), Optional.of(start), status == CpSolverStatus.OPTIMAL);
    }

    /** The cheapest plan that leaves out so many jobs; {@code isLeast} says whether it is proven that fewer cannot be. */
    private ExactAnswer cheapest(int leftOut, Optional<Plan> start, boolean isLeast) {
        Network network = new Network(problem);
        if (leftOut == 0) {
            start.ifPresent(plan -> new CostLimits(network, plan.cost()).tighten());
        }
        DayModel day = new DayModel(network, leftOut > 0);
        day.model.minimize(day.cost());
        if (leftOut > 0) {
            day.model.addEquality(day.placedJobs(), problem.jobs().size() - leftOut);
        }
        start.ifPresent(plan -> {
            day.hint(plan);
            day.model.addLessOrEqual(day.cost(), plan.cost());
        });
        return answer(day, start, isLeast);
    }

    private ExactAnswer answer(DayModel day, Optional<Plan> start, boolean isLeast) {
        CpSolver solver = solver();
        CpSolverStatus status = solver.solve(day.model);
        if (status == CpSolverStatus.INFEASIBLE || status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the model is " + status + ": " + day.model.validate());
        }
        long bound = Math.max(0, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6));
        if (status == CpSolverStatus.UNKNOWN) {
            return new ExactAnswer(false, start, isLeast ? bound : 0);
        }
        Plan plan = priced(day.read(solver));
        long said = Math.round(solver.objectiveValue());
        boolean isOptimal = status == CpSolverStatus.OPTIMAL;
        if (plan.cost() > said || (isOptimal && plan.cost() != said)) {
            throw new IllegalStateException("the solver says %s, the plan costs %s".formatted(said, plan.cost()));
        }
        return new ExactAnswer(isLeast && isOptimal, Optional.of(plan), isLeast ? bound : 0);
    }

    private CpSolver solver() {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(secondsLeft())
                .setMaxDeterministicTime(limit.effort())
                .setNumWorkers(limit.workers());
        return solver;
    }

    private Plan priced(Plan plan) {
        long cost = PlanCheck.of(problem, plan).cost();
        Plan priced = new Plan(cost, 0, plan.unplaced(), plan.stays(), plan.tasks(), 0, 0, 0);
        PlanCheck check = PlanCheck.of(problem, priced);
        if (!check.isLegal()) {
            throw new IllegalStateException("the solver's plan breaks a rule:\n" + check);
        }
        return priced;
    }
}
