package org.shedboard.pack.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.PlanReading;

/** Writes down what a replay has just played, as a plan; what that costs is for others to say. */
final class ReplayWriter {
    private final FlatProblem flat;
    private final PlanReading played;
    private final Replay replay;
    private final int[] turnOf;

    ReplayWriter(FlatProblem flat, PlanReading played, Replay replay) {
        this.flat = flat;
        this.played = played;
        this.replay = replay;
        turnOf = new int[flat.tasks];
        Arrays.fill(turnOf, -1);
        for (int turn = 0; turn < played.order.length; turn++) {
            turnOf[played.order[turn]] = turn;
        }
    }

    Plan write(List<Plan.Unplaced> unplaced, long cost) {
        List<Plan.StayPlace> stays = new ArrayList<>();
        List<Plan.TaskTime> tasks = new ArrayList<>();
        for (int stay = 0; stay < flat.stays; stay++) {
            if (turnOf[flat.firstTask[stay]] >= 0) {
                addStay(stay, stays, tasks);
            }
        }
        return new Plan(cost, 0, unplaced, stays, tasks, 0, 0, 0);
    }

    private void addStay(int stay, List<Plan.StayPlace> stays, List<Plan.TaskTime> tasks) {
        int job = flat.jobOfStay[stay];
        String id = flat.job(job).id();
        int index = stay - flat.firstStay[job];
        int from = Integer.MAX_VALUE;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            Plan.TaskTime time = timeOf(task, id, index);
            from = Math.min(from, time.start());
            tasks.add(time);
        }
        int place = played.placeOfStay[stay];
        if (place >= 0) {
            String where = flat.problem.places().get(place).id();
            stays.add(new Plan.StayPlace(id, index, where, from, replay.stayCompleteOf(stay)));
        }
    }

    private Plan.TaskTime timeOf(int task, String job, int stay) {
        List<String> people = Arrays.stream(played.who[task])
                .mapToObj(person -> flat.problem.people().get(person).id())
                .toList();
        Optional<String> first = people.stream().findFirst();
        List<String> with = people.isEmpty() ? List.of() : people.subList(1, people.size());
        int turn = turnOf[task];
        return new Plan.TaskTime(
                job,
                stay,
                flat.task[task].id(),
                first,
                with,
                listedStart(task, turn),
                replay.completeOf(turn) - flat.unattended[task]);
    }

    private int listedStart(int task, int turn) {
        Problem.Task values = flat.task[task];
        if (values.done().isPresent()) {
            return values.done().get().from();
        }
        return values.started().map(Problem.Started::from).orElseGet(() -> replay.startOf(turn));
    }
}
