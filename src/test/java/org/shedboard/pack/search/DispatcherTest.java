package org.shedboard.pack.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;
import org.shedboard.pack.WorkshopDays;
import org.shedboard.pack.numbers.Chance;
import org.shedboard.pack.numbers.FlatProblem;

class DispatcherTest {
    /** Handing out again only what other handicaps can change is as good as doing it from the first turn on. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void handicaps_changed_a_little_keep_the_turns_before_that_seed(long seed) {
        FlatProblem flat = new FlatProblem(WorkshopDays.of(12, WorkshopDays.TIGHT, seed));
        Decoder decoder = new Decoder(flat);
        Dispatcher dispatcher = new Dispatcher(decoder);
        Decoder anew = new Decoder(flat);
        Dispatcher fromNothing = new Dispatcher(anew);
        Turns turns = new Turns(decoder);
        Chance chance = new Chance(seed);
        int[] present = new int[flat.stays];
        dispatcher.dispatch(Solution.plain(flat), present);
        dispatcher.tell(turns);
        long kept = 0;
        for (int times = 0; times < 300; times++) {
            int[] changed = present.clone();
            int first = chance.below(flat.stays);
            int end = chance.below(2) == 0 ? first + 1 : flat.firstStay[flat.jobOfStay[first] + 1];
            int minutes = chance.below(400) - 200;
            for (int stay = first; stay < end; stay++) {
                changed[stay] += minutes;
            }
            dispatcher.dispatch(Solution.plain(flat), changed, turns, turns.kept(present, changed));
            fromNothing.dispatch(Solution.plain(flat), changed);
            kept += decoder.takenOver();
            assertArrayEquals(anew.start, decoder.start, "change " + times);
            assertArrayEquals(anew.placeOfStay, decoder.placeOfStay, "change " + times);
            assertEquals(anew.running.points, decoder.running.points, "change " + times);
            if (chance.below(3) == 0) {
                present = changed;
                dispatcher.tell(turns);
            }
        }
        assertTrue(kept > 300L * flat.tasks / 5, "only " + kept + " tasks were kept in 300 changes");
    }

    @Test
    void within_a_stay_what_goes_on_unattended_is_begun_first() {
        Decoder decoder = handedOut(Problem.Job.of(
                "Quad",
                Problem.Stay.nowhere(
                        task("grease", 10).withAfter(),
                        task("drain", 5).withAfter().withUnattended(20))));
        assertEquals(0, decoder.start[1]);
        assertEquals(5, decoder.start[0]);
    }

    @Test
    void of_two_machines_the_one_that_is_over_sooner_goes_first() {
        Decoder decoder = handedOut(
                Problem.Job.of("Quad", Problem.Stay.nowhere(task("look", 10), task("mend", 60))),
                Problem.Job.of("Mower", Problem.Stay.nowhere(task("look", 10), task("mend", 20))));
        assertEquals(0, decoder.start[2]);
        assertEquals(30, decoder.start[0]);
    }

    private static Problem.Task task(String id, int minutes) {
        return Problem.Task.of(id, "service", minutes);
    }

    /** As one person does it, without handicaps. */
    private static Decoder handedOut(Problem.Job... jobs) {
        Problem.Person technician = Problem.Person.of("Technician", Set.of("service"), Span.of(0, 480));
        FlatProblem flat = new FlatProblem(Problem.of(0, 480, List.of(), List.of(technician), List.of(jobs)));
        Decoder decoder = new Decoder(flat);
        new Dispatcher(decoder).dispatch(Solution.plain(flat), new int[flat.stays]);
        return decoder;
    }
}
