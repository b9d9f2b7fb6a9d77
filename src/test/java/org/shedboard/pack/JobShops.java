package org.shedboard.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import java.util.Set;

/** Job shops as problems: a machine is a person with a skill of its own, an operation a stay without place and with one task. */
public final class JobShops {
    private JobShops() {}

    /** A job from pairs of machine, counted from 0, and minutes. */
    public static Problem.Job job(int number, int... pairs) {
        List<Problem.Stay> stays = new ArrayList<>();
        for (int index = 0; index < pairs.length; index += 2) {
            stays.add(Problem.Stay.nowhere(
                    Problem.Task.of("o" + index / 2, "machine " + pairs[index], pairs[index + 1])));
        }
        return Problem.Job.of("J" + number, stays.toArray(Problem.Stay[]::new));
    }

    /** Only the makespan counts. */
    public static Problem shop(int machines, int horizon, List<Problem.Job> jobs) {
        List<Problem.Person> people = new ArrayList<>();
        for (int machine = 0; machine < machines; machine++) {
            people.add(Problem.Person.of("M" + machine, Set.of("machine " + machine), Span.of(0, horizon)));
        }
        return Problem.of(0, horizon, List.of(), people, jobs).withCosts(Costs.MAKESPAN_ONLY);
    }

    /** The usual text: jobs and machines, then a line a job with pairs of machine and minutes. */
    public static Problem parse(String text) {
        Scanner numbers = new Scanner(text);
        int count = numbers.nextInt();
        int machines = numbers.nextInt();
        int total = 0;
        List<Problem.Job> jobs = new ArrayList<>();
        for (int job = 0; job < count; job++) {
            int[] pairs = new int[machines * 2];
            for (int index = 0; index < pairs.length; index++) {
                pairs[index] = numbers.nextInt();
                total += index % 2 == 1 ? pairs[index] : 0;
            }
            jobs.add(job(job, pairs));
        }
        return shop(machines, total, jobs);
    }
}
