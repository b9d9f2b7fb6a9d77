package org.shedboard.pack.numbers;

import java.util.Arrays;
import org.shedboard.pack.Problem;

/** Finds the jobs that no plan can hold, whatever else is left out: nobody with the skill, no place that takes the machine. */
final class Hopeless {
    private final FlatProblem flat;

    Hopeless(FlatProblem flat) {
        this.flat = flat;
    }

    void mark() {
        for (int stay = 0; stay < flat.stays; stay++) {
            if (!flat.stay(stay).kinds().isEmpty() && flat.placesOfStay[stay].length == 0) {
                flat.hopeless[flat.jobOfStay[stay]] = noPlace(flat.stay(stay), flat.job(flat.jobOfStay[stay]));
            }
        }
        for (int task = 0; task < flat.tasks; task++) {
            String why = whyNobody(task);
            if (why != null && flat.hopeless[flat.jobOfTask[task]] == null) {
                flat.hopeless[flat.jobOfTask[task]] = why;
            }
        }
    }

    private static String noPlace(Problem.Stay stay, Problem.Job job) {
        String kinds = String.join(" or ", stay.kinds());
        return stay.place()
                .map(place -> "place %s cannot take %s kg of %s work".formatted(place, job.massKg(), kinds))
                .orElse("no %s rated for %s kg".formatted(kinds, job.massKg()));
    }

    private String whyNobody(int number) {
        Problem.Task task = flat.task[number];
        boolean needsSomeone = flat.crew[number] > 0
                && (flat.state[number] == FlatProblem.OPEN || flat.state[number] == FlatProblem.INTERRUPTED);
        if (needsSomeone && flat.able[number].length < flat.crew[number]) {
            return "task %s takes %s with the skill %s, there are %s"
                    .formatted(task.id(), flat.crew[number], task.skill(), flat.able[number].length);
        }
        int pinned = pinOf(number);
        if (needsSomeone && pinned >= 0 && Arrays.stream(flat.able[number]).noneMatch(person -> person == pinned)) {
            return "task %s is pinned to %s, who has not the skill %s"
                    .formatted(task.id(), task.person().orElseThrow(), task.skill());
        }
        if (needsSomeone && Arrays.stream(flat.able[number]).allMatch(who -> isTooLong(number, who))) {
            return "task %s is longer than anyone's hours before the horizon".formatted(task.id());
        }
        if (task.unattended() > flat.problem.horizon()) {
            return "task %s runs on beyond the horizon".formatted(task.id());
        }
        return null;
    }

    private int pinOf(int number) {
        return flat.state[number] == FlatProblem.OPEN ? flat.personNumber(flat.task[number].person()) : -1;
    }

    private boolean isTooLong(int number, int person) {
        int hours = flat.hours[person].worked(flat.problem.horizon()) - flat.hours[person].worked(flat.problem.now());
        return flat.minutes[number][person] > hours;
    }
}
