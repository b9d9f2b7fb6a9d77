package org.shedboard.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns what the decoder holds into a plan. */
final class PlanWriter {
    private final FlatProblem flat;
    private final Decoder decoder;
    private final Tally tally;
    private final Outlook outlook;

    PlanWriter(Decoder decoder, Tally tally) {
        this.decoder = decoder;
        this.tally = tally;
        flat = decoder.flat;
        outlook = new Outlook(flat);
    }

    Plan write() {
        List<Plan.Unplaced> unplaced = new ArrayList<>();
        List<Plan.StayPlace> stays = new ArrayList<>();
        List<Plan.TaskTime> tasks = new ArrayList<>();
        for (int job = 0; job < flat.jobs; job++) {
            if (tally.fits[job]) {
                addJob(job, stays, tasks);
            } else {
                unplaced.add(new Plan.Unplaced(flat.job(job).id(), whyNot(job)));
            }
        }
        return new Plan(tally.cost, outlook.bound(unplaced.size()), unplaced, stays, tasks, 0, 0, 0);
    }

    private String whyNot(int job) {
        if (flat.hopeless[job] != null) {
            return flat.hopeless[job];
        }
        return decoder.missed[job] ? "its pins cannot be kept" : "does not fit before the horizon";
    }

    private void addJob(int job, List<Plan.StayPlace> stays, List<Plan.TaskTime> tasks) {
        String id = flat.job(job).id();
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            int index = stay - flat.firstStay[job];
            if (decoder.placeOfStay[stay] >= 0) {
                String place =
                        flat.problem.places().get(decoder.placeOfStay[stay]).id();
                stays.add(new Plan.StayPlace(id, index, place, decoder.stayStart[stay], decoder.stayComplete[stay]));
            }
            for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
                tasks.add(timeOf(task, id, index));
            }
        }
    }

    private Plan.TaskTime timeOf(int task, String job, int stay) {
        List<String> people = new ArrayList<>();
        for (int person : decoder.crews.who[task]) {
            people.add(flat.problem.people().get(person).id());
        }
        Optional<String> first = people.stream().findFirst();
        List<String> with = people.isEmpty() ? List.of() : people.subList(1, people.size());
        return new Plan.TaskTime(
                job, stay, flat.task[task].id(), first, with, decoder.listedStart(task), decoder.end[task]);
    }
}
