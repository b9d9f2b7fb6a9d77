package org.shedboard.pack;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.pack.numbers.Chance;

/** Small problems with everything a day file can hold, each from a seed. All numbers are invented. */
public final class RandomProblems {
    private static final List<String> SKILLS = List.of("wash", "hoist", "service");
    private static final List<String> KINDS = List.of("wash", "hoist", "floor");

    private final Chance chance;
    private final int now;

    private RandomProblems(long seed) {
        chance = new Chance(seed);
        now = chance.below(3) * 40;
    }

    /** A problem without begun work, not posted. */
    public static Problem of(long seed) {
        return new RandomProblems(seed).problem();
    }

    private Problem problem() {
        List<Problem.Place> places = new ArrayList<>();
        for (int index = 0; index < 4; index++) {
            Problem.Place place =
                    Problem.Place.of("B" + index, KINDS.get(index % 3)).withRatedKg(600 + 400 * chance.below(3));
            int from = chance.below(500);
            places.add(chance.below(3) == 0 ? place.withClosed(Span.of(from, from + 1 + chance.below(120))) : place);
        }
        List<Problem.Person> people = new ArrayList<>();
        for (int index = 0; index < 3; index++) {
            people.add(person(index));
        }
        List<Problem.Job> jobs = new ArrayList<>();
        int count = 2 + chance.below(4);
        for (int index = 0; index < count; index++) {
            jobs.add(job("J" + index));
        }
        Costs costs = new Costs(100, 5, 1, 10, chance.below(2), chance.below(2), 20 * chance.below(2));
        int horizon = 600 + chance.below(3) * 600;
        return Problem.of(now, horizon, places, people, jobs).withCosts(costs);
    }

    private Problem.Person person(int index) {
        Set<String> skills = new LinkedHashSet<>(SKILLS);
        if (chance.below(2) == 0) {
            skills.remove(SKILLS.get(chance.below(3)));
        }
        int lunch = 150 + chance.below(60);
        return Problem.Person.of(
                        "P" + index,
                        skills,
                        Span.of(chance.below(30), lunch),
                        Span.of(lunch + 30, 480),
                        Span.of(700, 900))
                .withOvertime(Span.of(480, 540 + chance.below(60)), Span.of(900, 1000));
    }

    private Problem.Job job(String id) {
        List<Problem.Stay> stays = new ArrayList<>();
        int count = 1 + chance.below(3);
        for (int index = 0; index < count; index++) {
            stays.add(stay());
        }
        Problem.Job job = Problem.Job.of(id, stays.toArray(Problem.Stay[]::new))
                .withWeight(chance.below(4))
                .withMassKg(300 + chance.below(600))
                .withArrives(chance.below(100));
        return chance.below(2) == 0 ? job.withPromise(200 + chance.below(400)) : job;
    }

    private Problem.Stay stay() {
        int count = 1 + chance.below(4);
        List<Problem.Task> tasks = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            tasks.add(task(index));
        }
        List<String> kinds =
                chance.below(5) == 0 ? List.of() : List.of(KINDS.get(chance.below(3)), KINDS.get(chance.below(3)));
        Problem.Stay stay = new Problem.Stay(kinds, Optional.empty(), tasks);
        return kinds.contains("wash") && chance.below(4) == 0 ? stay.withPlace("B0") : stay;
    }

    private Problem.Task task(int index) {
        Problem.Task task = Problem.Task.of("t" + index, SKILLS.get(chance.below(3)), chance.below(40));
        task = task.withUnattended(task.handsOn() == 0 || chance.below(3) == 0 ? 1 + chance.below(30) : 0);
        if (index > 0 && chance.below(2) == 0) {
            task = chance.below(2) == 0 ? task.withAfter() : task.withAfter("t" + chance.below(index));
        }
        return switch (chance.below(12)) {
            case 0 -> task.withPeople(2);
            case 1 -> task.withHandsOnBy(Map.of("P0", 5 + chance.below(50)));
            case 2 -> task.withNotBefore(chance.below(300));
            case 3 -> task.withPerson("P" + chance.below(3));
            case 4 -> chance.below(3) == 0 ? task.withAt(now + 100 + chance.below(200)) : task;
            case 5, 6 -> index > 0 ? task.withNotBy("t" + chance.below(index)) : task;
            default -> task;
        };
    }

    /** The same day later on, with the plan posted: what should have begun by then has, some of it late or interrupted. */
    public static Problem later(Problem before, Plan posted, int minutes, long seed) {
        Chance chance = new Chance(seed);
        return LaterDay.of(before, posted, before.now() + minutes, (time, now) -> {
            boolean isInterrupted = chance.below(3) == 0;
            return new Problem.Started(
                    isInterrupted ? Optional.empty() : time.person(), time.start(), 1 + chance.below(40));
        });
    }
}
