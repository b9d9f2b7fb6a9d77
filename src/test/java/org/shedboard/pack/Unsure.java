package org.shedboard.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Gives days whose minutes are certain the spreads of the shop's catalogue. The figures are invented, as those are. */
public final class Unsure {
    private static final double MACHINE = 0.18;
    private static final double PERSON = 0.1;
    private static final double OTHER_WORK = 0.3;
    private static final Map<String, Double> BY_SKILL = Map.of("hoist", 0.25, "wash", 0.35, "sign-off", 0.2);

    private Unsure() {}

    public static Problem of(Problem problem) {
        return problem.withPeople(problem.people().stream()
                        .map(person -> person.withSharedSpread(PERSON))
                        .toList())
                .withJobs(problem.jobs().stream().map(Unsure::of).toList());
    }

    private static Problem.Job of(Problem.Job job) {
        List<Problem.Stay> stays = new ArrayList<>();
        for (Problem.Stay stay : job.stays()) {
            stays.add(stay.withTasks(stay.tasks().stream()
                    .map(task -> task.withSpread(BY_SKILL.getOrDefault(task.skill(), OTHER_WORK)))
                    .toList()));
        }
        return job.withStays(stays).withSharedSpread(MACHINE);
    }
}
