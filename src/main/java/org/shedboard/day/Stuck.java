package org.shedboard.day;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.pack.Problem;
import org.shedboard.pack.search.Packer;

/**
 * Visits that have begun and that nothing in the shop can finish: no place takes the machine for what comes, or nobody may do it. They
 * stand in a place and people are on them, so what has begun stays in the plan; what comes is left out of it, and told.
 *
 * @param why what is in the way, by the id of the visit
 */
record Stuck(Map<String, String> why) {
    Stuck {
        why = Map.copyOf(why);
    }

    static Stuck in(Problem problem) {
        Map<String, String> why = new HashMap<>(Packer.hopeless(problem));
        Set<String> begun = problem.jobs().stream()
                .filter(Problem.Job::hasBegun)
                .map(Problem.Job::id)
                .collect(Collectors.toSet());
        why.keySet().retainAll(begun);
        return new Stuck(why);
    }

    /** The problem with what can be done of these visits: the rest of the stays they are in, or where that cannot be done either, what is done or in hands. */
    Problem without(Problem whole) {
        if (why.isEmpty()) {
            return whole;
        }
        Problem begun = whole.withJobs(whole.jobs().stream()
                .map(job -> why.containsKey(job.id()) ? inStays(job) : job)
                .toList());
        Stuck still = in(begun);
        return begun.withJobs(begun.jobs().stream()
                .map(job -> still.why.containsKey(job.id()) ? inHands(job) : job)
                .filter(job -> !job.stays().isEmpty())
                .toList());
    }

    private static Problem.Job inStays(Problem.Job job) {
        return job.withStays(job.stays().stream().filter(Problem.Stay::hasBegun).toList());
    }

    private static Problem.Job inHands(Problem.Job job) {
        return job.withStays(job.stays().stream()
                .map(stay -> stay.withTasks(
                        stay.tasks().stream().filter(Stuck::isDoneOrInHands).toList()))
                .filter(stay -> !stay.tasks().isEmpty())
                .toList());
    }

    private static boolean isDoneOrInHands(Problem.Task task) {
        return task.done().isPresent()
                || task.started().flatMap(Problem.Started::person).isPresent();
    }
}
