package org.shedboard.pack.chance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.shedboard.pack.Problem;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;
import org.shedboard.pack.numbers.Hours;

/**
 * The hands-on minutes of one drawn day after the other. Each task, job and person has a stream of draws of its own, split from the
 * seed by name, and a day is a number in all of them: one more job does not change the draws of the others, two plans can be
 * compared on the same days, and a day can be drawn again.
 */
final class DrawnMinutes {
    /** Longer than any plan, and few enough that sums of some do not overflow. */
    private static final int LONGEST = Hours.FAR / 2;

    private final FlatProblem flat;
    private final Stream[] ofTask;
    private final Stream[] ofJob;
    private final Stream[] ofPerson;
    private final double[] taskFactor;
    private final double[] jobFactor;
    private final double[] personFactor;

    DrawnMinutes(FlatProblem flat, long seed) {
        this.flat = flat;
        Map<Double, double[]> tables = new HashMap<>();
        ofTask = new Stream[flat.tasks];
        Arrays.setAll(ofTask, task -> stream(seed, "task " + nameOf(task), flat.task[task].spread(), tables));
        ofJob = new Stream[flat.jobs];
        Arrays.setAll(
                ofJob,
                job -> stream(seed, "job " + flat.job(job).id(), flat.job(job).sharedSpread(), tables));
        ofPerson = new Stream[flat.people];
        Arrays.setAll(ofPerson, index -> {
            Problem.Person person = flat.problem.people().get(index);
            return stream(seed, "person " + person.id(), person.sharedSpread(), tables);
        });
        taskFactor = new double[flat.tasks];
        jobFactor = new double[flat.jobs];
        personFactor = new double[flat.people];
    }

    private String nameOf(int task) {
        int stay = flat.stayOfTask[task];
        int index = stay - flat.firstStay[flat.jobOfStay[stay]];
        return flat.job(flat.jobOfTask[task]).id() + "\n" + index + "\n" + flat.task[task].id();
    }

    private static Stream stream(long seed, String name, double spread, Map<Double, double[]> tables) {
        double[] factors = spread == 0 ? null : tables.computeIfAbsent(spread, Quantiles::factors);
        return new Stream(Chance.of(seed, name).nextLong(), factors);
    }

    /** The draws of one name; {@code factors} is null where nothing varies. */
    private record Stream(long key, double[] factors) {
        double factor(int day) {
            return factors == null ? 1 : factors[Quantiles.index(Chance.mix(key + day))];
        }
    }

    /** From now on the minutes are those of the day of this number. */
    void draw(int day) {
        for (int job = 0; job < jobFactor.length; job++) {
            jobFactor[job] = ofJob[job].factor(day);
        }
        for (int person = 0; person < personFactor.length; person++) {
            personFactor[person] = ofPerson[person].factor(day);
        }
        for (int task = 0; task < taskFactor.length; task++) {
            taskFactor[task] = jobFactor[flat.jobOfTask[task]] * ofTask[task].factor(day);
        }
    }

    /** From now on the minutes are the middle ones, those of the problem. */
    void takeMiddle() {
        Arrays.fill(taskFactor, 1);
        Arrays.fill(personFactor, 1);
    }

    /** What the person takes for the task, or for what is left of it: at least a minute. */
    int minutes(int task, int person) {
        double drawn = flat.minutes[task][person] * taskFactor[task] * personFactor[person];
        return (int) Math.max(1, Math.min(LONGEST, drawn + 0.5));
    }
}
