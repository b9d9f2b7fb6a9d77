package org.shedboard.pack.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.JobShops;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.fault.ProblemCheck;

class BoundTest {
    private static final Costs FLOW_ONLY = new Costs(0, 0, 1, 0, 0, 0, 0);

    /** One person, all there from the start. */
    private static Problem oneByOne(int... minutesAndWeights) {
        return shop(1, minutesAndWeights);
    }

    private static Problem shop(int people, int... minutesAndWeights) {
        List<Problem.Person> all = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            all.add(Problem.Person.of("P" + person, Set.of("work"), Span.of(0, 1000)));
        }
        List<Problem.Job> jobs = new ArrayList<>();
        for (int index = 0; index < minutesAndWeights.length; index += 2) {
            jobs.add(Problem.Job.of(
                            "J" + index, Problem.Stay.nowhere(Problem.Task.of("t", "work", minutesAndWeights[index])))
                    .withWeight(minutesAndWeights[index + 1]));
        }
        return Problem.of(0, 1000, List.of(), all, jobs).withCosts(FLOW_ONLY);
    }

    /**
     * Weighted shortest processing time is optimal (Smith 1956): 18 is Kleinberg and Tardos, Algorithm Design, chapter 4; 65 and 124 are
     * shortest-first total flows printed with the worked examples of Heizer and Render.
     */
    @Test
    void it_comes_close_to_the_optimum_of_one_person() {
        assertEquals(18, Bound.of(oneByOne(1, 10, 3, 2)).costAtLeast(0));
        long first = Bound.of(oneByOne(6, 1, 2, 1, 8, 1, 3, 1, 9, 1)).costAtLeast(0);
        assertTrue(first <= 65 && first >= 62, "65 is the optimum: " + first);
        long second = Bound.of(oneByOne(6, 1, 12, 1, 14, 1, 2, 1, 10, 1, 4, 1)).costAtLeast(0);
        assertTrue(second <= 124 && second >= 120, "124 is the optimum: " + second);
    }

    /** Fisher and Thompson 1963, ft06: the longest job and its machines alone say 47, the optimum is 55. */
    @Test
    void of_a_job_shop_it_lies_between_the_longest_job_and_the_optimum() {
        String ft06 = """
                6 6
                2 1 0 3 1 6 3 7 5 3 4 6
                1 8 2 5 4 10 5 10 0 10 3 4
                2 5 3 4 5 8 0 9 1 1 4 7
                1 5 0 5 2 5 3 3 4 8 5 9
                2 9 1 3 4 5 5 4 0 3 3 1
                1 3 3 3 5 9 0 10 4 4 2 1
                """;
        long least = Bound.of(JobShops.parse(ft06)).costAtLeast(0);
        assertTrue(least > 47 && least <= 55, "" + least);
    }

    /** McNaughton 1959: the longest job, or all work shared out evenly; the optimum without interruptions is no earlier. */
    @ParameterizedTest
    @CsvSource({"2, 15, '4 5 6 7 8'", "3, 10, '4 5 6 7 8'", "2, 5, '3 3 3'", "2, 10, '10 2 2'"})
    void the_last_finish_is_at_least_the_work_shared_out(int people, long finish, String minutes) {
        int[] pairs = Arrays.stream(minutes.split(" "))
                .flatMapToInt(each -> IntStream.of(Integer.parseInt(each), 1))
                .toArray();
        Problem problem = shop(people, pairs).withCosts(Costs.MAKESPAN_ONLY);
        assertEquals(finish, Bound.of(problem).costAtLeast(0));
    }

    @Test
    void a_handover_that_cannot_be_avoided_is_in_it() {
        Problem.Stay stay =
                Problem.Stay.nowhere(Problem.Task.of("wash", "wash", 10), Problem.Task.of("sign", "sign", 5));
        List<Problem.Person> two = List.of(
                Problem.Person.of("P1", Set.of("wash"), Span.of(0, 100)),
                Problem.Person.of("P2", Set.of("sign"), Span.of(0, 100)));
        Problem problem = Problem.of(0, 100, List.of(), two, List.of(Problem.Job.of("J", stay)));
        assertEquals(15 + 10, Bound.of(problem).costAtLeast(0));
    }

    @Test
    void overtime_that_cannot_be_avoided_is_in_it() {
        Problem.Person person =
                Problem.Person.of("P", Set.of("wash"), Span.of(0, 20)).withOvertime(Span.of(20, 60));
        Problem.Job job = Problem.Job.of("J", Problem.Stay.nowhere(Problem.Task.of("wash", "wash", 50)));
        Problem problem = Problem.of(0, 60, List.of(), List.of(person), List.of(job));
        assertEquals(50 + 30 * 5, Bound.of(problem).costAtLeast(0));
    }

    @Test
    void nights_and_closed_places_are_waited_for() {
        Problem.Person person = Problem.Person.of("P", Set.of("wash"), Span.of(0, 30), Span.of(100, 200));
        Problem.Place place = Problem.Place.of("B", "bay").withClosed(Span.of(0, 20));
        Problem.Job job = Problem.Job.of("J", Problem.Stay.of("bay", Problem.Task.of("wash", "wash", 25)));
        Problem problem = Problem.of(0, 200, List.of(place), List.of(person), List.of(job));
        assertEquals(115, Bound.of(problem).costAtLeast(0));
    }

    @Test
    void two_machines_that_need_the_one_place_wait_for_each_other() {
        List<Problem.Person> two = List.of(
                Problem.Person.of("P1", Set.of("wash"), Span.of(0, 200)),
                Problem.Person.of("P2", Set.of("wash"), Span.of(0, 200)));
        Problem.Stay stay = Problem.Stay.of("bay", Problem.Task.of("wash", "wash", 20));
        List<Problem.Job> jobs = List.of(Problem.Job.of("J1", stay), Problem.Job.of("J2", stay));
        Problem problem = Problem.of(0, 200, List.of(Problem.Place.of("B", "bay")), two, jobs);
        long least = Bound.of(problem).costAtLeast(0);
        assertTrue(least <= 60 && least >= 58, "60 is the optimum: " + least);
        assertEquals(20, Bound.of(problem).costAtLeast(1));
    }

    /** Neither far horizons nor many jobs nor long chains of waiting make it take long or need much memory. */
    @Test
    void the_largest_numbers_a_file_may_hold_do_it_no_harm() {
        int most = ProblemCheck.LARGEST;
        Problem.Person person = Problem.Person.of("P", Set.of("wash"), Span.of(0, most));
        List<Problem.Job> jobs = new ArrayList<>();
        for (int index = 0; index < 400; index++) {
            jobs.add(Problem.Job.of(
                    "J" + index,
                    Problem.Stay.nowhere(Problem.Task.of("t", "wash", 20_000), Problem.Task.of("u", "wash", 1))));
        }
        Problem problem = Problem.of(0, most, List.of(), List.of(person), jobs);
        long optimum = 20_001L * 400 * 401 / 2;
        long least = Bound.of(problem).costAtLeast(0);
        assertTrue(least <= optimum && least >= 20_001L * 400, least + " against " + optimum);
        Problem dear = Problem.of(
                0, most, List.of(), List.of(person), List.of(jobs.get(0).withWeight(most)));
        assertEquals(20_001L * most, Bound.of(dear).costAtLeast(0));
    }
}
