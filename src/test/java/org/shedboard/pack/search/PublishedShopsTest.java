package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.JobShops;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/** Worked examples of the scheduling literature, typed in, through the real search. */
class PublishedShopsTest {
    private static final Costs FLOW_ONLY = new Costs(0, 0, 1, 0, 0, 0, 0);

    /** Johnson's rule: two machines, times as machine 1 and machine 2 by turns; optima confirmed by trying every order. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
        "Heizer & Render, 5 2 3 6 8 4 10 7 7 12, 35",
        "printing and binding, 20 25 90 60 80 75 20 30 120 90 15 35 65 50, 460",
        "Krajewski & Ritzman, 12 22 4 5 5 3 15 16 10 8, 65",
        "Operations and Supply Chain Management 14e, 3 1 2 2 1 3, 7"
    })
    void two_machines_finish_as_johnsons_rule_has_it(String source, String times, long makespan) {
        int[] minutes = numbers(times);
        List<Problem.Job> jobs = new ArrayList<>();
        for (int index = 0; index < minutes.length; index += 2) {
            jobs.add(JobShops.job(index / 2, 0, minutes[index], 1, minutes[index + 1]));
        }
        Problem problem = JobShops.shop(2, 2000, jobs);
        assertEquals(makespan, PackedPlans.pack(problem, 1, 6000).cost());
    }

    /** Shortest processing time first makes the total flow on one machine least. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
        "Heizer & Render example 15.5, 6 2 8 3 9, 65",
        "solved problem 15.3, 6 12 14 2 10 4, 124",
        "Joe's jobs, 5 10 2 8 6, 74"
    })
    void one_machine_has_the_least_total_flow(String source, String times, long flow) {
        List<Problem.Job> jobs = new ArrayList<>();
        for (int minutes : numbers(times)) {
            jobs.add(JobShops.job(jobs.size(), 0, minutes));
        }
        Problem problem = JobShops.shop(1, 1000, jobs).withCosts(FLOW_ONLY);
        assertEquals(flow, PackedPlans.pack(problem, 1, 4000).cost());
    }

    @Test
    void weights_decide_who_goes_first_as_in_kleinberg_and_tardos() {
        List<Problem.Job> jobs = List.of(
                JobShops.job(0, 0, 1).withWeight(10), JobShops.job(1, 0, 3).withWeight(2));
        Problem problem = JobShops.shop(1, 100, jobs).withCosts(FLOW_ONLY);
        assertEquals(18, PackedPlans.pack(problem, 1, 500).cost());
    }

    /** Longest first is not enough here; the optima are from Graham 1969 (from memory) and exact enumeration. */
    @ParameterizedTest(name = "{0} bays, {1}: {2}")
    @CsvSource({
        "2, 4 5 6 7 8, 15",
        "3, 4 5 6 7 8, 11",
        "2, 3 3 2 2 2, 6",
        "3, 5 5 4 4 3 3 3, 9",
        "4, 7 7 6 6 5 5 4 4 4, 12",
        "5, 9 9 8 8 7 7 6 6 5 5 5, 15"
    })
    void identical_bays_are_loaded_evenly(int bays, String times, long makespan) {
        List<Problem.Person> people = new ArrayList<>();
        List<Problem.Place> places = new ArrayList<>();
        for (int bay = 0; bay < bays; bay++) {
            people.add(Problem.Person.of("P" + bay, Set.of("service"), Span.of(0, 1000)));
            places.add(Problem.Place.of("F" + bay, "floor"));
        }
        List<Problem.Job> jobs = new ArrayList<>();
        for (int minutes : numbers(times)) {
            jobs.add(Problem.Job.of(
                    "J" + jobs.size(), Problem.Stay.of("floor", Problem.Task.of("do", "service", minutes))));
        }
        Problem problem = Problem.of(0, 1000, places, people, jobs).withCosts(Costs.MAKESPAN_ONLY);
        assertEquals(makespan, PackedPlans.pack(problem, 1, 20_000).cost());
    }

    /** Fisher & Thompson 1963; that 55 is the optimum was proved by branch and bound. */
    @Test
    void ft06_takes_55() {
        Problem problem = JobShops.parse("""
                6 6
                2 1 0 3 1 6 3 7 5 3 4 6
                1 8 2 5 4 10 5 10 0 10 3 4
                2 5 3 4 5 8 0 9 1 1 4 7
                1 5 0 5 2 5 3 3 4 8 5 9
                2 9 1 3 4 5 5 4 0 3 3 1
                1 3 3 3 5 9 0 10 4 4 2 1
                """);
        assertEquals(55, PackedPlans.pack(problem, 1, 60_000).cost());
    }

    private static int[] numbers(String text) {
        return List.of(text.split(" ")).stream().mapToInt(Integer::parseInt).toArray();
    }
}
