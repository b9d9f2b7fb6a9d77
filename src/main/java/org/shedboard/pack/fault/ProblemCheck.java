package org.shedboard.pack.fault;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.search.Packer;

/** Finds everything in a problem that does not agree with the rest of it. No faults: it can be packed. */
public final class ProblemCheck {
    /** The largest number the day file allows, other than costs. */
    public static final int LARGEST = 10_000_000;

    private static final int BEGUN_TRIES = 500;

    private final Problem problem;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> places = new HashSet<>();
    private final Set<String> people = new HashSet<>();

    private ProblemCheck(Problem problem) {
        this.problem = problem;
    }

    public static List<Fault> faults(Problem problem) {
        ProblemCheck check = new ProblemCheck(problem);
        check.checkAll();
        if (check.faults.isEmpty()) {
            check.checkBegunCanFinish();
        }
        return List.copyOf(check.faults);
    }

    private void say(String where, String what, Object... values) {
        faults.add(new Fault(where, what.formatted(values)));
    }

    private void checkAll() {
        range("now", problem.now(), 0);
        range("horizon", problem.horizon(), 0);
        if (problem.now() > problem.horizon()) {
            say("now", "%s is after the horizon %s", problem.now(), problem.horizon());
        }
        checkPlaces();
        checkPeople();
        checkJobs();
        checkCosts();
    }

    private void range(String where, long number, int least) {
        if (number < least || number > LARGEST) {
            say(where, "%s is not from %s to %s", number, least, LARGEST);
        }
    }

    private void spread(String where, double spread) {
        if (!(spread >= 0 && spread <= 3)) {
            say(where + ".sharedSpread", "%s is not from 0 to 3", spread);
        }
    }

    private void checkPlaces() {
        for (int index = 0; index < problem.places().size(); index++) {
            Problem.Place place = problem.places().get(index);
            String where = "places[%s]".formatted(index);
            unique(where + ".id", place.id(), places);
            if (place.ratedKg() != Problem.NO_LIMIT) {
                range(where + ".ratedKg", place.ratedKg(), 0);
            }
            spans(where + ".closed", place.closed());
        }
    }

    private void checkPeople() {
        for (int index = 0; index < problem.people().size(); index++) {
            Problem.Person person = problem.people().get(index);
            String where = "people[%s]".formatted(index);
            unique(where + ".id", person.id(), people);
            spans(where + ".shifts", person.shifts());
            spans(where + ".overtime", person.overtime());
            checkWindows(where, person);
            spread(where, person.sharedSpread());
        }
    }

    private void spans(String where, List<Span> spans) {
        for (int index = 0; index < spans.size(); index++) {
            range("%s[%s][0]".formatted(where, index), spans.get(index).from(), 0);
            range("%s[%s][1]".formatted(where, index), spans.get(index).to(), 0);
        }
    }

    private record Window(String where, Span span) {}

    private void checkWindows(String where, Problem.Person person) {
        List<Window> windows = new ArrayList<>();
        for (int index = 0; index < person.shifts().size(); index++) {
            windows.add(new Window(
                    "%s.shifts[%s]".formatted(where, index), person.shifts().get(index)));
        }
        for (int index = 0; index < person.overtime().size(); index++) {
            windows.add(new Window(
                    "%s.overtime[%s]".formatted(where, index), person.overtime().get(index)));
        }
        windows.sort(Comparator.comparingInt(window -> window.span.from()));
        Window longest = windows.isEmpty() ? null : windows.get(0);
        for (Window window : windows.subList(Math.min(1, windows.size()), windows.size())) {
            if (window.span.overlaps(longest.span)) {
                say(window.where, "overlaps %s", longest.where);
            }
            longest = window.span.to() > longest.span.to() ? window : longest;
        }
    }

    private void unique(String where, String id, Set<String> known) {
        if (id.isEmpty()) {
            say(where, "is empty");
        } else if (!known.add(id)) {
            say(where, "\"%s\" is there twice", id);
        }
    }

    private void checkJobs() {
        Set<String> ids = new HashSet<>();
        for (int index = 0; index < problem.jobs().size(); index++) {
            Problem.Job job = problem.jobs().get(index);
            String where = "jobs[%s]".formatted(index);
            unique(where + ".id", job.id(), ids);
            range(where + ".weight", job.weight(), 0);
            range(where + ".massKg", job.massKg(), 0);
            range(where + ".arrives", job.arrives(), 0);
            job.promise().ifPresent(minute -> range(where + ".promise", minute, 0));
            spread(where, job.sharedSpread());
            if (job.stays().isEmpty()) {
                say(where + ".stays", "a job needs at least one stay");
            }
            new StayCheck(problem, where, job, places, people, faults).check();
        }
        checkBegunTogether();
    }

    /** Two machines cannot stand in one place, nor can anyone go on with two tasks. */
    private void checkBegunTogether() {
        Map<String, String> holders = new HashMap<>();
        Map<String, String> busy = new HashMap<>();
        for (int job = 0; job < problem.jobs().size(); job++) {
            List<Problem.Stay> stays = problem.jobs().get(job).stays();
            for (int stay = 0; stay < stays.size(); stay++) {
                String where = "jobs[%s].stays[%s]".formatted(job, stay);
                if (stays.get(stay).hasBegun() && isThereNow(stays.get(stay))) {
                    stays.get(stay).place().ifPresent(place -> once(where + ".place", place, holders));
                }
                checkGoingOn(where, stays.get(stay), busy);
            }
        }
    }

    private boolean isThereNow(Problem.Stay stay) {
        return stay.tasks().stream()
                .anyMatch(task -> task.done().isEmpty() || task.done().get().end() + task.unattended() > problem.now());
    }

    private void checkGoingOn(String where, Problem.Stay stay, Map<String, String> busy) {
        for (int index = 0; index < stay.tasks().size(); index++) {
            Problem.Task task = stay.tasks().get(index);
            String at = "%s.tasks[%s].started.person".formatted(where, index);
            if (task.done().isEmpty()) {
                task.started().flatMap(Problem.Started::person).ifPresent(person -> once(at, person, busy));
            }
        }
    }

    private void once(String where, String id, Map<String, String> taken) {
        String first = taken.putIfAbsent(id, where);
        if (first != null) {
            say(where, "\"%s\" is taken by %s", id, first);
        }
    }

    /** Sums of the search and the checker must stay within 64 bits, with room to spare. */
    private void checkCosts() {
        Costs costs = problem.costs();
        long[] points = {
            costs.late(),
            costs.overtime(),
            costs.flow(),
            costs.handover(),
            costs.makespan(),
            costs.moved(),
            costs.swapped()
        };
        BigInteger sum = BigInteger.ZERO;
        for (long weight : points) {
            if (weight < 0) {
                say("costs", "%s is below 0", weight);
            }
            sum = sum.add(BigInteger.valueOf(weight));
        }
        long weights = 1;
        long tasks = 1;
        for (Problem.Job job : problem.jobs()) {
            weights += Math.max(0, job.weight());
            tasks += job.stays().stream().mapToInt(stay -> stay.tasks().size()).sum();
        }
        BigInteger most = sum.multiply(BigInteger.valueOf(weights + 4 * tasks))
                .multiply(BigInteger.valueOf(Math.max(1, problem.horizon())));
        if (most.bitLength() > 52) {
            say("costs", "are so large that a plan's cost would not fit into 64 bits");
        }
    }

    private void checkBegunCanFinish() {
        List<Problem.Job> begun =
                problem.jobs().stream().filter(Problem.Job::hasBegun).toList();
        if (begun.isEmpty()) {
            return;
        }
        Plan plan = Packer.packBegun(problem.withJobs(begun), BEGUN_TRIES);
        for (Plan.Unplaced left : plan.unplaced()) {
            int index = 0;
            while (!problem.jobs().get(index).id().equals(left.job())) {
                index++;
            }
            say("jobs[%s]".formatted(index), "has begun and cannot be finished by the horizon: %s", left.why());
        }
    }
}
