package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Day;
import org.shedboard.pack.story.Difference;

class BetterLineTest {
    private final Day day = Rehearsal.atTheDemonstration().outlook().day();
    private final String seven = visitWithTag(7);
    private final String nine = visitWithTag(9);

    private String visitWithTag(int tag) {
        return day.visits().stream()
                .filter(visit -> visit.state().isOpen() && visit.tag().equals(OptionalInt.of(tag)))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static Difference.Changed changed(
            String job, OptionalInt before, OptionalInt after, Difference.Promise promise, long gain) {
        return new Difference.Changed(job, List.of(), before, after, promise, gain);
    }

    @Test
    void each_visit_that_is_ready_at_another_time_is_said_the_most_gained_first() {
        Difference difference = new Difference(
                List.of(
                        changed(seven, OptionalInt.of(600), OptionalInt.of(630), Difference.Promise.NOW_MISSED, -900),
                        changed(nine, OptionalInt.of(720), OptionalInt.of(660), Difference.Promise.NOW_KEPT, 4800)),
                0);
        assertEquals(
                "9 ready 11:00, not 12:00, promise kept; 7 ready 10:30, not 10:00, promise missed",
                BetterLine.of(day, difference));
    }

    @Test
    void what_comes_into_the_plan_or_goes_out_of_it_is_said_and_what_is_ready_as_before_is_not() {
        Difference difference = new Difference(
                List.of(
                        changed(seven, OptionalInt.empty(), OptionalInt.of(630), Difference.Promise.NONE, -9),
                        changed(nine, OptionalInt.of(720), OptionalInt.empty(), Difference.Promise.STILL_MISSED, -10),
                        changed(nine, OptionalInt.of(720), OptionalInt.of(720), Difference.Promise.STILL_KEPT, 30)),
                0);
        assertEquals("7 comes into the plan, ready 10:30; 9 goes out of the plan", BetterLine.of(day, difference));
    }
}
