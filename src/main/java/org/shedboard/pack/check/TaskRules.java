package org.shedboard.pack.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shedboard.pack.Problem;

/** Rules 1, 2 (where the work of one task lies), 4, 6, 7, 8 and notBy. */
final class TaskRules {
    private final Problem problem;
    private final Listing listing;
    private final List<Breach> breaches;

    TaskRules(Problem problem, Listing listing, List<Breach> breaches) {
        this.problem = problem;
        this.listing = listing;
        this.breaches = breaches;
    }

    void check() {
        for (Entry entry : listing.entries()) {
            checkKept(entry);
            if (!entry.isDone()) {
                checkCrew(entry);
                checkWork(entry);
            }
            if (!entry.isDone() && !entry.isGoing()) {
                checkEarliest(entry);
            }
            checkNotBy(entry);
            if (!entry.task().hasBegun()) {
                checkStayOrder(entry);
            }
            if (entry.complete() > problem.horizon()) {
                say(entry, Rule.HORIZON, "complete at %s, after the horizon %s", entry.complete(), problem.horizon());
            }
        }
    }

    private void say(Entry entry, Rule rule, String what, Object... values) {
        breaches.add(entry.breach(rule, what, values));
    }

    private void checkCrew(Entry entry) {
        List<String> people = entry.time().people();
        Set<String> different = new HashSet<>(people);
        if (different.size() != people.size() || people.size() != entry.crew()) {
            say(entry, Rule.CREW, "takes %s different people, has %s", entry.crew(), people);
        }
        if (entry.task().handsOn() == 0 && entry.time().end() != entry.time().start()) {
            say(
                    entry,
                    Rule.CREW,
                    "has no hands-on work, but ends at %s",
                    entry.time().end());
        }
        for (String id : entry.isGoing() ? List.<String>of() : people) {
            Optional<Problem.Person> person =
                    problem.people().stream().filter(one -> one.id().equals(id)).findFirst();
            if (person.isEmpty() || !person.get().skills().contains(entry.task().skill())) {
                say(
                        entry,
                        Rule.CREW,
                        "%s has not the skill %s",
                        id,
                        entry.task().skill());
            }
        }
    }

    /** Each starts inside a window, works their own minutes on from there, and the last one's end is the task's. */
    private void checkWork(Entry entry) {
        int start = entry.workStart(problem.now());
        int end = -1;
        for (String person : entry.time().people()) {
            Optional<Windows> hours = listing.hoursOf(person);
            if (hours.isPresent() && !entry.isGoing() && !hours.get().isIn(start)) {
                say(entry, Rule.HOURS, "%s is not in at %s", person, start);
            }
            List<Windows.Stretch> work = entry.workOf(person, problem.now());
            int minutes = work.stream().mapToInt(Windows.Stretch::minutes).sum();
            if (minutes != entry.minutesOf(person)) {
                say(entry, Rule.HOURS, "%s works %s of %s minutes", person, minutes, entry.minutesOf(person));
            }
            end = work.isEmpty() ? end : Math.max(end, work.get(work.size() - 1).to());
        }
        if (end >= 0 && end != entry.time().end()) {
            say(entry, Rule.CREW, "ends at %s, its people at %s", entry.time().end(), end);
        }
    }

    private void checkEarliest(Entry entry) {
        int start = entry.workStart(problem.now());
        int earliest = Math.max(
                problem.now(), Math.max(entry.job().arrives(), entry.task().notBefore()));
        if (start < earliest) {
            say(entry, Rule.EARLIEST, "starts at %s, cannot before %s", start, earliest);
        }
        Problem.Stay stay = entry.stay();
        for (int waited : stay.waitsFor(stay.indexOf(entry.task().id()))) {
            String name = stay.tasks().get(waited).id();
            for (Entry other : listing.of(entry.job(), entry.stayIndex())) {
                if (other.task().id().equals(name) && start < other.complete()) {
                    say(entry, Rule.EARLIEST, "starts at %s, %s is complete at %s", start, name, other.complete());
                }
            }
        }
    }

    private void checkStayOrder(Entry entry) {
        for (Entry other : listing.of(entry.job(), entry.stayIndex() - 1)) {
            if (entry.time().start() < other.complete()) {
                say(
                        entry,
                        Rule.STAY_ORDER,
                        "starts at %s, the stay before is complete at %s",
                        entry.time().start(),
                        other.complete());
            }
        }
    }

    private void checkNotBy(Entry entry) {
        for (Entry other : listing.of(entry.job())) {
            boolean named = entry.task().notBy().contains(other.task().id());
            boolean settled = (entry.isDone() || entry.isGoing()) && (other.isDone() || other.isGoing());
            if (named && !settled && other.time() != entry.time()) {
                for (String person : other.time().people()) {
                    if (entry.time().people().contains(person)) {
                        say(
                                entry,
                                Rule.NOT_BY,
                                "%s also does %s",
                                person,
                                other.task().id());
                    }
                }
            }
        }
    }

    private void checkKept(Entry entry) {
        Problem.Task task = entry.task();
        task.done().ifPresent(done -> {
            keep(entry, "from", done.from(), entry.time().start());
            keep(entry, "end", done.end(), entry.time().end());
            keep(entry, "person", done.person(), entry.time().person());
        });
        if (task.done().isPresent()) {
            return;
        }
        task.started().ifPresent(started -> {
            keep(entry, "from", started.from(), entry.time().start());
            if (started.person().isPresent()) {
                keep(entry, "person", started.person(), entry.time().person());
            }
        });
        if (task.started().isEmpty()) {
            checkPins(entry);
        }
    }

    private void checkPins(Entry entry) {
        Problem.Task task = entry.task();
        task.at().ifPresent(minute -> keep(entry, "at", minute, entry.time().start()));
        boolean ownPerson = task.person().map(entry.time().people()::contains).orElse(true);
        if (!ownPerson && task.handsOn() > 0) {
            say(entry, Rule.KEPT, "is pinned to %s", task.person().orElseThrow());
        }
    }

    private void keep(Entry entry, String name, Object wanted, Object found) {
        if (!wanted.equals(found)) {
            say(entry, Rule.KEPT, "%s is %s, not %s", name, wanted, found);
        }
    }
}
