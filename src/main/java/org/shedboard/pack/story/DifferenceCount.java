package org.shedboard.pack.story;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.CostParts;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/** Compares two plans of one problem. Part of {@link Difference}. */
final class DifferenceCount {
    private final FlatProblem flat;
    private final PlanReading one;
    private final PlanReading other;

    DifferenceCount(Problem problem, Plan one, Plan other) {
        flat = new FlatProblem(problem);
        this.one = new PlanReading(flat, one);
        this.other = new PlanReading(flat, other);
    }

    Difference count() {
        List<Difference.Changed> jobs = IntStream.range(0, flat.jobs)
                .mapToObj(this::compare)
                .filter(job -> !job.moves().isEmpty() || !job.before().equals(job.after()))
                .toList();
        return new Difference(jobs, flat.problem.costs().makespan() * (latest(one) - latest(other)));
    }

    private Difference.Changed compare(int job) {
        OptionalInt before = finish(one, job);
        OptionalInt after = finish(other, job);
        return new Difference.Changed(
                flat.job(job).id(),
                before.isPresent() && after.isPresent() ? moves(job) : List.of(),
                before,
                after,
                promise(flat.job(job), before, after),
                points(one, job) - points(other, job));
    }

    private OptionalInt finish(PlanReading plan, int job) {
        return IntStream.range(flat.firstTaskOfJob(job), flat.lastTaskOfJob(job))
                .filter(task -> plan.isPlaced[task])
                .map(task -> plan.end[task] + flat.unattended[task])
                .max();
    }

    private int latest(PlanReading plan) {
        return IntStream.range(0, flat.jobs)
                .map(job -> finish(plan, job).orElse(0))
                .max()
                .orElse(0);
    }

    private static Difference.Promise promise(Problem.Job job, OptionalInt before, OptionalInt after) {
        if (job.promise().isEmpty()) {
            return Difference.Promise.NONE;
        }
        int promise = job.promise().getAsInt();
        boolean was = before.isPresent() && before.getAsInt() <= promise;
        boolean is = after.isPresent() && after.getAsInt() <= promise;
        if (was == is) {
            return is ? Difference.Promise.STILL_KEPT : Difference.Promise.STILL_MISSED;
        }
        return is ? Difference.Promise.NOW_KEPT : Difference.Promise.NOW_MISSED;
    }

    private List<Difference.Move> moves(int job) {
        List<Difference.Move> moves = new ArrayList<>();
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            int index = stay - flat.firstStay[job];
            if (one.placeOfStay[stay] != other.placeOfStay[stay]) {
                moves.add(new Difference.Move.Relocated(
                        index, placeName(one.placeOfStay[stay]), placeName(other.placeOfStay[stay])));
            }
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                addMoves(moves, index, task);
            }
        }
        return moves;
    }

    private void addMoves(List<Difference.Move> moves, int stay, int task) {
        String id = flat.task[task].id();
        if (!Arrays.equals(one.who[task], other.who[task])) {
            moves.add(new Difference.Move.HandedOver(stay, id, names(one.who[task]), names(other.who[task])));
        }
        if (one.start[task] != other.start[task]) {
            moves.add(new Difference.Move.Retimed(stay, id, one.start[task], other.start[task]));
        }
    }

    private String placeName(int place) {
        return place < 0 ? "" : flat.problem.places().get(place).id();
    }

    private List<String> names(int[] people) {
        return Arrays.stream(people)
                .mapToObj(person -> flat.problem.people().get(person).id())
                .toList();
    }

    private long points(PlanReading plan, int job) {
        OptionalInt finish = finish(plan, job);
        if (finish.isEmpty()) {
            return 0;
        }
        CostParts parts = new CostParts(flat, plan);
        long points = parts.finish(job, finish.getAsInt()) + parts.people(job);
        for (int task = flat.firstTaskOfJob(job); task < flat.lastTaskOfJob(job); task++) {
            points += parts.moved(task, plan.start[task]);
            for (int person : flat.state[task] == FlatProblem.DONE ? new int[0] : plan.who[task]) {
                int from = flat.hours[person].worked(Math.max(flat.problem.now(), plan.start[task]));
                points += parts.overtime(person, from, from + flat.minutes[task][person]);
            }
        }
        return points;
    }
}
