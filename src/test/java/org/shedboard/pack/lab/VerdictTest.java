package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.pack.WorkshopDays;

/** When each target counts as met: to the last hundredth, and not one beyond. */
class VerdictTest {
    private static final Score BEST = new Score(0, 10_000);

    @Test
    void a_target_of_parts_is_met_where_all_are_and_missed_where_one_is() {
        assertEquals(Verdict.MET, Verdict.MET.and(Verdict.MET));
        assertEquals(Verdict.MISSED, Verdict.MET.and(Verdict.MISSED));
        assertEquals(Verdict.MISSED, Verdict.MISSED.and(Verdict.OPEN));
        assertEquals(Verdict.OPEN, Verdict.MET.and(Verdict.OPEN));
    }

    @ParameterizedTest(name = "{0} on few machines, {1} runs missing a promise: {2}; on many: {3}")
    @CsvSource({
        "10000, 0, MET, MET",
        "10200, 0, MET, MET",
        "10201, 0, MISSED, MET",
        "10300, 0, MISSED, MET",
        "10301, 0, MISSED, MISSED",
        "9000, 0, MET, MET",
        "10000, 1, MISSED, MET"
    })
    void few_machines_may_cost_two_percent_and_many_three(long median, int missing, Verdict few, Verdict many) {
        List<Score> found = List.of(new Score(0, median), new Score(0, 99_999), new Score(0, 1));
        List<Standing> one = List.of(new Standing("day", BEST, found, missing));
        assertEquals(few, OverBestKept.few().verdict(one, 1));
        assertEquals(many, OverBestKept.many().verdict(one, 1));
    }

    @Test
    void one_day_beyond_is_a_miss_and_a_day_without_a_best_plan_leaves_it_open() {
        Standing near = new Standing("near", BEST, List.of(BEST), 0);
        Standing far = new Standing("far", BEST, List.of(new Score(1, 1)), 0);
        assertEquals(Verdict.MISSED, OverBestKept.few().verdict(List.of(near, far), 2));
        assertEquals(Verdict.OPEN, OverBestKept.few().verdict(List.of(near), 2));
        assertEquals(Verdict.MISSED, OverBestKept.few().verdict(List.of(far), 2));
        assertEquals(0, OverBestKept.mean(List.of(near, far)));
    }

    @ParameterizedTest(name = "{0} % over, {1} moved, {2} promises gained, {3} lost: {4}")
    @CsvSource({
        "1.0, 0, 0, 0, true",
        "1.01, 0, 0, 0, false",
        "-5, 0, 0, 0, true",
        "0, 1, 0, 0, false",
        "0, 7, 1, 0, true",
        "0, 7, 2, 2, false",
        "0, 0, 0, 1, true"
    })
    void after_an_event_a_start_moves_soon_only_for_a_promise(
            double over, int moved, int gained, int lost, boolean isMet) {
        assertEquals(isMet, new EventOutcome(over, moved, gained, lost).isMet());
    }

    @Test
    void only_starts_of_the_next_hour_count_as_moved() {
        Problem day = WorkshopDays.of(6, WorkshopDays.FAIR, 1);
        Plan plan = PackedPlans.first(day);
        long soon = plan.tasks().stream().filter(time -> time.start() < 60).count();
        assertTrue(soon > 0 && soon < plan.tasks().size());
        assertEquals(0, EventOutcome.moved(day, plan, plan));
        assertEquals(soon, EventOutcome.moved(day, plan, shifted(plan)));
        assertEquals(0, EventOutcome.moved(day.withNow(4000), plan, shifted(plan)));
    }

    @Test
    void an_event_is_judged_by_costs_in_which_moving_has_no_price() {
        Problem day = WorkshopDays.of(6, WorkshopDays.FAIR, 1);
        Plan first = PackedPlans.first(day);
        Plan better = PackedPlans.pack(day, 1, 2000);
        EventOutcome outcome = EventOutcome.of(day, first, first, better);
        assertEquals(Score.of(first).percentOver(Score.of(better)), outcome.percentOver());
        assertTrue(outcome.percentOver() > 0);
        assertEquals(0, outcome.moved() + outcome.gained() + outcome.lost());
    }

    private static Plan shifted(Plan plan) {
        List<Plan.TaskTime> later = plan.tasks().stream()
                .map(time -> new Plan.TaskTime(
                        time.job(),
                        time.stay(),
                        time.task(),
                        time.person(),
                        time.with(),
                        time.start() + 1,
                        time.end() + 1))
                .toList();
        return new Plan(0, 0, plan.unplaced(), plan.stays(), later, 0, 0, 0);
    }

    @Test
    void the_engine_is_worse_than_the_solver_only_where_that_has_a_better_plan() {
        assertFalse(pair(100, Optional.empty()).isWorse());
        assertFalse(pair(100, Optional.of(new Score(0, 100))).isWorse());
        assertFalse(pair(100, Optional.of(new Score(1, 50))).isWorse());
        assertTrue(pair(100, Optional.of(new Score(0, 99))).isWorse());
    }

    @Test
    void the_ratio_is_of_plans_that_leave_out_as_many() {
        List<BesideSolver.Pair> pairs = List.of(
                pair(100, Optional.of(new Score(0, 200))),
                pair(100, Optional.of(new Score(0, 125))),
                pair(100, Optional.of(new Score(2, 1))),
                pair(100, Optional.empty()));
        assertEquals("ratio 0.500 to 0.800, no plan by the solver on 1", BesideSolver.ratios(pairs));
        assertEquals("no ratio", BesideSolver.ratios(pairs.subList(2, 3)));
    }

    private static BesideSolver.Pair pair(long engine, Optional<Score> solver) {
        return new BesideSolver.Pair(new Score(0, engine), solver);
    }

    @ParameterizedTest(name = "{0}/{1} and {2}/{3}: {4} %")
    @CsvSource({
        "0, 1000, 0, 991, 0.9, MET",
        "0, 1000, 0, 990, 1, MISSED",
        "0, 1000, 0, 1000, 0, MET",
        "1, 1000, 0, 5000, Infinity, MISSED",
        "0, 0, 0, 0, 0, MET"
    })
    void from_the_engines_plan_the_solver_may_find_less_than_one_percent(
            int leftOut, long engine, int solverLeftOut, long solver, double percent, Verdict verdict) {
        double gain = SolverFromPlan.gain(new Score(leftOut, engine), new Score(solverLeftOut, solver));
        assertEquals(percent, gain, 1e-9);
        assertEquals(verdict, SolverFromPlan.verdict(List.of(0.0, gain)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "0 0 0 0, MET, MET, MET",
        "0.1 0.1 0 0, MISSED, MET, MET",
        "0.1 0.1 0.1 0, MISSED, MISSED, MET",
        "8 0 0 0, MISSED, MET, MET",
        "8.1 0 0 0, MISSED, MET, MISSED"
    })
    void shops_are_judged_each_or_all_but_two_or_by_their_mean(
            String overs, Verdict each, Verdict butTwo, Verdict mean) {
        List<Double> all =
                Arrays.stream(overs.split(" ")).map(Double::parseDouble).toList();
        assertEquals(each, ShopGroup.each("shops", 0).reached(all).verdict());
        assertEquals(butTwo, ShopGroup.optimalBut("shops", 2).reached(all).verdict());
        assertEquals(mean, ShopGroup.mean("shops", 2).reached(all).verdict());
    }

    @Test
    void shops_that_are_not_there_leave_it_open() {
        assertEquals(Verdict.OPEN, ShopGroup.each("shops", 0).reached(List.of()).verdict());
    }

    @Test
    void only_rows_marked_yes_are_judged() {
        String table = "instance,f10,best_known,reproduced\na,13,7,yes\nb,15,0,no\n\nc,16,0,yes\n";
        assertEquals(List.of(true, false, true), ShopFolder.reproduced(table));
    }

    @Test
    void memory_is_flat_when_no_sample_rises_a_megabyte_above_the_second() {
        assertTrue(Memory.isFlat(List.of(1_000L, 9_000L, 10_024L, 8_000L)));
        assertFalse(Memory.isFlat(List.of(1_000L, 9_000L, 10_025L, 8_000L)));
    }

    @Test
    void the_board_prices_moving_and_its_price_is_asked_of_it() {
        assertTrue(BoardCosts.read().moved() > 0);
        assertTrue(BoardCosts.read().swapped() > BoardCosts.read().moved());
    }
}
