package org.shedboard.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plays one plan with drawn durations, as often as asked. Part of {@link Chances}. */
final class Replay {
    private final FlatProblem flat;
    private final Plan plan;
    /** Placed tasks in order of their start in the plan; whatever a task waits for stands before it. */
    private final int[] order;

    private final int[][] who;
    private final int[] plannedStart;
    private final int[] plannedEnd;
    private final int[] placeOfStay;
    private final int[] notBefore;
    private final Chance[] taskDraws;
    private final Chance[] jobDraws;
    private final Chance[] personDraws;

    private final double[] jobShift;
    private final double[] personShift;
    private final int[] complete;
    private final int[] stayComplete;
    private final int[] stayRemaining;
    private final int[] personFree;
    private final int[] placeFree;

    Replay(FlatProblem flat, Plan plan, long seed) {
        this.flat = flat;
        this.plan = plan;
        who = new int[flat.tasks][];
        plannedStart = new int[flat.tasks];
        plannedEnd = new int[flat.tasks];
        placeOfStay = new int[flat.stays];
        notBefore = new int[flat.tasks];
        complete = new int[flat.tasks];
        stayComplete = new int[flat.stays];
        stayRemaining = new int[flat.stays];
        personFree = new int[flat.people];
        placeFree = new int[flat.places];
        jobShift = new double[flat.jobs];
        personShift = new double[flat.people];
        order = readPlan();
        taskDraws = new Chance[flat.tasks];
        Arrays.setAll(taskDraws, task -> Chance.of(seed, "task " + nameOf(task)));
        jobDraws = new Chance[flat.jobs];
        Arrays.setAll(jobDraws, job -> Chance.of(seed, "job " + flat.job(job).id()));
        personDraws = new Chance[flat.people];
        Arrays.setAll(
                personDraws,
                person -> Chance.of(
                        seed, "person " + flat.problem.people().get(person).id()));
    }

    private String nameOf(int task) {
        int stay = flat.stayOfTask[task];
        int index = stay - flat.firstStay[flat.jobOfStay[stay]];
        return flat.job(flat.jobOfTask[task]).id() + "\n" + index + "\n" + flat.task[task].id();
    }

    private int[] readPlan() {
        Map<List<Object>, Plan.TaskTime> times = new HashMap<>();
        plan.tasks().forEach(time -> times.put(List.of(time.job(), time.stay(), time.task()), time));
        List<Integer> placed = new ArrayList<>();
        for (int task = 0; task < flat.tasks; task++) {
            int stay = flat.stayOfTask[task];
            String job = flat.job(flat.jobOfTask[task]).id();
            int index = stay - flat.firstStay[flat.jobOfStay[stay]];
            Plan.TaskTime time = times.get(List.of(job, index, flat.task[task].id()));
            if (time != null) {
                placed.add(task);
                readTime(task, time);
            }
            placeOfStay[stay] = plan.findStay(job, index)
                    .map(at -> flat.placeNumber(at.place()))
                    .orElse(-1);
            notBefore[task] = placeOfStay[stay] < 0 ? 0 : lastOpening(placeOfStay[stay], plannedStart[task]);
        }
        placed.sort(Comparator.comparingInt((Integer task) -> plannedStart[task])
                .thenComparing(task -> plannedEnd[task] + flat.unattended[task]));
        return inOrderOfWaiting(placed);
    }

    /** What the plan has after a closed time stays after it. */
    private int lastOpening(int place, int start) {
        int opening = 0;
        for (Span span : flat.closed[place]) {
            opening = span.to() <= start ? span.to() : opening;
        }
        return opening;
    }

    private void readTime(int task, Plan.TaskTime time) {
        who[task] = time.people().stream()
                .mapToInt(id -> flat.personNumber(Optional.of(id)))
                .toArray();
        plannedEnd[task] = time.end();
        plannedStart[task] = time.start();
        if (flat.state[task] == FlatProblem.INTERRUPTED && who[task].length > 0) {
            int person = who[task][0];
            Hours hours = flat.hours[person];
            plannedStart[task] = hours.wall(hours.worked(time.end()) - flat.minutes[task][person]);
        }
    }

    /** Tasks that start together are put so that none comes before one it waits for. */
    private int[] inOrderOfWaiting(List<Integer> placed) {
        List<Integer> rest = new ArrayList<>(placed);
        List<Integer> sorted = new ArrayList<>();
        boolean[] isOut = new boolean[flat.tasks];
        rest.forEach(task -> isOut[task] = true);
        while (!rest.isEmpty()) {
            int next = 0;
            while (next < rest.size() - 1 && !isFree(rest.get(next), isOut)) {
                next++;
            }
            int task = rest.remove(next);
            isOut[task] = false;
            sorted.add(task);
        }
        return sorted.stream().mapToInt(Integer::intValue).toArray();
    }

    private boolean isFree(int task, boolean[] isOut) {
        return Arrays.stream(flat.before[task]).noneMatch(waited -> isOut[waited]);
    }

    void run() {
        drawShared();
        Arrays.fill(stayComplete, 0);
        Arrays.fill(personFree, flat.problem.now());
        Arrays.fill(placeFree, 0);
        for (int stay = 0; stay < flat.stays; stay++) {
            stayRemaining[stay] = flat.firstTask[stay + 1] - flat.firstTask[stay];
        }
        for (int task : order) {
            double strength = flat.task[task].spread() * taskDraws[task].normal() + jobShift[flat.jobOfTask[task]];
            play(task, strength);
        }
    }

    private void drawShared() {
        for (int job = 0; job < flat.jobs; job++) {
            jobShift[job] = flat.job(job).sharedSpread() * jobDraws[job].normal();
        }
        for (int person = 0; person < flat.people; person++) {
            personShift[person] = flat.problem.people().get(person).sharedSpread() * personDraws[person].normal();
        }
    }

    private void play(int task, double strength) {
        int stay = flat.stayOfTask[task];
        int end = flat.state[task] == FlatProblem.DONE ? plannedEnd[task] : work(task, earliest(task, stay), strength);
        complete[task] = Math.min(Hours.FAR, end + flat.unattended[task]);
        stayComplete[stay] = Math.max(stayComplete[stay], complete[task]);
        stayRemaining[stay]--;
        if (stayRemaining[stay] == 0 && placeOfStay[stay] >= 0) {
            placeFree[placeOfStay[stay]] = Math.max(placeFree[placeOfStay[stay]], stayComplete[stay]);
        }
    }

    private int earliest(int task, int stay) {
        if (flat.state[task] == FlatProblem.GOING) {
            return flat.problem.now();
        }
        int earliest = Math.max(Math.max(flat.earliest[task], flat.at[task]), notBefore[task]);
        for (int waited : flat.before[task]) {
            earliest = Math.max(earliest, complete[waited]);
        }
        if (stay > flat.firstStay[flat.jobOfStay[stay]]) {
            earliest = Math.max(earliest, stayComplete[stay - 1]);
        }
        int place = placeOfStay[stay];
        if (place >= 0 && !flat.stayHasBegun[stay]) {
            earliest = Math.max(earliest, placeFree[place]);
        }
        return earliest;
    }

    /** The end of the work: all start together at the first minute that suits each of them. */
    private int work(int task, int earliest, double strength) {
        int start = earliest;
        boolean settled = false;
        while (!settled) {
            int before = start;
            for (int person : who[task]) {
                Hours hours = flat.hours[person];
                start = Math.max(start, hours.wall(hours.worked(Math.max(start, personFree[person]))));
            }
            settled = start == before;
        }
        int end = start;
        for (int person : who[task]) {
            double minutes = flat.minutes[task][person] * StrictMath.exp(strength + personShift[person]);
            int drawn = (int) Math.max(1, Math.min(Hours.FAR / 2, StrictMath.round(minutes)));
            personFree[person] = flat.hours[person].end(flat.hours[person].worked(start) + drawn);
            end = Math.max(end, personFree[person]);
        }
        return end;
    }

    int finishOf(Problem.Job job) {
        int number = flat.problem.jobs().indexOf(job);
        int finish = 0;
        for (int stay = flat.firstStay[number]; stay < flat.firstStay[number + 1]; stay++) {
            finish = Math.max(finish, stayComplete[stay]);
        }
        return finish;
    }
}
