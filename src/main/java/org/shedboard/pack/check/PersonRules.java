package org.shedboard.pack.check;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.pack.Problem;

/** Rule 2, where it forbids one person two tasks at once. */
final class PersonRules {
    private final Problem problem;
    private final Listing listing;
    private final List<Breach> breaches;

    private record Busy(Entry entry, int from, int to) {}

    PersonRules(Problem problem, Listing listing, List<Breach> breaches) {
        this.problem = problem;
        this.listing = listing;
        this.breaches = breaches;
    }

    void check() {
        problem.people().forEach(person -> check(person.id()));
    }

    private void check(String person) {
        List<Busy> all = new ArrayList<>();
        for (Entry entry : listing.entries()) {
            List<Windows.Stretch> work = entry.workOf(person, problem.now());
            if (entry.time().people().contains(person) && !work.isEmpty()) {
                int from = entry.workStart(problem.now());
                Busy busy = new Busy(entry, from, work.get(work.size() - 1).to());
                all.forEach(other -> checkTogether(person, busy, other));
                all.add(busy);
            }
        }
    }

    private void checkTogether(String person, Busy one, Busy other) {
        if (one.from < other.to && other.from < one.to) {
            Entry second = other.entry;
            breaches.add(one.entry.breach(
                    Rule.HOURS,
                    "%s is busy with %s %s at that time",
                    person,
                    second.job().id(),
                    second.task().id()));
        }
    }
}
