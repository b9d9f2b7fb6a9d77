package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.Costs;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.WorkshopDays;

class ScoreTest {
    @ParameterizedTest(name = "of {0} the median is {1}")
    @CsvSource({"7, 7", "9 3, 9", "3 9 5, 5", "1 9 5 3, 5", "4 4 4 1 9, 4"})
    void the_median_is_the_middle_one_and_of_two_the_worse(String costs, long median) {
        List<Score> scores = Arrays.stream(costs.split(" "))
                .map(cost -> new Score(0, Long.parseLong(cost)))
                .toList();
        assertEquals(new Score(0, median), Score.median(scores));
    }

    @Test
    void a_plan_that_leaves_out_more_is_beyond_every_cost_in_the_median() {
        List<Score> scores = List.of(new Score(1, 5), new Score(0, 900), new Score(0, 800));
        assertEquals(new Score(0, 900), Score.median(scores));
    }

    @ParameterizedTest(name = "{0} over {1}: {2} %")
    @CsvSource({"100, 100, 0", "102, 100, 2", "97, 100, -3", "0, 0, 0", "0, 50, -100", "1, 0, Infinity"})
    void a_percentage_is_of_the_best(long cost, long best, double percent) {
        assertEquals(percent, new Score(0, cost).percentOver(new Score(0, best)), 1e-9);
    }

    @Test
    void leaving_out_more_is_infinitely_worse_whatever_the_cost() {
        Score none = new Score(0, 1000);
        Score one = new Score(1, 10);
        assertEquals(Double.POSITIVE_INFINITY, one.percentOver(none));
        assertEquals(Double.NEGATIVE_INFINITY, none.percentOver(one));
        assertTrue(one.isWorseThan(none));
        assertFalse(none.isWorseThan(one));
        assertFalse(none.isWorseThan(none));
        assertEquals("far worse", Score.percent(one.percentOver(none)));
    }

    @Test
    void a_plan_is_scored_by_the_costs_of_another_problem_of_the_same_day() {
        Problem day = WorkshopDays.of(4, WorkshopDays.FAIR, 1);
        Plan plan = PackedPlans.first(day);
        assertEquals(Score.of(plan), Score.of(day, plan));
        assertEquals(
                0, Score.of(day.withCosts(new Costs(0, 0, 0, 0, 0, 0, 0)), plan).cost());
    }
}
