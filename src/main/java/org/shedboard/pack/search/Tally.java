package org.shedboard.pack.search;

import java.util.Arrays;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/** What the decoder's present plan costs, and how far the jobs that do not fit are from fitting. */
final class Tally {
    private final FlatProblem flat;
    private final Decoder decoder;
    private final Costs costs;
    private final int[] seenOnStay;
    private final long unplacedPoints;
    private final long overrunPoints;

    /** Jobs that are in the plan or could be, and do not fit. */
    int unplaced;
    /** Jobs that have begun and do not fit: no plan at all. */
    int stranded;
    /** The cost of the plan without the jobs that do not fit. */
    long cost;
    /** What the search makes small: the cost, with those jobs in it, and points for each and for each minute over. */
    long energy;

    final boolean[] fits;

    Tally(Decoder decoder) {
        this.decoder = decoder;
        flat = decoder.flat;
        costs = flat.problem.costs();
        fits = new boolean[flat.jobs];
        seenOnStay = new int[flat.people];
        int heaviest =
                flat.problem.jobs().stream().mapToInt(Problem.Job::weight).max().orElse(0);
        overrunPoints = (costs.late() + costs.flow()) * heaviest + costs.makespan() + 1;
        unplacedPoints = 60 * overrunPoints;
    }

    void count() {
        if (decoder.doesNotFit) {
            countAll();
        } else {
            takeOver();
        }
    }

    /** Where everything fits, the decoder has counted along. */
    private void takeOver() {
        unplaced = 0;
        for (int job = 0; job < flat.jobs; job++) {
            fits[job] = !decoder.isLeftOut(job);
            unplaced += fits[job] ? 0 : 1;
        }
        stranded = 0;
        cost = decoder.running.points;
        energy = cost;
    }

    void countAll() {
        unplaced = 0;
        stranded = 0;
        cost = 0;
        energy = 0;
        int latest = 0;
        int latestFitting = 0;
        Arrays.fill(seenOnStay, -1);
        for (int job = 0; job < flat.jobs; job++) {
            fits[job] = false;
            if (decoder.isLeftOut(job)) {
                unplaced++;
                continue;
            }
            int finish = finishOf(job);
            fits[job] = finish <= flat.problem.horizon() && !decoder.missed[job];
            int over = Math.max(0, Math.min(finish - flat.problem.horizon(), flat.problem.horizon() + 1));
            int likely = Math.min(finish, flat.problem.horizon()) + over;
            long points = pointsOf(job, likely);
            energy += points;
            latest = Math.max(latest, likely);
            if (fits[job]) {
                cost += points;
                latestFitting = Math.max(latestFitting, finish);
            } else {
                unplaced++;
                stranded += flat.jobHasBegun[job] ? 1 : 0;
                energy += unplacedPoints * (flat.jobHasBegun[job] ? 10 : 1) + overrunPoints * over;
            }
        }
        cost += costs.makespan() * latestFitting;
        energy += costs.makespan() * latest;
    }

    int finishOf(int job) {
        int finish = 0;
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            finish = Math.max(finish, decoder.stayComplete[stay]);
        }
        return finish;
    }

    private long pointsOf(int job, int finish) {
        Problem.Job values = flat.job(job);
        long points = costs.flow() * values.weight() * finish;
        if (values.promise().isPresent()) {
            points += costs.late()
                    * values.weight()
                    * Math.max(0, finish - values.promise().getAsInt());
        }
        for (int stay = flat.firstStay[job]; stay < flat.firstStay[job + 1]; stay++) {
            points += pointsOfStay(stay);
        }
        return points;
    }

    private long pointsOfStay(int stay) {
        long points = 0;
        int different = 0;
        for (int task = flat.firstTask[stay]; task < flat.firstTask[stay + 1]; task++) {
            int slot = flat.slot[task];
            for (int member = slot; member < slot + decoder.crews.sizeOf(task); member++) {
                int person = decoder.crews.who[member];
                different += seenOnStay[person] == stay ? 0 : 1;
                seenOnStay[person] = stay;
            }
            points += overtime(task) + changes(task);
        }
        points += costs.handover() * Math.max(0, different - flat.crewOfStay[stay]);
        boolean judged = !flat.stayHasBegun[stay] && flat.postedPlace[stay] != -1 && decoder.placeOfStay[stay] >= 0;
        return points + (judged && decoder.placeOfStay[stay] != flat.postedPlace[stay] ? costs.swapped() : 0);
    }

    private long overtime(int task) {
        if (costs.overtime() == 0 || flat.state[task] == FlatProblem.DONE) {
            return 0;
        }
        int minutes = 0;
        int slot = flat.slot[task];
        for (int member = slot; member < slot + decoder.crews.sizeOf(task); member++) {
            int person = decoder.crews.who[member];
            int from = decoder.crews.work[member];
            Hours hours = flat.hours[person];
            minutes += hours.overtimeBefore(from + flat.minutes[task][person]) - hours.overtimeBefore(from);
        }
        return costs.overtime() * minutes;
    }

    private long changes(int task) {
        int posted = flat.postedStart[task];
        if (posted < 0 || flat.state[task] != FlatProblem.OPEN) {
            return 0;
        }
        boolean swapped = decoder.crews.first(task) != flat.postedPerson[task];
        boolean near = Math.abs(posted - flat.problem.now()) <= RunningCost.NEAR_MINUTES;
        long moved = (long) Math.abs(decoder.start[task] - posted) * (near ? RunningCost.NEAR_FACTOR : 1);
        return costs.moved() * moved + (swapped ? costs.swapped() : 0);
    }
}
