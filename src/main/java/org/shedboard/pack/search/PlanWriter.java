package org.shedboard.pack.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;

/** Turns a timetable into a plan. */
final class PlanWriter {
    private final FlatProblem flat;
    private final Outlook outlook;
    private final Timetable table;

    PlanWriter(FlatProblem flat, Outlook outlook, Timetable table) {
        this.flat = flat;
        this.outlook = outlook;
        this.table = table;
    }

    Plan write() {
        List<Plan.Unplaced> unplaced = new ArrayList<>();
        List<Plan.StayPlace> stays = new ArrayList<>();
        List<Plan.TaskTime> tasks = new ArrayList<>();
        for (int job = 0; job < flat.jobs; job++) {
            if (table.fits[job]) {
                addJob(job, stays, tasks);
            } else {
                unplaced.add(new Plan.Unplaced(flat.job(job).id(), whyNot(job)));
            }
        }
        return new Plan(table.cost, outlook.bound(unplaced.size()), unplaced, stays, tasks, 0, 0, 0);
    }

    private String whyNot(int job) {
        if (flat.hopeless[job] != null) {
            return flat.hopeless[job];
        }
        return table.missed[job] ? "its pins cannot be kept" : "does not fit before the horizon";
    }

    private void addJob(int job, List<Plan.StayPlace> stays, List<Plan.TaskTime> tasks) {
        String id = flat.job(job).id();
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            int index = stay - flat.firstStay[job];
            if (table.placeOfStay[stay] >= 0) {
                String place =
                        flat.problem.places().get(table.placeOfStay[stay]).id();
                stays.add(new Plan.StayPlace(id, index, place, table.stayStart[stay], table.stayComplete[stay]));
            }
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                tasks.add(timeOf(task, id, index));
            }
        }
    }

    private Plan.TaskTime timeOf(int task, String job, int stay) {
        List<String> people = table.crewOf(task)
                .mapToObj(person -> flat.problem.people().get(person).id())
                .toList();
        Optional<String> first = people.stream().findFirst();
        List<String> with = people.isEmpty() ? List.of() : people.subList(1, people.size());
        return new Plan.TaskTime(job, stay, flat.task[task].id(), first, with, listedStart(task), table.end[task]);
    }

    /** A begun task is listed from where it began, also when it is picked up again later. */
    private int listedStart(int task) {
        return flat.task[task].started().map(Problem.Started::from).orElse(table.start[task]);
    }
}
