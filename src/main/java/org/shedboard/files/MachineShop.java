package org.shedboard.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.shedboard.pack.Costs;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.ProblemCheck;

/**
 * A published shop problem being put together as a packing problem: a machine is a person whose one shift spans the horizon, an
 * operation a stay without a place and with one task, and only the latest finish counts.
 */
final class MachineShop {
    /** More jobs or machines than any published problem has. */
    static final int MOST = 10_000;

    /** Skills of each machine. */
    private final List<Set<String>> skills;

    private final List<Problem.Job> jobs = new ArrayList<>();
    private final List<Problem.Stay> stays = new ArrayList<>();
    /** Sum of the longest minutes of all operations: within it everything can be done one after the other. */
    private long horizon;

    MachineShop(int machines) {
        skills = IntStream.range(0, machines)
                .mapToObj(machine -> (Set<String>) new LinkedHashSet<String>())
                .toList();
    }

    static String nameOf(int machine) {
        return "M" + machine;
    }

    /** The next operation of the job at hand, on its one machine. */
    void operation(int machine, int minutes) {
        String skill = nameOf(machine);
        skills.get(machine).add(skill);
        add(Problem.Task.of("O" + (stays.size() + 1), skill, minutes), minutes);
    }

    /** The next operation of the job at hand, on one of several machines; each takes minutes of its own. */
    void operation(Map<Integer, Integer> minutesByMachine) {
        String skill = "J%s O%s".formatted(jobs.size() + 1, stays.size() + 1);
        minutesByMachine.keySet().forEach(machine -> skills.get(machine).add(skill));
        int usual = minutesByMachine.values().iterator().next();
        Map<String, Integer> others = new LinkedHashMap<>();
        minutesByMachine.forEach((machine, minutes) -> {
            if (minutes != usual) {
                others.put(nameOf(machine), minutes);
            }
        });
        Problem.Task task = Problem.Task.of("O" + (stays.size() + 1), skill, usual);
        add(task.withHandsOnBy(others), minutesByMachine.values().stream().reduce(0, Math::max));
    }

    private void add(Problem.Task task, int longestMinutes) {
        stays.add(Problem.Stay.nowhere(task));
        horizon += longestMinutes;
    }

    /** The job at hand has no more operations. */
    void endJob() {
        jobs.add(Problem.Job.of("J" + (jobs.size() + 1), stays.toArray(Problem.Stay[]::new)));
        stays.clear();
    }

    Problem problem() throws NumberText.Unread {
        if (horizon > ProblemCheck.LARGEST) {
            throw new NumberText.Unread(
                    "the file", "its operations take %s in all, more than %s".formatted(horizon, ProblemCheck.LARGEST));
        }
        List<Problem.Person> machines = new ArrayList<>();
        for (Set<String> held : skills) {
            machines.add(Problem.Person.of(nameOf(machines.size()), held, Span.of(0, (int) horizon)));
        }
        return Problem.of(0, (int) horizon, List.of(), machines, jobs).withCosts(Costs.MAKESPAN_ONLY);
    }
}
