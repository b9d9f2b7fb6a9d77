package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;

/** The plan's lines brought together with the problem's tasks. */
final class Listing {
    private final Problem problem;
    private final List<Breach> breaches;
    private final Map<List<Object>, Plan.TaskTime> times = new LinkedHashMap<>();
    private final Map<String, Windows> hours = new TreeMap<>();
    private final List<Entry> entries = new ArrayList<>();
    private final List<Problem.Job> placed = new ArrayList<>();

    private Listing(Problem problem, List<Breach> breaches) {
        this.problem = problem;
        this.breaches = breaches;
        problem.people().forEach(person -> hours.put(person.id(), new Windows(person)));
    }

    static Listing of(Problem problem, Plan plan, List<Breach> breaches) {
        Listing listing = new Listing(problem, breaches);
        plan.tasks().forEach(listing::note);
        Map<String, Integer> unplaced = new HashMap<>();
        plan.unplaced().forEach(left -> unplaced.merge(left.job(), 1, Integer::sum));
        for (Problem.Job job : problem.jobs()) {
            Integer times = unplaced.remove(job.id());
            if (times == null) {
                listing.place(job);
            } else {
                listing.leaveOut(job, times);
            }
        }
        unplaced.keySet().forEach(id -> breaches.add(Breach.of(Rule.LISTED, id, "no such job is in the problem")));
        listing.times.values().forEach(listing::reportSpare);
        return listing;
    }

    List<Entry> entries() {
        return entries;
    }

    List<Problem.Job> placed() {
        return placed;
    }

    List<Entry> of(Problem.Job job) {
        return entries.stream()
                .filter(entry -> entry.job().id().equals(job.id()))
                .toList();
    }

    List<Entry> of(Problem.Job job, int stay) {
        return of(job).stream().filter(entry -> entry.stayIndex() == stay).toList();
    }

    Optional<Windows> hoursOf(String person) {
        return Optional.ofNullable(hours.get(person));
    }

    private void note(Plan.TaskTime time) {
        if (times.put(key(time.job(), time.stay(), time.task()), time) != null) {
            breaches.add(new Breach(Rule.LISTED, time.job(), time.stay(), time.task(), "listed twice"));
        }
    }

    private static List<Object> key(String job, int stay, String task) {
        return List.of(job, stay, task);
    }

    private void place(Problem.Job job) {
        placed.add(job);
        for (int stay = 0; stay < job.stays().size(); stay++) {
            for (Problem.Task task : job.stays().get(stay).tasks()) {
                Plan.TaskTime time = times.remove(key(job.id(), stay, task.id()));
                if (time == null) {
                    breaches.add(new Breach(Rule.LISTED, job.id(), stay, task.id(), "not listed"));
                } else {
                    entries.add(new Entry(job, stay, task, time, hours));
                }
            }
        }
    }

    private void leaveOut(Problem.Job job, int times) {
        if (times > 1) {
            breaches.add(Breach.of(Rule.LISTED, job.id(), "listed %s times as unplaced".formatted(times)));
        }
        if (job.hasBegun()) {
            breaches.add(Breach.of(Rule.HORIZON, job.id(), "has begun and is left out"));
        }
    }

    private void reportSpare(Plan.TaskTime time) {
        boolean known = problem.jobs().stream().anyMatch(job -> job.id().equals(time.job()));
        String what = known ? "is not to be done, or its job is left out" : "no such job is in the problem";
        breaches.add(new Breach(Rule.LISTED, time.job(), time.stay(), time.task(), what));
    }
}
