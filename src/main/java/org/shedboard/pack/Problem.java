package org.shedboard.pack;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

/**
 * One packing problem: who and what there is, what is to be done, and the plan now on the board. Time is whole minutes from an
 * arbitrary minute 0. {@code fault.ProblemCheck} says whether its parts agree with each other.
 *
 * @param now work that has not begun starts at this minute or later
 * @param horizon nothing may end after this
 * @param origin which moment minute 0 is, for display only
 */
public record Problem(
        int now,
        int horizon,
        Costs costs,
        List<Place> places,
        List<Person> people,
        List<Job> jobs,
        Optional<Plan> posted,
        Optional<String> origin) {

    /** The rated load of a place that has no limit. */
    public static final int NO_LIMIT = Integer.MAX_VALUE;

    public Problem {
        places = List.copyOf(places);
        people = List.copyOf(people);
        jobs = List.copyOf(jobs);
    }

    public static Problem of(int now, int horizon, List<Place> places, List<Person> people, List<Job> jobs) {
        return new Problem(now, horizon, Costs.STANDARD, places, people, jobs, Optional.empty(), Optional.empty());
    }

    public Problem withNow(int minute) {
        return new Problem(minute, horizon, costs, places, people, jobs, posted, origin);
    }

    public Problem withCosts(Costs changed) {
        return new Problem(now, horizon, changed, places, people, jobs, posted, origin);
    }

    public Problem withPlaces(List<Place> changed) {
        return new Problem(now, horizon, costs, changed, people, jobs, posted, origin);
    }

    public Problem withPeople(List<Person> changed) {
        return new Problem(now, horizon, costs, places, changed, jobs, posted, origin);
    }

    public Problem withJobs(List<Job> changed) {
        return new Problem(now, horizon, costs, places, people, changed, posted, origin);
    }

    public Problem withPosted(Plan plan) {
        return new Problem(now, horizon, costs, places, people, jobs, Optional.of(plan), origin);
    }

    /** Where a machine can stand; it is out of use during {@code closed}. */
    public record Place(String id, String kind, int ratedKg, List<Span> closed) {
        public Place {
            closed = List.copyOf(closed);
        }

        public static Place of(String id, String kind) {
            return new Place(id, kind, NO_LIMIT, List.of());
        }

        public Place withRatedKg(int kg) {
            return new Place(id, kind, kg, closed);
        }

        public Place withClosed(Span... spans) {
            return new Place(id, kind, ratedKg, List.of(spans));
        }
    }

    /** Someone who works. {@code sharedSpread} shifts all their minutes of one replay together. */
    public record Person(String id, Set<String> skills, List<Span> shifts, List<Span> overtime, double sharedSpread) {
        public Person {
            skills = Collections.unmodifiableSet(new LinkedHashSet<>(skills));
            shifts = List.copyOf(shifts);
            overtime = List.copyOf(overtime);
        }

        public static Person of(String id, Set<String> skills, Span... shifts) {
            return new Person(id, skills, List.of(shifts), List.of(), 0);
        }

        public Person withOvertime(Span... spans) {
            return new Person(id, skills, shifts, List.of(spans), sharedSpread);
        }

        public Person withSharedSpread(double spread) {
            return new Person(id, skills, shifts, overtime, spread);
        }
    }

    /** One machine's work. {@code promise} is the minute by which its owner was told it is done. */
    public record Job(
            String id,
            int weight,
            int massKg,
            int arrives,
            OptionalInt promise,
            double sharedSpread,
            List<Stay> stays) {
        public Job {
            stays = List.copyOf(stays);
        }

        public static Job of(String id, Stay... stays) {
            return new Job(id, 1, 0, 0, OptionalInt.empty(), 0, List.of(stays));
        }

        public boolean hasBegun() {
            return stays.stream().anyMatch(Stay::hasBegun);
        }

        public Job withWeight(int changed) {
            return new Job(id, changed, massKg, arrives, promise, sharedSpread, stays);
        }

        public Job withMassKg(int kg) {
            return new Job(id, weight, kg, arrives, promise, sharedSpread, stays);
        }

        public Job withArrives(int minute) {
            return new Job(id, weight, massKg, minute, promise, sharedSpread, stays);
        }

        public Job withPromise(int minute) {
            return new Job(id, weight, massKg, arrives, OptionalInt.of(minute), sharedSpread, stays);
        }

        public Job withSharedSpread(double spread) {
            return new Job(id, weight, massKg, arrives, promise, spread, stays);
        }

        public Job withStays(List<Stay> changed) {
            return new Job(id, weight, massKg, arrives, promise, sharedSpread, changed);
        }
    }

    /** Work in one place. No kinds: it needs no place. {@code place} is where it already is or is pinned to. */
    public record Stay(List<String> kinds, Optional<String> place, List<Task> tasks) {
        public Stay {
            kinds = List.copyOf(kinds);
            tasks = List.copyOf(tasks);
        }

        public static Stay of(String kind, Task... tasks) {
            return new Stay(List.of(kind), Optional.empty(), List.of(tasks));
        }

        public static Stay of(List<String> kinds, Task... tasks) {
            return new Stay(kinds, Optional.empty(), List.of(tasks));
        }

        public static Stay nowhere(Task... tasks) {
            return new Stay(List.of(), Optional.empty(), List.of(tasks));
        }

        public boolean hasBegun() {
            return tasks.stream().anyMatch(Task::hasBegun);
        }

        /** Where the tasks stand in the list that this one waits for; an unknown name is passed over. */
        public List<Integer> waitsFor(int index) {
            Task task = tasks.get(index);
            if (task.after.isEmpty()) {
                return index == 0 ? List.of() : List.of(index - 1);
            }
            return task.after.get().stream()
                    .map(this::indexOf)
                    .filter(at -> at >= 0)
                    .distinct()
                    .toList();
        }

        /** The task's place in the list, -1 when there is none of that name. */
        public int indexOf(String task) {
            for (int index = 0; index < tasks.size(); index++) {
                if (tasks.get(index).id.equals(task)) {
                    return index;
                }
            }
            return -1;
        }

        public Stay withPlace(String id) {
            return new Stay(kinds, Optional.of(id), tasks);
        }

        public Stay withTasks(List<Task> changed) {
            return new Stay(kinds, place, changed);
        }
    }

    /** A begun task; {@code left} are the hands-on minutes still expected. Nobody named: it is interrupted. */
    public record Started(Optional<String> person, int from, int left) {}

    /** A task whose hands-on work is over; its unattended minutes may still run. */
    public record Done(Optional<String> person, int from, int end) {}

    /**
     * A piece of hands-on work, which unattended minutes may follow.
     *
     * @param after tasks of the same stay it waits for; empty means the task before it in the list
     * @param handsOnBy other hands-on minutes for single people
     * @param notBy tasks of the same job: whoever does one of those may not do this one
     * @param spread standard deviation of the logarithm of the hands-on minutes
     */
    public record Task(
            String id,
            String skill,
            int handsOn,
            int unattended,
            Optional<List<String>> after,
            Map<String, Integer> handsOnBy,
            int people,
            List<String> notBy,
            int notBefore,
            Optional<String> person,
            OptionalInt at,
            double spread,
            Optional<Started> started,
            Optional<Done> done) {
        public Task {
            after = after.map(List::copyOf);
            handsOnBy = Collections.unmodifiableMap(new LinkedHashMap<>(handsOnBy));
            notBy = List.copyOf(notBy);
        }

        public static Task of(String id, String skill, int handsOn) {
            return new Task(
                    id,
                    skill,
                    handsOn,
                    0,
                    Optional.empty(),
                    Map.of(),
                    1,
                    List.of(),
                    0,
                    Optional.empty(),
                    OptionalInt.empty(),
                    0,
                    Optional.empty(),
                    Optional.empty());
        }

        public boolean hasBegun() {
            return started.isPresent() || done.isPresent();
        }

        /** The hands-on minutes this person would take for the whole task. */
        public int minutesBy(String who) {
            return handsOnBy.getOrDefault(who, handsOn);
        }

        public Task withSkill(String other) {
            return changed(draft -> draft.skill = other);
        }

        public Task withHandsOn(int minutes) {
            return changed(draft -> draft.handsOn = minutes);
        }

        public Task withUnattended(int minutes) {
            return changed(draft -> draft.unattended = minutes);
        }

        public Task withAfter(String... tasks) {
            return changed(draft -> draft.after = Optional.of(List.of(tasks)));
        }

        public Task withHandsOnBy(Map<String, Integer> minutes) {
            return changed(draft -> draft.handsOnBy = minutes);
        }

        public Task withPeople(int count) {
            return changed(draft -> draft.people = count);
        }

        public Task withNotBy(String... tasks) {
            return changed(draft -> draft.notBy = List.of(tasks));
        }

        public Task withNotBefore(int minute) {
            return changed(draft -> draft.notBefore = minute);
        }

        public Task withPerson(String who) {
            return changed(draft -> draft.person = Optional.of(who));
        }

        public Task withAt(int minute) {
            return changed(draft -> draft.at = OptionalInt.of(minute));
        }

        public Task withSpread(double deviation) {
            return changed(draft -> draft.spread = deviation);
        }

        public Task withStarted(Started begun) {
            return changed(draft -> draft.started = Optional.of(begun));
        }

        public Task withDone(Done over) {
            return changed(draft -> draft.done = Optional.of(over));
        }

        private Task changed(Consumer<TaskDraft> change) {
            TaskDraft draft = new TaskDraft(this);
            change.accept(draft);
            return draft.finish();
        }
    }
}
