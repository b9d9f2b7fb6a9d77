package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.Span;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

/** One machine to hose down: 20 minutes of the technician's, 29 of the apprentice's. All numbers are invented. */
class DecoderTest {
    private static final int TECHNICIAN = 0;
    private static final int APPRENTICE = 1;

    private static final FlatProblem DAY = new FlatProblem(Problem.of(
            0,
            480,
            List.of(),
            List.of(
                    Problem.Person.of("Technician", Set.of("wash", "service"), Span.of(0, 480)),
                    Problem.Person.of("Apprentice", Set.of("wash"), Span.of(0, 480))),
            List.of(Problem.Job.of(
                    "Quad",
                    Problem.Stay.nowhere(
                            Problem.Task.of("hose", "wash", 20).withHandsOnBy(Map.of("Apprentice", 29)))))));

    private static int whoHoses(int priceOfTechnician) {
        Solution solution = Solution.plain(DAY);
        solution.price[TECHNICIAN] = priceOfTechnician;
        Decoder decoder = new Decoder(DAY);
        decoder.decode(solution);
        return decoder.crews.first(0);
    }

    @Test
    void without_prices_whoever_is_done_first_does_it() {
        assertEquals(TECHNICIAN, whoHoses(0));
    }

    /** 20 minutes at 7 sixteenths count 8 more, at 8 sixteenths 10: the apprentice is done 9 later. */
    @Test
    void a_dear_persons_work_goes_to_another_although_that_is_over_later() {
        assertEquals(TECHNICIAN, whoHoses(7));
        assertEquals(APPRENTICE, whoHoses(8));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void going_on_from_a_checkpoint_comes_to_the_same_as_going_all_the_way_seed(long seed) {
        FlatProblem flat = new FlatProblem(RandomProblems.of(seed));
        boolean[] left = new boolean[flat.jobs];
        for (int job = 0; job < flat.jobs; job++) {
            left[job] = flat.hopeless[job] != null;
        }
        Decoder decoder = new Decoder(flat);
        decoder.leaveOut(left);
        Timetable table = new Timetable(flat);
        Trail trail = new Trail(decoder, table);
        Solution solution = Solution.plain(flat);
        decoder.decode(solution);
        table.take(decoder);
        trail.follow(table.order);
        System.arraycopy(table.order, 0, solution.list, 0, flat.tasks);
        Moves moves = new Moves(flat, decoder.outlook, new Chance(seed), left);
        for (int times = 0; times < 300; times++) {
            Solution changed = solution.copy();
            int kept = moves.change(changed, table);
            decoder.decode(changed.copy(), trail, kept);
            Timetable resumed = new Timetable(flat);
            resumed.take(decoder);
            long points = decoder.running.points;
            Trail fresh = new Trail(decoder, table);
            fresh.follow(table.order);
            decoder.decode(changed.copy(), fresh, kept);
            assertArrayEquals(decoder.start, resumed.start, "change " + times);
            assertArrayEquals(decoder.placeOfStay, resumed.placeOfStay, "change " + times);
            assertEquals(decoder.running.points, points, "change " + times);
        }
    }
}
