package org.shedboard.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shedboard.pack.fault.ProblemCheck;
import org.shedboard.pack.numbers.Chance;

/**
 * Days that went as planned until mid-morning, when something happens: someone goes home sick, a hoist is out, a machine walks in, a
 * task takes longer. The plan is posted, and moving what it says costs. All numbers are invented.
 */
public final class ReplanDays {
    /** What happens. */
    public enum Event {
        SICK,
        HOIST_OUT,
        WALK_IN,
        LATE_FINISH
    }

    private static final int TONIGHT = 540;
    private static final int NEXT_DAY = 1440;

    private final Chance chance;
    private final int now;
    private final Problem day;

    private ReplanDays(Problem before, Plan plan, long seed) {
        chance = Chance.of(seed, "replan");
        now = before.now() + 120 + chance.below(120);
        Problem costly = before.withCosts(before.costs().withStability(1, 20));
        day = LaterDay.of(costly, plan, now, (time, minute) -> asPlanned(before, time, minute));
    }

    /**
     * The day after its event: the one wanted, or the next one that can happen and leaves a day that can be packed.
     *
     * @param plan of the day before it began
     */
    public static Problem of(Problem before, Plan plan, Event wanted, long seed) {
        Event[] events = Event.values();
        return Stream.iterate(wanted.ordinal(), event -> event + 1)
                .limit(events.length)
                .map(event -> find(before, plan, events[event % events.length], seed))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing can happen on this day, seed " + seed));
    }

    /** The day after this event; empty where it cannot happen, or leaves a day that cannot be packed. */
    public static Optional<Problem> find(Problem before, Plan plan, Event event, long seed) {
        return new ReplanDays(before, plan, seed)
                .after(event)
                .filter(day -> ProblemCheck.faults(day).isEmpty());
    }

    private static Problem.Started asPlanned(Problem before, Plan.TaskTime time, int now) {
        int left = before.people().stream()
                .filter(person -> time.person().equals(Optional.of(person.id())))
                .mapToInt(person -> workingMinutes(person, now, time.end()))
                .sum();
        return new Problem.Started(time.person(), time.start(), Math.max(1, left));
    }

    private static int workingMinutes(Problem.Person person, int from, int to) {
        return Stream.concat(person.shifts().stream(), person.overtime().stream())
                .mapToInt(span -> Math.max(0, Math.min(to, span.to()) - Math.max(from, span.from())))
                .sum();
    }

    private Optional<Problem> after(Event event) {
        return switch (event) {
            case SICK ->
                Optional.of(
                        withoutPerson(day.people().get(chance.below(day.people().size()))));
            case HOIST_OUT -> withoutHoist();
            case WALK_IN -> Optional.of(withWalkIn());
            case LATE_FINISH -> withLateFinish();
        };
    }

    /** Home for the rest of the day; what they were at is interrupted. */
    private Problem withoutPerson(Problem.Person sick) {
        List<Problem.Person> people = new ArrayList<>(day.people());
        people.set(
                people.indexOf(sick),
                new Problem.Person(
                        sick.id(),
                        sick.skills(),
                        untilNowAndFromTomorrow(sick.shifts()),
                        untilNowAndFromTomorrow(sick.overtime()),
                        sick.sharedSpread()));
        return withTasks((stay, task) -> isBy(task, sick.id()) ? interrupted(task) : task)
                .withPeople(people);
    }

    private List<Span> untilNowAndFromTomorrow(List<Span> spans) {
        return spans.stream()
                .filter(span -> span.from() < now || span.from() >= NEXT_DAY)
                .map(span -> span.from() < now && now < span.to() ? Span.of(span.from(), now) : span)
                .toList();
    }

    private static boolean isBy(Problem.Task task, String person) {
        return task.started().flatMap(Problem.Started::person).equals(Optional.of(person));
    }

    private static Problem.Task interrupted(Problem.Task task) {
        Problem.Started started = task.started().orElseThrow();
        return task.withStarted(new Problem.Started(Optional.empty(), started.from(), started.left()));
    }

    /** Out for some hours; work on what stands on it is interrupted. */
    private Optional<Problem> withoutHoist() {
        List<Problem.Place> places = new ArrayList<>(day.places());
        List<Integer> hoists = IntStream.range(0, places.size())
                .filter(index -> places.get(index).kind().equals("hoist"))
                .boxed()
                .toList();
        if (hoists.isEmpty()) {
            return Optional.empty();
        }
        int index = hoists.get(chance.below(hoists.size()));
        Problem.Place out = places.get(index);
        places.set(index, out.withClosed(Span.of(now, now + 60 + chance.below(240))));
        return Optional.of(withTasks((stay, task) -> {
                    boolean isOnIt = stay.place().equals(Optional.of(out.id()));
                    return isOnIt
                                    && task.started()
                                            .flatMap(Problem.Started::person)
                                            .isPresent()
                            ? interrupted(task)
                            : task;
                })
                .withPlaces(places));
    }

    private Problem withWalkIn() {
        List<Problem.Job> jobs = new ArrayList<>(day.jobs());
        Problem.Job like = jobs.get(chance.below(jobs.size()));
        List<Problem.Stay> fresh = new ArrayList<>();
        for (Problem.Stay stay : like.stays()) {
            fresh.add(Problem.Stay.of(
                    stay.kinds(), stay.tasks().stream().map(ReplanDays::fresh).toArray(Problem.Task[]::new)));
        }
        jobs.add(Problem.Job.of("walk-in", fresh.toArray(Problem.Stay[]::new))
                .withWeight(2)
                .withMassKg(like.massKg())
                .withArrives(now)
                .withPromise(Math.max(TONIGHT, now + 300)));
        return day.withJobs(jobs);
    }

    private static Problem.Task fresh(Problem.Task task) {
        TaskDraft draft = new TaskDraft(task);
        draft.started = Optional.empty();
        draft.done = Optional.empty();
        draft.at = OptionalInt.empty();
        return draft.finish();
    }

    private Optional<Problem> withLateFinish() {
        int more = 30 + chance.below(60);
        boolean isAnyUnderway = day.jobs().stream()
                .flatMap(job -> job.stays().stream())
                .flatMap(stay -> stay.tasks().stream())
                .anyMatch(task -> task.started().isPresent());
        boolean[] isFound = {false};
        return isAnyUnderway
                ? Optional.of(withTasks((stay, task) -> {
                    if (task.started().isEmpty() || isFound[0]) {
                        return task;
                    }
                    isFound[0] = true;
                    Problem.Started started = task.started().get();
                    return task.withStarted(
                            new Problem.Started(started.person(), started.from(), started.left() + more));
                }))
                : Optional.empty();
    }

    private interface TaskChange {
        Problem.Task of(Problem.Stay stay, Problem.Task task);
    }

    private Problem withTasks(TaskChange change) {
        UnaryOperator<Problem.Stay> changed = stay -> stay.withTasks(
                stay.tasks().stream().map(task -> change.of(stay, task)).toList());
        return day.withJobs(day.jobs().stream()
                .map(job -> job.withStays(job.stays().stream().map(changed).toList()))
                .toList());
    }
}
