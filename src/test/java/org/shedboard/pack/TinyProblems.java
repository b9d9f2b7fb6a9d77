package org.shedboard.pack;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.pack.numbers.Chance;

/**
 * Problems so small that every minute at which a task could start can be tried: four to six tasks in half an hour, but with breaks,
 * overtime and everything else a day file can hold. All numbers are invented.
 */
public final class TinyProblems {
    private static final List<String> SKILLS = List.of("wash", "service");
    private static final List<String> KINDS = List.of("wash", "hoist");
    private static final int HORIZON = 30;

    private final Chance chance;
    private final int now;
    private int tasksLeft;
    private boolean isSomeoneGoing;

    private TinyProblems(long seed) {
        chance = Chance.of(seed, "tiny");
        now = chance.below(2) * 3;
        tasksLeft = 4 + chance.below(2);
    }

    public static Problem of(long seed) {
        return new TinyProblems(seed).problem();
    }

    private Problem problem() {
        List<Problem.Place> places = new ArrayList<>();
        for (int index = 0; index < 2 + chance.below(2); index++) {
            Problem.Place place =
                    Problem.Place.of("B" + index, KINDS.get(index % 2)).withRatedKg(500 + 500 * chance.below(2));
            int from = now + 4 + chance.below(12);
            places.add(chance.below(4) == 0 ? place.withClosed(Span.of(from, from + 1 + chance.below(4))) : place);
        }
        List<Problem.Person> people = List.of(person(0), person(1));
        List<Problem.Job> jobs = new ArrayList<>();
        while (tasksLeft > 0) {
            jobs.add(job("J" + jobs.size()));
        }
        long late = 5 + chance.below(20);
        Costs costs = new Costs(
                late, chance.below(6), 1, chance.below(12), chance.below(2), chance.below(3), 4 * chance.below(2));
        Problem problem = Problem.of(now, HORIZON, places, people, jobs).withCosts(costs);
        return chance.below(2) == 0 ? problem.withPosted(posted(problem)) : problem;
    }

    /** A plan that need not be legal any more, as posted plans are. */
    private Plan posted(Problem problem) {
        List<Plan.TaskTime> tasks = new ArrayList<>();
        List<Plan.StayPlace> stays = new ArrayList<>();
        for (Problem.Job job : problem.jobs()) {
            for (int stay = 0; stay < job.stays().size(); stay++) {
                for (Problem.Task task : job.stays().get(stay).tasks()) {
                    int start = chance.below(20);
                    Optional<String> person = Optional.of("P" + chance.below(2));
                    tasks.add(new Plan.TaskTime(job.id(), stay, task.id(), person, List.of(), start, start + 3));
                }
                stays.add(new Plan.StayPlace(job.id(), stay, "B" + chance.below(2), 0, 20));
            }
        }
        return new Plan(0, 0, List.of(), stays, tasks, 0, 0, 0);
    }

    private Problem.Person person(int index) {
        Set<String> skills = new LinkedHashSet<>(SKILLS);
        if (chance.below(3) == 0) {
            skills.remove(SKILLS.get(chance.below(2)));
        }
        int lunch = 6 + chance.below(4);
        int knockOff = lunch + 6 + chance.below(4);
        return Problem.Person.of(
                        "P" + index,
                        skills,
                        Span.of(chance.below(3), lunch),
                        Span.of(lunch + 2, knockOff),
                        Span.of(HORIZON - 5, HORIZON - 1))
                .withOvertime(Span.of(knockOff, knockOff + chance.below(5)));
    }

    private Problem.Job job(String id) {
        List<Problem.Stay> stays = new ArrayList<>();
        boolean mayHaveBegun = now > 0 && chance.below(3) == 0;
        int count = 1 + chance.below(2);
        while (stays.size() < count && tasksLeft > 0) {
            stays.add(stay(mayHaveBegun && stays.isEmpty()));
        }
        Problem.Job job = Problem.Job.of(id, stays.toArray(Problem.Stay[]::new))
                .withWeight(1 + chance.below(3))
                .withMassKg(300 + chance.below(500))
                .withArrives(chance.below(6));
        return chance.below(2) == 0 ? job.withPromise(8 + chance.below(14)) : job;
    }

    private Problem.Stay stay(boolean mayHaveBegun) {
        int count = Math.min(tasksLeft, 1 + chance.below(3));
        tasksLeft -= count;
        List<Problem.Task> tasks = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            tasks.add(task(index));
        }
        String kind = KINDS.get(chance.below(2));
        List<String> kinds = switch (chance.below(4)) {
            case 0 -> List.of();
            case 1 -> KINDS;
            default -> List.of(kind);
        };
        if (mayHaveBegun && tasks.get(0).handsOn() > 0) {
            tasks.set(0, begun(tasks.get(0)));
        }
        Problem.Stay stay = new Problem.Stay(kinds, Optional.empty(), tasks);
        return stay.hasBegun() && !kinds.isEmpty() ? stay.withPlace("B" + KINDS.indexOf(kinds.get(0))) : stay;
    }

    private Problem.Task begun(Problem.Task task) {
        String person = "P" + chance.below(2);
        TaskDraft draft = new TaskDraft(task);
        draft.person = Optional.empty();
        draft.at = OptionalInt.empty();
        Problem.Task open = draft.finish();
        int kind = chance.below(3);
        if (kind == 0) {
            return open.withDone(new Problem.Done(Optional.of(person), 0, 1 + chance.below(2)));
        }
        boolean isGoing = kind == 1 && !isSomeoneGoing;
        isSomeoneGoing |= isGoing;
        return open.withStarted(
                new Problem.Started(isGoing ? Optional.of(person) : Optional.empty(), 1, 1 + chance.below(4)));
    }

    private Problem.Task task(int index) {
        Problem.Task task = Problem.Task.of("t" + index, SKILLS.get(chance.below(2)), chance.below(6));
        task = task.withUnattended(task.handsOn() == 0 || chance.below(3) == 0 ? 1 + chance.below(4) : 0);
        if (index > 0 && chance.below(2) == 0) {
            task = chance.below(2) == 0 ? task.withAfter() : task.withAfter("t" + chance.below(index));
        }
        return switch (chance.below(12)) {
            case 0 -> task.withPeople(2);
            case 1 -> task.withHandsOnBy(Map.of("P0", 1 + chance.below(6)));
            case 2 -> task.withNotBefore(chance.below(16));
            case 3 -> task.withPerson("P" + chance.below(2));
            case 4 -> task.withAt(now + 2 + chance.below(8));
            case 5, 6 -> index > 0 ? task.withNotBy("t" + chance.below(index)) : task;
            default -> task;
        };
    }
}
