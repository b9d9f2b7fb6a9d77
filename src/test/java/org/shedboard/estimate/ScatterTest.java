package org.shedboard.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.shop.Progress;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Task;
import org.shedboard.shop.WorkKind;

/** Likely and safe minutes against values from outside this program. */
class ScatterTest {
    private static final int DRAWS = 200_000;

    /**
     * One log-normal is exact: median the catalogue minutes, 80 % point median * exp(0.8416212 s), with 0.8416212 from any
     * printed table of the standard normal distribution.
     */
    @ParameterizedTest
    @CsvSource({
        // minutes, own spread, machine's spread, likely, safe
        "100, 0.30, 0, 100, 129",
        "100, 0.50, 0, 100, 152",
        "100, 1.00, 0, 100, 232",
        "100, 0.00, 0, 100, 100",
        "100, 0.00, 0.50, 100, 152",
        "100, 0.30, 0.40, 100, 152",
        "546, 0.30, 0, 546, 703",
        "1, 0.30, 0, 1, 1",
    })
    void one_task_is_exact(int minutes, double own, double machine, int likely, int safe) {
        assertEquals(new Estimate.Range(likely, safe), scatter(own, machine).of(List.of(task(0, minutes))));
    }

    @Test
    void nothing_left_to_do_takes_nothing() {
        assertEquals(new Estimate.Range(0, 0), scatter(0.3, 0.2).of(List.of()));
    }

    @Test
    void ten_tasks_scatter_less_than_one_of_the_same_minutes_unless_the_machine_makes_them_scatter_together() {
        List<Task> ten = tasks(10, 10, 10, 10, 10, 10, 10, 10, 10, 10);
        List<Task> one = tasks(100);
        assertTrue(width(scatter(0.4, 0), ten) < 0.5 * width(scatter(0.4, 0), one));
        assertEquals(width(scatter(0, 0.4), one), width(scatter(0, 0.4), ten), 1e-9);
    }

    /**
     * The approximation against drawn sums: at the spreads of a workshop it is within 2 % of the drawn median and 80 % point
     * (seed 1960; the drawing itself is good to about 0.2 %), and with one spread far wider than any shop's within 6 %.
     */
    @ParameterizedTest
    @CsvSource({
        "0.25, 0.00, 0.02",
        "0.25, 0.18, 0.02",
        "0.35, 0.18, 0.02",
        "0.50, 0.18, 0.02",
        "0.50, 0.40, 0.02",
        "0.90, 0.18, 0.06",
    })
    void a_sum_is_close_to_drawn_sums(double own, double machine, double tolerance) {
        List<Task> tasks = tasks(300, 1050, 620, 50, 140, 60, 240, 100, 120);
        Estimate.Range range = scatter(own, machine).of(tasks);
        double[] drawn = draw(tasks, own, machine, new Random(1960));
        assertEquals(drawn[DRAWS / 2], range.likely(), tolerance * drawn[DRAWS / 2], "likely");
        assertEquals(drawn[DRAWS * 4 / 5], range.safe(), tolerance * drawn[DRAWS * 4 / 5], "safe");
    }

    private static double[] draw(List<Task> tasks, double own, double machine, Random random) {
        double[] sums = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double shared = Math.exp(machine * random.nextGaussian());
            for (Task task : tasks) {
                sums[i] += shared * task.handsOn() * Math.exp(own * random.nextGaussian());
            }
        }
        Arrays.sort(sums);
        return sums;
    }

    private static double width(Scatter scatter, List<Task> tasks) {
        Estimate.Range range = scatter.of(tasks);
        return (double) (range.safe() - range.likely()) / range.likely();
    }

    private static Scatter scatter(double own, double machine) {
        Map<WorkKind, Double> byKind = new EnumMap<>(WorkKind.class);
        for (WorkKind kind : WorkKind.values()) {
            byKind.put(kind, own);
        }
        return new Scatter(new Spreads(byKind, machine, 0));
    }

    private static List<Task> tasks(int... minutes) {
        return IntStream.range(0, minutes.length)
                .mapToObj(i -> task(i, minutes[i]))
                .toList();
    }

    private static Task task(int number, int minutes) {
        return new Task(
                "t" + number,
                "task",
                WorkKind.REPAIR,
                Skill.SERVICE,
                minutes,
                0,
                List.of(),
                List.of(),
                List.of(),
                "",
                Progress.TO_DO);
    }
}
