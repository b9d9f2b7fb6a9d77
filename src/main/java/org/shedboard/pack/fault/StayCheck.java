package org.shedboard.pack.fault;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.Hours;

/** The part of {@link ProblemCheck} that looks at one job's stays and tasks. */
final class StayCheck {
    private final Problem problem;
    private final String where;
    private final Problem.Job job;
    private final Set<String> places;
    private final Set<String> people;
    private final List<Fault> faults;

    StayCheck(
            Problem problem,
            String where,
            Problem.Job job,
            Set<String> places,
            Set<String> people,
            List<Fault> faults) {
        this.problem = problem;
        this.where = where;
        this.job = job;
        this.places = places;
        this.people = people;
        this.faults = faults;
    }

    private void say(String at, String what, Object... values) {
        faults.add(new Fault(at, what.formatted(values)));
    }

    void check() {
        for (int index = 0; index < job.stays().size(); index++) {
            Problem.Stay stay = job.stays().get(index);
            String at = "%s.stays[%s]".formatted(where, index);
            checkStay(at, stay);
            if (index > 0 && stay.hasBegun()) {
                checkIsOver(
                        "%s.stays[%s]".formatted(where, index - 1), job.stays().get(index - 1));
            }
        }
    }

    private void checkIsOver(String at, Problem.Stay stay) {
        if (stay.tasks().stream().anyMatch(task -> task.done().isEmpty())) {
            say(at, "is not finished, but a later stay has begun");
        }
    }

    private void checkStay(String at, Problem.Stay stay) {
        if (stay.tasks().isEmpty()) {
            say(at + ".tasks", "a stay needs at least one task");
        }
        stay.place().ifPresent(place -> checkPlace(at + ".place", stay, place));
        if (stay.hasBegun() && stay.place().isEmpty() && !stay.kinds().isEmpty()) {
            say(at + ".place", "a stay that has begun needs its place");
        }
        Set<String> ids = new HashSet<>();
        for (int index = 0; index < stay.tasks().size(); index++) {
            Problem.Task task = stay.tasks().get(index);
            String there = "%s.tasks[%s]".formatted(at, index);
            if (task.id().isEmpty()) {
                say(there + ".id", "is empty");
            } else if (!ids.add(task.id())) {
                say(there + ".id", "\"%s\" is there twice", task.id());
            }
            checkTask(there, stay, task);
        }
        checkCircle(at, stay);
    }

    private void checkPlace(String at, Problem.Stay stay, String place) {
        if (!places.contains(place)) {
            say(at, "no place \"%s\"", place);
        } else if (stay.kinds().isEmpty()) {
            say(at, "a stay without kinds of place cannot be in \"%s\"", place);
        }
    }

    private void checkTask(String at, Problem.Stay stay, Problem.Task task) {
        range(at + ".handsOn", task.handsOn(), 0);
        range(at + ".unattended", task.unattended(), 0);
        range(at + ".people", task.people(), 1);
        range(at + ".notBefore", task.notBefore(), 0);
        task.at().ifPresent(minute -> range(at + ".at", minute, 0));
        if (task.handsOn() == 0 && task.unattended() == 0) {
            say(at + ".handsOn", "a task lasts at least one minute, with its unattended ones");
        }
        if (!(task.spread() >= 0 && task.spread() <= 3)) {
            say(at + ".spread", "%s is not from 0 to 3", task.spread());
        }
        checkNames(at, stay, task);
        task.handsOnBy().forEach((person, minutes) -> {
            person(at + ".handsOnBy", Optional.of(person));
            range("%s.handsOnBy.%s".formatted(at, person), minutes, 1);
        });
        person(at + ".person", task.person());
        checkBegun(at, stay, task);
    }

    private void range(String at, int number, int least) {
        if (number < least || number > ProblemCheck.LARGEST) {
            say(at, "%s is not from %s to %s", number, least, ProblemCheck.LARGEST);
        }
    }

    private void person(String at, Optional<String> id) {
        if (id.isPresent() && !people.contains(id.get())) {
            say(at, "no person \"%s\"", id.get());
        }
    }

    private void checkNames(String at, Problem.Stay stay, Problem.Task task) {
        List<String> after = task.after().orElse(List.of());
        for (int index = 0; index < after.size(); index++) {
            if (stay.indexOf(after.get(index)) < 0) {
                say("%s.after[%s]".formatted(at, index), "no task \"%s\" in this stay", after.get(index));
            }
        }
        for (int index = 0; index < task.notBy().size(); index++) {
            String name = task.notBy().get(index);
            boolean known = job.stays().stream()
                    .flatMap(one -> one.tasks().stream())
                    .anyMatch(other -> other != task && other.id().equals(name));
            if (!known) {
                say("%s.notBy[%s]".formatted(at, index), "no other task \"%s\" in this job", name);
            }
        }
    }

    private void checkBegun(String at, Problem.Stay stay, Problem.Task task) {
        if (task.started().isPresent() && task.done().isPresent()) {
            say(at, "is done and started at once");
        }
        task.started().ifPresent(started -> {
            range(at + ".started.from", started.from(), 0);
            range(at + ".started.left", started.left(), 1);
            person(at + ".started.person", started.person());
            notAfterNow(at + ".started.from", started.from());
            if (task.handsOn() == 0) {
                say(at + ".started", "a task without hands-on work is done as soon as it has begun");
            }
            started.person().ifPresent(person -> checkGoesOnInClosed(at, stay, person, started.left()));
        });
        task.done().ifPresent(done -> {
            range(at + ".done.from", done.from(), 0);
            range(at + ".done.end", done.end(), 0);
            person(at + ".done.person", done.person());
            notAfterNow(at + ".done.end", done.end());
            if (done.end() < done.from()) {
                say(at + ".done.end", "%s is before its start %s", done.end(), done.from());
            }
        });
    }

    private void notAfterNow(String at, int minute) {
        if (minute > problem.now()) {
            say(at, "%s is after now, %s", minute, problem.now());
        }
    }

    /** Whoever goes on does so from now; where the place is closed meanwhile, the task has to be interrupted first. */
    private void checkGoesOnInClosed(String at, Problem.Stay stay, String id, int left) {
        Optional<Problem.Person> person =
                problem.people().stream().filter(one -> one.id().equals(id)).findFirst();
        Optional<Problem.Place> place = problem.places().stream()
                .filter(one -> stay.place().equals(Optional.of(one.id())))
                .findFirst();
        if (person.isEmpty() || place.isEmpty()) {
            return;
        }
        Hours hours = Hours.of(person.get(), problem.horizon());
        int from = hours.worked(problem.now());
        for (Span closed : place.get().closed()) {
            int shut = hours.worked(closed.from());
            int open = hours.worked(closed.to());
            if (shut < open && from < open && shut < from + left) {
                say(
                        at + ".started",
                        "%s goes on while %s is closed from %s to %s",
                        id,
                        place.get().id(),
                        closed.from(),
                        closed.to());
            }
        }
    }

    private void checkCircle(String at, Problem.Stay stay) {
        boolean[] free = new boolean[stay.tasks().size()];
        boolean more = true;
        while (more) {
            more = false;
            for (int task = 0; task < free.length; task++) {
                if (!free[task] && stay.waitsFor(task).stream().allMatch(waited -> free[waited])) {
                    free[task] = true;
                    more = true;
                }
            }
        }
        Set<String> stuck = stay.tasks().stream()
                .filter(task -> !free[stay.tasks().indexOf(task)])
                .map(Problem.Task::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (!stuck.isEmpty()) {
            say(at + ".tasks", "wait for each other in a circle: %s", String.join(", ", stuck));
        }
    }
}
