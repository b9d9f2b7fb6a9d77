package org.shedboard.pack.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/**
 * The least cost of a tiny problem, by trying everything: each job in or out, each task at every minute up to the horizon by every
 * crew, each stay in every place. No starting minute is passed over as useless, so waiting for overtime to be over, for a posted
 * minute or for a better moment of somebody else needs no argument: an optimum is among what is tried. The one thing cut off is what
 * already costs as much as the best found, and every part of the cost only grows as more is decided.
 *
 * <p>A set of minutes is the bits of a long, so the horizon is below 63. Nothing is shared with {@link ExactPacker} either.
 */
final class EveryMinute {
    /** How few jobs can be left out, and the least cost with as few. */
    record Least(int unplaced, long cost) {}

    private final Problem problem;
    private final Costs costs;
    private final long[] hours;
    private final long[] overtime;
    private final long[] busy;
    private final long[] held;
    private int bestUnplaced = Integer.MAX_VALUE;
    private long bestCost = Long.MAX_VALUE;
    private int unplaced;
    private int latest;

    /** What is decided of the job at hand, task by task. */
    private final List<Decided> decided = new ArrayList<>();

    private record Decided(int stay, Problem.Task task, int start, int complete, int crew) {}

    private EveryMinute(Problem problem) {
        this.problem = problem;
        costs = problem.costs();
        int people = problem.people().size();
        hours = new long[people];
        overtime = new long[people];
        busy = new long[people];
        held = new long[problem.places().size()];
        for (int person = 0; person < people; person++) {
            overtime[person] = minutes(problem.people().get(person).overtime());
            hours[person] =
                    overtime[person] | minutes(problem.people().get(person).shifts());
        }
    }

    static Least of(Problem problem) {
        if (problem.horizon() > 60) {
            throw new IllegalArgumentException("too long to try every minute: " + problem.horizon());
        }
        EveryMinute all = new EveryMinute(problem);
        all.bookGoing();
        all.tryJob(0, 0);
        return new Least(all.bestUnplaced, all.bestCost);
    }

    private long minutes(List<Span> spans) {
        long set = 0;
        for (Span span : spans) {
            set |= minutes(span.from(), Math.min(span.to(), problem.horizon()));
        }
        return set;
    }

    private static long minutes(int from, int to) {
        return to <= from ? 0 : (1L << to) - (1L << from);
    }

    /** Who goes on with a task does so before anything else. */
    private void bookGoing() {
        for (Problem.Job job : problem.jobs()) {
            for (Problem.Stay stay : job.stays()) {
                stay.tasks().stream().filter(EveryMinute::isGoing).forEach(task -> {
                    int person = person(task.started().orElseThrow().person());
                    busy[person] |= minutes(
                            problem.now(),
                            end(person, problem.now(), task.started().get().left()));
                });
            }
        }
    }

    private static boolean isGoing(Problem.Task task) {
        return task.done().isEmpty()
                && task.started().flatMap(Problem.Started::person).isPresent();
    }

    private int person(Optional<String> id) {
        for (int person = 0; person < hours.length; person++) {
            if (id.equals(Optional.of(problem.people().get(person).id()))) {
                return person;
            }
        }
        return -1;
    }

    /** When so much work from a minute on is over, minute by minute; beyond the horizon when it does not fit. */
    private int end(int person, int start, int work) {
        int left = work;
        int minute = start;
        while (left > 0 && minute < problem.horizon()) {
            left -= (int) (hours[person] >>> minute & 1);
            minute++;
        }
        return left > 0 ? problem.horizon() + 1 : minute;
    }

    private boolean isHopeless(long cost) {
        return unplaced > bestUnplaced || (unplaced == bestUnplaced && cost >= bestCost);
    }

    private void tryJob(int index, long cost) {
        if (isHopeless(cost)) {
            return;
        }
        if (index == problem.jobs().size()) {
            bestUnplaced = unplaced;
            bestCost = cost;
            return;
        }
        List<Decided> before = new ArrayList<>(decided);
        decided.clear();
        tryStay(index, 0, cost);
        if (!problem.jobs().get(index).hasBegun()) {
            unplaced++;
            tryJob(index + 1, cost);
            unplaced--;
        }
        decided.clear();
        decided.addAll(before);
    }

    private void tryStay(int index, int stay, long cost) {
        Problem.Job job = problem.jobs().get(index);
        if (stay == job.stays().size()) {
            finishJob(index, cost);
            return;
        }
        tryTask(index, stay, 0, cost);
    }

    private void finishJob(int index, long cost) {
        int before = latest;
        int finish = decided.stream().mapToInt(Decided::complete).max().orElse(0);
        latest = Math.max(latest, finish);
        List<Decided> mine = new ArrayList<>(decided);
        tryJob(index + 1, cost + finishCost(problem.jobs().get(index), finish) + costs.makespan() * (latest - before));
        decided.clear();
        decided.addAll(mine);
        latest = before;
    }

    private long finishCost(Problem.Job job, int finish) {
        long late =
                job.promise().isPresent() ? Math.max(0, finish - job.promise().getAsInt()) : 0;
        return job.weight() * (costs.flow() * finish + costs.late() * late);
    }

    /** The next task of the stay all of whose forerunners are decided. */
    private void tryTask(int index, int stay, int count, long cost) {
        Problem.Job job = problem.jobs().get(index);
        Problem.Stay here = job.stays().get(stay);
        int finish = decided.stream().mapToInt(Decided::complete).max().orElse(0);
        if (isHopeless(cost + finishCost(job, finish))) {
            return;
        }
        if (count == here.tasks().size()) {
            tryPlaces(index, stay, cost);
            return;
        }
        for (int task = 0; task < here.tasks().size(); task++) {
            Predicate<String> isDecided = id -> decided.stream()
                    .anyMatch(one -> one.stay == stay && one.task.id().equals(id));
            boolean isNext = !isDecided.test(here.tasks().get(task).id())
                    && here.waitsFor(task).stream()
                            .allMatch(other ->
                                    isDecided.test(here.tasks().get(other).id()));
            if (isNext) {
                tryTask(index, stay, here, task, count, cost);
                return;
            }
        }
    }

    private void tryTask(int index, int stay, Problem.Stay here, int number, int count, long cost) {
        Problem.Task task = here.tasks().get(number);
        if (task.done().isPresent()) {
            int person = person(task.done().get().person());
            int crew = person < 0 ? 0 : 1 << person;
            decide(
                    index,
                    stay,
                    count,
                    cost,
                    new Decided(stay, task, 0, task.done().get().end() + task.unattended(), crew));
        } else if (isGoing(task)) {
            int person = person(task.started().orElseThrow().person());
            int end = end(person, problem.now(), task.started().get().left());
            long more = costs.overtime() * Long.bitCount(overtime[person] & minutes(problem.now(), end));
            decide(index, stay, count, cost + more, new Decided(stay, task, 0, end + task.unattended(), 1 << person));
        } else {
            int earliest = earliest(problem.jobs().get(index), stay, here, number);
            for (int start = earliest; start <= problem.horizon(); start++) {
                tryCrews(index, stay, count, cost, task, start);
            }
        }
    }

    private int earliest(Problem.Job job, int stay, Problem.Stay here, int number) {
        int earliest = Math.max(
                problem.now(), Math.max(job.arrives(), here.tasks().get(number).notBefore()));
        for (Decided one : decided) {
            boolean isWaitedFor = one.stay < stay
                    || here.waitsFor(number).stream()
                            .anyMatch(other -> here.tasks().get(other) == one.task);
            earliest = isWaitedFor ? Math.max(earliest, one.complete) : earliest;
        }
        return earliest;
    }

    private void tryCrews(int index, int stay, int count, long cost, Problem.Task task, int start) {
        boolean isPinned = task.started().isEmpty();
        if (isPinned && task.at().isPresent() && task.at().getAsInt() != start) {
            return;
        }
        int size = task.handsOn() == 0 ? 0 : task.people();
        for (int crew = 0; crew < 1 << hours.length; crew++) {
            boolean hasPinned =
                    !isPinned || size == 0 || task.person().isEmpty() || (crew >> person(task.person()) & 1) == 1;
            if (Integer.bitCount(crew) == size && hasPinned && mayDo(index, task, crew)) {
                tryCrew(index, stay, count, cost, task, start, crew);
            }
        }
    }

    private boolean mayDo(int index, Problem.Task task, int crew) {
        for (int person = 0; person < hours.length; person++) {
            boolean isIn = (crew >> person & 1) == 1;
            if (isIn && !problem.people().get(person).skills().contains(task.skill())) {
                return false;
            }
        }
        for (Decided one : decided) {
            boolean barred = task.notBy().contains(one.task.id()) && one.task != task
                    || one.task.notBy().contains(task.id());
            if (barred && (one.crew & crew) != 0) {
                return false;
            }
        }
        return true;
    }

    private void tryCrew(int index, int stay, int count, long cost, Problem.Task task, int start, int crew) {
        int end = start;
        long more = 0;
        long worked = 0;
        for (int person = 0; person < hours.length; person++) {
            if ((crew >> person & 1) == 1) {
                int minutes = task.started()
                        .map(Problem.Started::left)
                        .orElse(task.minutesBy(problem.people().get(person).id()));
                int own = end(person, start, minutes);
                boolean isFree = start < problem.horizon()
                        && own <= problem.horizon()
                        && (hours[person] >>> start & 1) == 1
                        && (busy[person] & minutes(start, own)) == 0;
                if (!isFree) {
                    return;
                }
                end = Math.max(end, own);
                worked |= hours[person] & minutes(start, own);
                more += costs.overtime() * Long.bitCount(overtime[person] & minutes(start, own));
            }
        }
        int complete = end + task.unattended();
        if (complete > problem.horizon() || (worked & closedTo(index, stay)) != 0) {
            return;
        }
        book(crew, task, start);
        Decided one = new Decided(stay, task, start, complete, crew);
        decide(index, stay, count, cost + more + changes(index, stay, task, start, crew), one);
        book(crew, task, start);
    }

    /** Minutes at which nobody may work on what already stands in the stay's place. */
    private long closedTo(int index, int stay) {
        Problem.Stay here = problem.jobs().get(index).stays().get(stay);
        return here.hasBegun() && !here.kinds().isEmpty()
                ? problem.places().stream()
                        .filter(place -> here.place().equals(Optional.of(place.id())))
                        .mapToLong(place -> minutes(place.closed()))
                        .sum()
                : 0;
    }

    /** Books the crew, or, called again, frees them. */
    private void book(int crew, Problem.Task task, int start) {
        for (int person = 0; person < hours.length; person++) {
            if ((crew >> person & 1) == 1) {
                String id = problem.people().get(person).id();
                int minutes = task.started().map(Problem.Started::left).orElse(task.minutesBy(id));
                busy[person] ^= minutes(start, end(person, start, minutes));
            }
        }
    }

    private long changes(int index, int stay, Problem.Task task, int start, int crew) {
        Optional<Plan.TaskTime> posted = problem.posted()
                .flatMap(plan -> plan.findTask(problem.jobs().get(index).id(), stay, task.id()));
        if (posted.isEmpty() || task.hasBegun()) {
            return 0;
        }
        int minute = posted.get().start();
        int factor = Math.abs(minute - problem.now()) <= 60 ? 4 : 1;
        Optional<String> person = posted.get().person();
        boolean isKept = person.isPresent() ? (crew >> person(person) & 1) == 1 : crew == 0;
        return costs.moved() * factor * Math.abs(start - minute) + (isKept ? 0 : costs.swapped());
    }

    private void decide(int index, int stay, int count, long cost, Decided one) {
        decided.add(one);
        tryTask(index, stay, count + 1, cost);
        decided.remove(decided.size() - 1);
    }

    private void tryPlaces(int index, int stay, long cost) {
        Problem.Job job = problem.jobs().get(index);
        Problem.Stay here = job.stays().get(stay);
        long withHandovers = cost + costs.handover() * handovers(here, stay);
        if (here.kinds().isEmpty()) {
            tryStay(index, stay + 1, withHandovers);
            return;
        }
        long mine = stayMinutes(here, stay);
        for (int place = 0; place < held.length; place++) {
            if ((held[place] & mine) == 0
                    && mayStand(job, here, problem.places().get(place), mine)) {
                held[place] |= mine;
                tryStay(index, stay + 1, withHandovers + swappedPlace(job, stay, place));
                held[place] &= ~mine;
            }
        }
    }

    /** The minutes from now on during which the stay has its place. */
    private long stayMinutes(Problem.Stay here, int stay) {
        int from = problem.horizon();
        int to = 0;
        for (Decided one : decided) {
            if (one.stay == stay) {
                from = Math.min(from, one.start);
                to = Math.max(to, one.complete);
            }
        }
        return minutes(here.hasBegun() ? problem.now() : from, to);
    }

    private boolean mayStand(Problem.Job job, Problem.Stay here, Problem.Place place, long mine) {
        boolean isNamed = here.place().isEmpty() || here.place().get().equals(place.id());
        boolean isFit = here.kinds().contains(place.kind())
                && job.massKg() <= place.ratedKg()
                && (minutes(place.closed()) & mine) == 0;
        return isNamed && (isFit || here.hasBegun());
    }

    private long handovers(Problem.Stay here, int stay) {
        int different = 0;
        for (Decided one : decided) {
            different |= one.stay == stay ? one.crew : 0;
        }
        int largest = here.tasks().stream().mapToInt(Problem.Task::people).max().orElse(0);
        return Math.max(0, Integer.bitCount(different) - largest);
    }

    private long swappedPlace(Problem.Job job, int stay, int place) {
        Optional<Plan.StayPlace> posted = problem.posted().flatMap(plan -> plan.findStay(job.id(), stay));
        boolean isKept = posted.isEmpty()
                || job.stays().get(stay).hasBegun()
                || posted.get().place().equals(problem.places().get(place).id());
        return isKept ? 0 : costs.swapped();
    }
}
