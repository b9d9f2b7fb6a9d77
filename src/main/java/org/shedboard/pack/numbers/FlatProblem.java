package org.shedboard.pack.numbers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/**
 * A problem as arrays of numbers, for the inner loops. Tasks are numbered job by job and stay by stay, people and places in the
 * file's order; -1 means none.
 */
public final class FlatProblem {
    /** A posted person or place that is not in the problem any more; differs from everything, also from none. */
    static final int GONE = -2;

    public static final byte OPEN = 0;
    /** Begun, and its person goes on with it from now. */
    public static final byte GOING = 1;
    /** Begun, and anyone with the skill may do what is left. */
    public static final byte INTERRUPTED = 2;

    public static final byte DONE = 3;

    public final Problem problem;
    public final int jobs;
    public final int stays;
    public final int tasks;
    public final int people;
    public final int places;

    public final Hours[] hours;
    public final int[] firstStay;
    public final int[] jobOfStay;
    public final int[] firstTask;
    public final int[] stayOfTask;
    public final int[] jobOfTask;
    public final Problem.Task[] task;

    public final int[][] before;
    public final int[][] behind;
    /** Other tasks that may not share a person with this one, either way round. */
    public final int[][] apart;

    public final byte[] state;
    public final int[] crew;
    public final int[][] able;
    /** The same as a table: task times people plus person. */
    public final boolean[] isAble;

    public final int[][] minutes;
    /** What the one with the fewest skills takes; 0 where nobody is needed or nobody is able. */
    public final int[] likelyMinutes;

    public final int[] unattended;
    public final int[] earliest;
    public final int[] at;
    /** Who goes on with it or did it; -1 when nobody is known. */
    public final int[] begunBy;
    /** Whom the foreman wants for it; -1 when anyone will do. */
    public final int[] pinnedTo;

    /** Where the task's people stand in arrays that hold everyone on every task; each has room for one at least. */
    public final int[] slot;

    public final int slots;

    public final int[] crewOfStay;
    public final int[][] placesOfStay;
    public final boolean[] stayHasBegun;
    public final Span[][] closed;

    public final boolean[] jobHasBegun;
    /** Why the job can never be placed, or null. */
    public final String[] hopeless;

    public final int[] postedStart;
    public final int[] postedPerson;
    public final int[] postedPlace;
    /** Everyone on the posted task, or null where they are not all known. */
    public final int[][] postedCrew;

    public FlatProblem(Problem problem) {
        this.problem = problem;
        List<Problem.Job> all = problem.jobs();
        jobs = all.size();
        people = problem.people().size();
        places = problem.places().size();
        firstStay = new int[jobs + 1];
        for (int job = 0; job < jobs; job++) {
            firstStay[job + 1] = firstStay[job] + all.get(job).stays().size();
        }
        stays = firstStay[jobs];
        jobOfStay = new int[stays];
        firstTask = new int[stays + 1];
        numberStays();
        tasks = firstTask[stays];
        stayOfTask = new int[tasks];
        jobOfTask = new int[tasks];
        task = new Problem.Task[tasks];
        before = new int[tasks][];
        behind = new int[tasks][];
        apart = new int[tasks][];
        state = new byte[tasks];
        crew = new int[tasks];
        able = new int[tasks][];
        isAble = new boolean[tasks * people];
        minutes = new int[tasks][people];
        likelyMinutes = new int[tasks];
        unattended = new int[tasks];
        earliest = new int[tasks];
        at = new int[tasks];
        begunBy = new int[tasks];
        pinnedTo = new int[tasks];
        slot = new int[tasks];
        crewOfStay = new int[stays];
        placesOfStay = new int[stays][];
        stayHasBegun = new boolean[stays];
        jobHasBegun = new boolean[jobs];
        hopeless = new String[jobs];
        hours = problem.people().stream()
                .map(person -> Hours.of(person, problem.horizon()))
                .toArray(Hours[]::new);
        closed = problem.places().stream()
                .map(place -> place.closed().stream()
                        .filter(span -> span.minutes() > 0)
                        .sorted(Comparator.comparingInt(Span::from))
                        .toArray(Span[]::new))
                .toArray(Span[][]::new);
        for (int stay = 0; stay < stays; stay++) {
            fillStay(stay);
        }
        int room = 0;
        for (int number = 0; number < tasks; number++) {
            apart[number] = findApart(number);
            slot[number] = room;
            room += Math.max(1, crew[number]);
        }
        slots = room;
        new Hopeless(this).mark();
        postedStart = new int[tasks];
        postedPerson = new int[tasks];
        postedPlace = new int[stays];
        postedCrew = new int[tasks][];
        fillPosted();
    }

    /** Those below the count that are as asked for. */
    public static int[] numbersOf(int count, IntPredicate asked) {
        return IntStream.range(0, count).filter(asked).toArray();
    }

    private void numberStays() {
        for (int job = 0; job < jobs; job++) {
            for (int stay = firstStay[job]; stay < firstStay[job + 1]; stay++) {
                jobOfStay[stay] = job;
                firstTask[stay + 1] = firstTask[stay] + stay(stay).tasks().size();
            }
        }
    }

    public Problem.Job job(int job) {
        return problem.jobs().get(job);
    }

    public Problem.Stay stay(int stay) {
        int job = jobOfStay[stay];
        return job(job).stays().get(stay - firstStay[job]);
    }

    /** When the task is worked on is still to be chosen. */
    public boolean isFree(int task) {
        return state[task] == OPEN || state[task] == INTERRUPTED;
    }

    public int lastTaskOfJob(int job) {
        return firstTask[firstStay[job + 1]];
    }

    public int firstTaskOfJob(int job) {
        return firstTask[firstStay[job]];
    }

    private void fillStay(int stay) {
        Problem.Stay values = stay(stay);
        stayHasBegun[stay] = values.hasBegun();
        jobHasBegun[jobOfStay[stay]] |= values.hasBegun();
        placesOfStay[stay] = findPlaces(values, job(jobOfStay[stay]).massKg());
        for (int number = firstTask[stay]; number < firstTask[stay + 1]; number++) {
            int shift = firstTask[stay];
            stayOfTask[number] = stay;
            jobOfTask[number] = jobOfStay[stay];
            task[number] = values.tasks().get(number - shift);
            before[number] = values.waitsFor(number - shift).stream()
                    .mapToInt(index -> index + shift)
                    .toArray();
            crewOfStay[stay] = Math.max(crewOfStay[stay], task[number].people());
            fillTask(number);
        }
        for (int number = firstTask[stay]; number < firstTask[stay + 1]; number++) {
            behind[number] = findBehind(stay, number);
        }
    }

    private int[] findBehind(int stay, int number) {
        List<Integer> found = new ArrayList<>();
        for (int other = firstTask[stay]; other < firstTask[stay + 1]; other++) {
            for (int waited : before[other]) {
                if (waited == number) {
                    found.add(other);
                }
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    private void fillTask(int number) {
        Problem.Task values = task[number];
        state[number] = stateOf(values);
        unattended[number] = values.unattended();
        int arrives = job(jobOfTask[number]).arrives();
        earliest[number] = Math.max(problem.now(), Math.max(arrives, values.notBefore()));
        at[number] = state[number] == OPEN ? values.at().orElse(-1) : -1;
        crew[number] = values.handsOn() == 0 ? 0 : values.people();
        begunBy[number] = personNumber(begunPerson(values));
        pinnedTo[number] = personNumber(values.person());
        for (int person = 0; person < people; person++) {
            minutes[number][person] = values.started()
                    .map(Problem.Started::left)
                    .orElse(values.minutesBy(problem.people().get(person).id()));
        }
        able[number] = findAble(values);
        boolean isDone = crew[number] > 0 && able[number].length > 0;
        likelyMinutes[number] = isDone ? minutes[number][able[number][0]] : 0;
        for (int person : able[number]) {
            isAble[number * people + person] = true;
        }
    }

    private static byte stateOf(Problem.Task task) {
        if (task.done().isPresent()) {
            return DONE;
        }
        if (task.started().isPresent()) {
            return task.started().get().person().isPresent() ? GOING : INTERRUPTED;
        }
        return OPEN;
    }

    private static Optional<String> begunPerson(Problem.Task task) {
        return task.done().isPresent()
                ? task.done().get().person()
                : task.started().flatMap(Problem.Started::person);
    }

    /** Those with the fewest skills first: the others are kept for what only they can do. */
    private int[] findAble(Problem.Task values) {
        List<Integer> found = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            if (problem.people().get(person).skills().contains(values.skill())) {
                found.add(person);
            }
        }
        found.sort(Comparator.comparingInt(
                person -> problem.people().get(person).skills().size()));
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    private int[] findPlaces(Problem.Stay values, int massKg) {
        List<Integer> found = new ArrayList<>();
        for (int number = 0; number < places; number++) {
            Problem.Place place = problem.places().get(number);
            boolean wanted = values.place().map(place.id()::equals).orElse(true);
            boolean fits = values.kinds().contains(place.kind()) && place.ratedKg() >= massKg;
            if (wanted && (fits || (values.hasBegun() && values.place().isPresent()))) {
                found.add(number);
            }
        }
        found.sort(
                Comparator.comparingInt(number -> problem.places().get(number).ratedKg()));
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    private int[] findApart(int number) {
        List<Integer> found = new ArrayList<>();
        int job = jobOfTask[number];
        for (int other = firstTaskOfJob(job); other < lastTaskOfJob(job); other++) {
            boolean named = task[number].notBy().contains(task[other].id())
                    || task[other].notBy().contains(task[number].id());
            if (other != number && named) {
                found.add(other);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    public int personNumber(Optional<String> id) {
        for (int person = 0; id.isPresent() && person < people; person++) {
            if (problem.people().get(person).id().equals(id.get())) {
                return person;
            }
        }
        return -1;
    }

    int placeNumber(String id) {
        for (int place = 0; place < places; place++) {
            if (problem.places().get(place).id().equals(id)) {
                return place;
            }
        }
        return -1;
    }

    private int[] findCrew(List<String> ids) {
        int[] crew = ids.stream().mapToInt(id -> personNumber(Optional.of(id))).toArray();
        return crew.length == 0 || Arrays.stream(crew).anyMatch(person -> person < 0) ? null : crew;
    }

    private static int knownOr(int number, boolean named) {
        return number < 0 && named ? GONE : number;
    }

    private void fillPosted() {
        Arrays.fill(postedStart, -1);
        Arrays.fill(postedPerson, -1);
        Arrays.fill(postedPlace, -1);
        if (problem.posted().isEmpty()) {
            return;
        }
        Map<List<Object>, Plan.TaskTime> times = new HashMap<>();
        problem.posted()
                .get()
                .tasks()
                .forEach(time -> times.putIfAbsent(List.of(time.job(), time.stay(), time.task()), time));
        for (int number = 0; number < tasks; number++) {
            int stay = stayOfTask[number];
            int index = stay - firstStay[jobOfStay[stay]];
            Plan.TaskTime time = times.get(List.of(job(jobOfTask[number]).id(), index, task[number].id()));
            if (time != null) {
                postedStart[number] = time.start();
                postedPerson[number] =
                        knownOr(personNumber(time.person()), time.person().isPresent());
                postedCrew[number] = crewOf(time);
            }
        }
        for (int stay = 0; stay < stays; stay++) {
            int index = stay - firstStay[jobOfStay[stay]];
            Optional<Plan.StayPlace> at =
                    problem.posted().get().findStay(job(jobOfStay[stay]).id(), index);
            postedPlace[stay] = at.isEmpty() ? -1 : knownOr(placeNumber(at.get().place()), true);
        }
    }

    private int[] crewOf(Plan.TaskTime time) {
        int[] crew = time.people().stream()
                .mapToInt(person -> personNumber(Optional.of(person)))
                .toArray();
        return crew.length == 0 || Arrays.stream(crew).anyMatch(person -> person < 0) ? null : crew;
    }
}
