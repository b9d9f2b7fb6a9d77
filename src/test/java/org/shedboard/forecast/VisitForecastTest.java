package org.shedboard.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Estimate;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Learned;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Person;
import org.shedboard.shop.Step;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;

class VisitForecastTest {
    private static final int DRAWS = 200_000;
    private static final List<String> CLASSES = List.of("quad", "side-by-side");

    @Test
    void with_nothing_learned_each_task_takes_the_catalogues_minutes_at_each_persons_pace() {
        Visit visit = SmallShop.visit("V", Mud.CAKED, Depth.FULL, "full-quad");
        VisitForecast forecast = forecast(visit, untaught());
        for (Task task : visit.tasks()) {
            assertEquals(task.handsOn(), forecast.minutes(task));
            for (Person person : SmallShop.SHOP.people()) {
                int paced = Math.round(task.handsOn() * person.pacePercent() / 100f);
                int expected = task.handsOn() == 0 ? 0 : Math.max(1, paced);
                assertEquals(expected, forecast.minutes(task, person), 1);
            }
        }
    }

    @Test
    void one_piece_of_work_is_likely_to_take_what_the_catalogue_says() {
        Visit visit = SmallShop.visit("V", Mud.CAKED, Depth.FULL, "full-quad");
        List<Task> wash = visit.stays().get(0).tasks();
        Estimate.Range range = forecast(visit, untaught()).rangeOf(wash);
        assertEquals(wash.stream().mapToInt(Task::handsOn).sum(), range.likely());
        assertTrue(range.safe() > 1.3 * range.likely(), range.toString());
        assertEquals(new Estimate.Range(0, 0), forecast(visit, untaught()).rangeOf(List.of()));
    }

    @Test
    void what_is_left_takes_less_than_the_whole() {
        Visit visit = SmallShop.visit("V", Mud.CAKED, Depth.FULL, "full-quad");
        VisitForecast forecast = forecast(visit, untaught());
        List<Task> left = visit.tasks().subList(3, visit.tasks().size());
        assertTrue(forecast.rangeOf(left).likely() < forecast.range().likely());
        assertTrue(forecast.rangeOf(left).safe() < forecast.range().safe());
    }

    @Test
    void the_tasks_of_a_piece_drawn_apart_scatter_together_as_the_piece_does() {
        Visit visit = SmallShop.visit("V", Mud.CAKED, Depth.FULL, "full-quad");
        Learned learned = untaught();
        VisitForecast forecast = forecast(visit, learned);
        List<Task> wash = visit.stays().get(0).tasks();
        Random random = new Random(1960);
        double[] sums = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double shared =
                    Math.exp(learned.machine() * random.nextGaussian() + learned.person() * random.nextGaussian());
            for (Task task : wash) {
                sums[i] += shared * task.handsOn() * Math.exp(forecast.spreadOf(task) * random.nextGaussian());
            }
        }
        Arrays.sort(sums);
        double width = sums[DRAWS * 4 / 5] / sums[DRAWS / 2];
        Estimate.Range range = forecast.rangeOf(wash);
        assertEquals((double) range.safe() / range.likely(), width, 0.03);
    }

    @Test
    void minutes_that_more_stay_within_are_longer() {
        Visit visit = SmallShop.visit("V", Mud.CAKED, Depth.FULL, "full-quad");
        VisitForecast forecast = forecast(visit, untaught());
        Task task = visit.tasks().get(1);
        assertEquals(40, forecast.within(task, 40, 50));
        assertTrue(forecast.within(task, 40, 65) > 40);
        assertTrue(forecast.within(task, 40, 80) > forecast.within(task, 40, 65));
    }

    @Test
    void a_dirtier_machine_or_a_deeper_look_is_never_said_to_be_shorter_whatever_was_learned() {
        for (int seed = 0; seed < 15; seed++) {
            Learned learned = learned(new Random(seed));
            for (String classId : CLASSES) {
                Estimate.Range[][] ranges = new Estimate.Range[4][3];
                for (Mud mud : Mud.values()) {
                    for (Depth depth : Depth.values()) {
                        Visit visit = SmallShop.visit("V", SmallShop.machine(classId), mud, depth, "electrics");
                        ranges[mud.ordinal()][depth.ordinal()] = VisitForecast.of(
                                        grounds(learned), SmallShop.machine(classId), visit, SmallShop.DATE)
                                .range();
                    }
                }
                assertRising(ranges, "seed " + seed + ", " + classId);
            }
        }
    }

    private static void assertRising(Estimate.Range[][] ranges, String where) {
        for (int mud = 0; mud < 4; mud++) {
            for (int depth = 0; depth < 3; depth++) {
                if (mud > 0) {
                    assertNotBelow(ranges[mud - 1][depth], ranges[mud][depth], where + ", mud " + mud);
                }
                if (depth > 0) {
                    assertNotBelow(ranges[mud][depth - 1], ranges[mud][depth], where + ", depth " + depth);
                }
            }
        }
    }

    private static void assertNotBelow(Estimate.Range less, Estimate.Range more, String where) {
        assertTrue(more.likely() >= less.likely() && more.safe() >= less.safe(), where + ": " + less + ", " + more);
    }

    /** A shop in which muddier and deeper work was often quicker than less muddy work, by chance. */
    private static Learned learned(Random random) {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            Circumstances at = new Circumstances(
                    CLASSES.get(random.nextInt(2)),
                    Mud.of(random.nextInt(4)),
                    Depth.values()[random.nextInt(3)],
                    OptionalInt.of(random.nextInt(15)),
                    SmallShop.DATE.minusDays(1 + random.nextInt(90)),
                    Map.of("P" + (1 + random.nextInt(4)), 1.0));
            double effect = -0.4 * at.mud().grade() + 0.5 * random.nextGaussian();
            lessons.add(new Lesson("V" + i, Sort.values()[random.nextInt(4)], at, 40, 40 * Math.exp(effect)));
        }
        return Experience.of(SmallShop.CATALOGUE, SmallShop.SHOP.people(), lessons, SmallShop.DATE)
                .learned();
    }

    @Test
    void a_person_who_is_slow_at_it_here_is_given_more_minutes_than_the_catalogue_and_another_is_not() {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String who = i % 2 == 0 ? "P2" : "P3";
            Circumstances at = new Circumstances(
                    "quad",
                    Mud.MUDDY,
                    Depth.STANDARD,
                    OptionalInt.of(8),
                    SmallShop.DATE.minusDays(1 + i),
                    Map.of(who, 1.0));
            lessons.add(new Lesson("V" + i, Sort.WASH, at, 40, i % 2 == 0 ? 40 : 60));
        }
        Learned learned = Experience.of(SmallShop.CATALOGUE, SmallShop.SHOP.people(), lessons, SmallShop.DATE)
                .learned();
        Visit visit = SmallShop.visit("V", Mud.MUDDY, Depth.STANDARD, "minor-quad");
        Task wash = visit.stays().get(0).tasks().get(1);
        assertEquals(Step.WASH, visit.stays().get(0).step());
        VisitForecast forecast = forecast(visit, learned);
        double tobin = forecast.minutes(wash, SmallShop.SHOP.expectPerson("P2")) / (0.95 * wash.handsOn());
        double wren = forecast.minutes(wash, SmallShop.SHOP.expectPerson("P3")) / (1.2 * wash.handsOn());
        assertEquals(1, tobin, 0.12);
        assertTrue(wren > 1.25, "Wren at " + wren);
    }

    private static Learned untaught() {
        return Experience.none(SmallShop.CATALOGUE, SmallShop.SHOP.people()).learned();
    }

    private static Grounds grounds(Learned learned) {
        return new Grounds(SmallShop.CATALOGUE, SmallShop.SHOP.people(), learned);
    }

    private static VisitForecast forecast(Visit visit, Learned learned) {
        return VisitForecast.of(grounds(learned), SmallShop.machine("quad"), visit, SmallShop.DATE);
    }
}
